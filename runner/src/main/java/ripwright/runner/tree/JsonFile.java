package ripwright.runner.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** A JSON file: reads the one value it holds. */
public final class JsonFile {
    /** The largest file that is read, in bytes: a job of 100,000 lines has a third of that. */
    public static final int LARGEST = 64 << 20;

    private final Problems problems;

    /** What is wrong goes to {@code problems}. */
    public JsonFile(Problems problems) {
        this.problems = problems;
    }

    /** What keeps that file from being read at all; empty when nothing does. */
    public static Optional<String> hindrance(Path file) {
        if (Files.isDirectory(file)) return Optional.of("this is a directory; it must be a file.");
        if (Files.notExists(file)) return Optional.of("there is no such file.");
        return Files.isReadable(file) ? Optional.empty() : Optional.of("the file may not be read by this user.");
    }

    /** The one value of that file; empty when it has none that can be read. */
    public Optional<Value> value(Path file) {
        String name = file.toString();
        problems.meet(name);
        Optional<String> hindrance = hindrance(file);
        if (hindrance.isPresent()) {
            problems.add(name, hindrance.get());
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Files.size(file) > LARGEST ? tooLarge(name) : value(name, in);
        } catch (NoSuchFileException | AccessDeniedException e) {
            return unreadable(name, "the file went away while it was read.");
        } catch (IOException e) {
            return unreadable(name, "the file cannot be read: " + e.getMessage() + ".");
        }
    }

    /** The one value of that stream, called {@code name}; empty when it has none that can be read. */
    public Optional<Value> value(String name, InputStream in) throws IOException {
        problems.meet(name);
        byte[] bytes = in.readNBytes(LARGEST + 1);
        return bytes.length > LARGEST ? tooLarge(name) : value(name, bytes);
    }

    private Optional<Value> value(String name, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (out.hasRemaining() && out.get(out.position()) == '\uFEFF') out.get(); // the byte-order mark
        Source source = new Source(name, out.toString());
        if (result.isError()) return notUtf8(source, bytes, in.position());
        return new JsonText(source, problems).root().map(root -> new Value(source, problems, JsonPath.ROOT, root));
    }

    private Optional<Value> notUtf8(Source source, byte[] bytes, int at) {
        int first = bytes[0] & 0xFF;
        if (at == 0 && (first == 0xFE || first == 0xFF))
            return unreadable(source.name(), "the file is UTF-16; save it as UTF-8.");
        String what = String.format(Locale.ROOT, "byte %02X is not UTF-8 here; save the file as UTF-8.", bytes[at]);
        problems.add(source, "$", source.text().length(), what);
        return Optional.empty();
    }

    private Optional<Value> tooLarge(String name) {
        return unreadable(name, "the file is over 64 MB; the largest job has fewer.");
    }

    private Optional<Value> unreadable(String name, String what) {
        problems.add(name, what);
        return Optional.empty();
    }
}
