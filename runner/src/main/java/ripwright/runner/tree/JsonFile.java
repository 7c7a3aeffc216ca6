package ripwright.runner.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;

/** A JSON file: reads the one value it holds. */
public final class JsonFile {
    private final Problems problems;

    /** What is wrong goes to {@code problems}. */
    public JsonFile(Problems problems) {
        this.problems = problems;
    }

    /** What keeps that file, which another file or a folder leads to, from being read at all; empty when nothing does. */
    public static Optional<String> hindrance(Path file) {
        return TextFile.hindranceOfPlain(file);
    }

    /** The one value of that file; empty when it has none that can be read. */
    public Optional<Value> value(Path file) {
        return text().source(file).flatMap(this::value);
    }

    /** The one value of that stream, called {@code name}; empty when it has none that can be read. */
    public Optional<Value> value(String name, InputStream in) throws IOException {
        return text().source(name, in).flatMap(this::value);
    }

    private TextFile text() {
        return new TextFile(problems, JsonPath.ROOT.toString());
    }

    private Optional<Value> value(Source source) {
        return new JsonText(source, problems).root().map(root -> new Value(source, problems, JsonPath.ROOT, root));
    }
}
