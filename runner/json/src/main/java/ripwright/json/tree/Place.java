package ripwright.json.tree;

/** Where a value stands in its file, in the words its readers use for that. */
interface Place {
    /** Where that field of the object here stands. */
    Place field(String name);

    /** Where that item of the list here stands. */
    Place item(int index);
}
