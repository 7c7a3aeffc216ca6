package ripwright.json.tree;

/**
 * What a field may hold. Reading goes on after a mistake, with a stand-in for what could not be read, so that whatever else
 * is wrong is found too; the stand-ins never leave, as {@link Problems#throwIfAny} comes before.
 *
 * @param <T> what it is read as
 */
public interface Kind<T> {
    /** What is right, as in: a length, such as 23.5 or "2 3/8". */
    String expected();

    /** What {@code value} says; notes what is wrong with it and answers a stand-in when it says nothing of the kind. */
    T read(Value value);

    /** Something harmless in place of what is missing. */
    T standIn();
}
