package ripwright.json.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A JSON file: reads the one value it holds. */
public final class JsonFile {
    private static final List<String> OWN = List.of("\"job\"", "\"units\"", "\"what\""); // one of these, beside format
    private static final String NOT_OURS =
            "this is no file of Ripwright's: one is a JSON object, starting with {, and holds "
                    + "\"format\" and \"job\" or \"units\".";

    private final Problems problems;

    /** What is wrong goes to {@code problems}. */
    public JsonFile(Problems problems) {
        this.problems = problems;
    }

    /** What keeps that file, which another file or a folder leads to, from being read at all; empty when nothing does. */
    public static Optional<String> hindrance(Path file) {
        return TextFile.hindranceOfPlain(file);
    }

    /** The one value of that file; empty when it has none that can be read, which goes to the problems, as no file does. */
    public Optional<Value> value(Path file) {
        return text().source(file).flatMap(this::value);
    }

    /**
     * The one value of that stream, called {@code name}, which is read to its end and left open; empty when it has none that
     * can be read, which goes to the problems.
     *
     * @throws IOException when the stream throws it
     */
    public Optional<Value> value(String name, InputStream in) throws IOException {
        return text().source(name, in).flatMap(this::value);
    }

    private TextFile text() {
        return new TextFile(problems, JsonPath.ROOT.toString(), JsonFile::isOurs, NOT_OURS);
    }

    /** An object that names what all our files name. Short of that a text is nobody's to tell, wherever its path is from. */
    private static boolean isOurs(Source source) {
        String text = source.text();
        int first = 0;
        while (first < text.length() && Character.isWhitespace(text.charAt(first))) first++;
        boolean blank = first == text.length(); // which is told, and tells nothing
        return blank
                || (text.charAt(first) == '{'
                        && text.contains("\"format\"")
                        && OWN.stream().anyMatch(text::contains));
    }

    private Optional<Value> value(Source source) {
        return new JsonText(source, problems).root().map(root -> new Value(source, problems, JsonPath.ROOT, root));
    }
}
