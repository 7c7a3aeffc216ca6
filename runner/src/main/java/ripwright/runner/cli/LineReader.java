package ripwright.runner.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import ripwright.runner.tree.JsonFile;

/** Reads lines of bytes, one at a time, and never more of one than the largest job may have. */
final class LineReader {
    /**
     * One line.
     *
     * @param number from 1
     * @param bytes without the line break; one more than {@link JsonFile#LARGEST} of a line that is too long
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
    record Line(long number, byte[] bytes) {
        boolean blank() {
            for (byte b : bytes) if (b != ' ' && b != '\t' && b != '\r') return false;
            return true;
        }
    }

    private final InputStream in;
    private long number;

    LineReader(InputStream in) {
        this.in = new BufferedInputStream(in, 1 << 16);
    }

    /** The next line; empty at the end. */
    Optional<Line> next() throws IOException {
        int b = in.read();
        if (b < 0) return Optional.empty();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (; b >= 0 && b != '\n'; b = in.read()) if (bytes.size() <= JsonFile.LARGEST) bytes.write(b);
        return Optional.of(new Line(++number, bytes.toByteArray()));
    }
}
