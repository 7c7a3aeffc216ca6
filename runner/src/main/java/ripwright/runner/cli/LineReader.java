package ripwright.runner.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Reads lines of bytes, one at a time. What goes beyond the most a line may have is read past and never held. */
final class LineReader {
    private static final int PIECE = 1 << 16;
    private static final ByteArrayOutputStream NOTHING = new ByteArrayOutputStream(0);

    /** How much of a line was read. */
    enum Read {
        /** All of it. */
        WHOLE,
        /** Nothing: it is longer than a line may be. */
        TOO_LONG,
        /** Nothing: just then the heap had no room for it. */
        NO_ROOM
    }

    /**
     * One line.
     *
     * @param number from 1
     * @param bytes without the line break; none when it was not read
     * @param read how much of it was read
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
    record Line(long number, byte[] bytes, Read read) {
        boolean blank() {
            for (byte b : bytes) if (b != ' ' && b != '\t' && b != '\r') return false;
            return read == Read.WHOLE;
        }
    }

    private final InputStream in;
    private final int most;
    private final byte[] piece = new byte[PIECE]; // of what came in
    private int from; // where in it the next line begins
    private int to; // where it ends
    private long number;

    /** With lines of {@code most} bytes at most. */
    LineReader(InputStream in, int most) {
        this.in = in;
        this.most = most;
    }

    /** The next line; empty at the end. */
    Optional<Line> next() throws IOException {
        if (isAtEnd()) return Optional.empty();
        number++;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Read read = Read.WHOLE;
        boolean ended = false;
        while (!ended && !isAtEnd()) {
            int end = from;
            while (end < to && piece[end] != '\n') end++;
            if (bytes.size() + (end - from) > most) read = Read.TOO_LONG;
            if (read == Read.WHOLE && !add(bytes, end)) read = Read.NO_ROOM;
            if (read != Read.WHOLE) bytes = NOTHING;
            ended = end < to;
            from = ended ? end + 1 : to;
        }
        return Optional.of(line(bytes, read));
    }

    private boolean isAtEnd() throws IOException {
        if (from < to || to < 0) return to < 0; // a terminal is not asked again
        from = 0;
        to = in.read(piece);
        return to < 0;
    }

    /** Whether there was room for more of a line, up to {@code end}. Others may have the heap full just now. */
    private boolean add(ByteArrayOutputStream bytes, int end) {
        try {
            bytes.write(piece, from, end - from);
            return true;
        } catch (OutOfMemoryError e) {
            return false;
        }
    }

    private Line line(ByteArrayOutputStream bytes, Read read) {
        try {
            return new Line(number, bytes.toByteArray(), read);
        } catch (OutOfMemoryError e) {
            return new Line(number, new byte[0], Read.NO_ROOM);
        }
    }
}
