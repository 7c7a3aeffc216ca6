package ripwright.runner.disk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.JsonOut;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.json.tree.Problems;
import ripwright.json.tree.WrongInputException;

/**
 * What is still to be done when it is found.
 *
 * @param what what for
 * @param entries file by file
 * @param made whether all that is new is there, so that the change counts as made
 */
record Note(String what, List<Note.Entry> entries, boolean made) {
    private static final int FORMAT = 1;
    private static final Kind<String> TEXT = Kinds.of("text", "", value -> value.text());

    /**
     * A file to be changed.
     *
     * @param file the file
     * @param before the digest of what it held; empty when there was none
     * @param stays whether something waits to take its place; else it goes
     */
    record Entry(Path file, Optional<String> before, boolean stays) {}

    /** Files in that folder are written by name alone, so that the folder may move. */
    Consumer<JsonOut> writtenFrom(Path folder) {
        return json -> {
            json.number("format", FORMAT);
            json.text("what", what);
            json.flag("made", made);
            json.list("files", entries, entry -> {
                Path file = entry.file();
                json.text("file", folder.equals(file.getParent()) ? "" + file.getFileName() : file.toString());
                entry.before().ifPresent(digest -> json.text("before", digest));
                json.flag("stays", entry.stays());
            });
        };
    }

    static Note read(Path note) throws WrongInputException {
        Problems problems = new Problems();
        Kind<Entry> entry = ObjectKind.of(
                "an object with file and stays",
                fields -> new Entry(
                        note.resolveSibling(fields.required("file", TEXT)),
                        fields.optional("before", TEXT),
                        fields.required("stays", Kinds.flag())));
        Kind<Note> kind = ObjectKind.of("an object with format, what and files", fields -> {
            fields.required("format", Kinds.wholeInt(FORMAT, FORMAT));
            return new Note(
                    fields.required("what", TEXT),
                    fields.required("files", Kinds.list(entry)),
                    fields.optional("made", Kinds.flag(), true));
        });
        Optional<Note> read = new JsonFile(problems).value(note).map(kind::read);
        problems.throwIfAny();
        return read.orElseThrow();
    }
}
