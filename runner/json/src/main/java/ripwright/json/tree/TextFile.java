package ripwright.json.tree;

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
import java.util.function.Predicate;

/** A file's text: UTF-8, a byte-order mark skipped. */
final class TextFile {
    private static final Path DEVICES = Path.of("/dev");

    private final Problems problems;
    private final String whole;
    private final Predicate<Source> ours;
    private final String notOurs;
    private final TextLimit limit = TextLimit.ofThisHeap();

    /**
     * What is wrong goes to {@code problems}, which call the file as a whole {@code whole}. Of a file that is not {@code ours}
     * nothing is told but {@code notOurs}: a path in a job may lead anywhere.
     */
    TextFile(Problems problems, String whole, Predicate<Source> ours, String notOurs) {
        this.problems = problems;
        this.whole = whole;
        this.ours = ours;
        this.notOurs = notOurs;
    }

    /** What keeps that file from being read at all; empty when nothing does. */
    static Optional<String> hindrance(Path file) {
        if (Files.isDirectory(file)) return Optional.of("this is a directory; it must be a file.");
        if (Files.notExists(file))
            return Optional.of(Files.isSymbolicLink(file) ? "this link leads nowhere." : "there is no such file.");
        if (!Files.exists(file)) return Optional.of("the file cannot be reached.");
        return Files.isReadable(file) ? Optional.empty() : Optional.of("the file may not be read by this user.");
    }

    /** The same; a pipe or a device, which may never end, is none either. */
    static Optional<String> hindranceOfPlain(Path file) {
        Optional<String> hindrance = hindrance(file);
        if (hindrance.isPresent() || Files.isRegularFile(file)) return hindrance;
        return Optional.of("this is a pipe or a device; it must be a file.");
    }

    /** The text of that file; empty when it has none that can be read. */
    Optional<Source> source(Path file) {
        String name = file.toString();
        problems.meet(name);
        boolean open = file.startsWith(DEVICES); // a shell's <(...) is a pipe that somebody writes to already
        Optional<String> hindrance = open ? hindrance(file) : hindranceOfPlain(file);
        if (hindrance.isPresent()) return unreadable(name, hindrance.get());
        try (InputStream in = Files.newInputStream(file)) {
            return Files.size(file) > limit.bytes() ? tooLarge(name) : source(name, in, ours);
        } catch (NoSuchFileException | AccessDeniedException e) {
            return unreadable(name, "the file went away while it was read.");
        } catch (IOException e) {
            return unreadable(name, "the file cannot be read: " + e.getMessage() + ".");
        }
    }

    /** The text of that stream, which its giver knows, called {@code name}; empty when it has none that can be read. */
    Optional<Source> source(String name, InputStream in) throws IOException {
        return source(name, in, source -> true);
    }

    private Optional<Source> source(String name, InputStream in, Predicate<Source> told) throws IOException {
        problems.meet(name);
        byte[] bytes = in.readNBytes(limit.bytes() + 1);
        return bytes.length > limit.bytes() ? tooLarge(name) : source(name, bytes, told);
    }

    private Optional<Source> source(String name, byte[] bytes, Predicate<Source> told) {
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
        if (result.isError() && in.position() == 0 && (bytes[0] & 0xFF) >= 0xFE)
            return unreadable(name, "the file is UTF-16; save it as UTF-8.");
        if (!told.test(source)) return unreadable(name, notOurs);
        return result.isError() ? notUtf8(source, bytes, in.position()) : Optional.of(source);
    }

    private Optional<Source> notUtf8(Source source, byte[] bytes, int at) {
        String what = String.format(Locale.ROOT, "byte %02X is not UTF-8 here; save the file as UTF-8.", bytes[at]);
        problems.add(source, whole, source.text().length(), what);
        return Optional.empty();
    }

    private Optional<Source> tooLarge(String name) {
        return unreadable(name, limit.over("the file"));
    }

    private Optional<Source> unreadable(String name, String what) {
        problems.add(name, whole, what);
        return Optional.empty();
    }
}
