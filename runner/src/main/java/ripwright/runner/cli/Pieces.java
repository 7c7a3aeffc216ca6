package ripwright.runner.cli;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Writes long text piece by piece, so that it is never in memory twice over. Where those who plan meanwhile have the heap full,
 * it waits for them and goes on with the same piece: nothing of a piece is written before there was room for all of it.
 */
record Pieces(PrintWriter out) {
    private static final int PIECE = 1 << 13;
    private static final int MOST_TRIES = 100;
    private static final long WAIT = TimeUnit.MILLISECONDS.toNanos(50);

    /** Writes all of it. */
    void write(String text) {
        for (int at = 0; at < text.length(); at += PIECE) write(text, at, Math.min(PIECE, text.length() - at));
    }

    private void write(String text, int at, int length) {
        for (int tries = 1; ; tries++) {
            try {
                out.write(text, at, length);
                return;
            } catch (OutOfMemoryError e) {
                if (tries == MOST_TRIES) throw e;
                LockSupport.parkNanos(WAIT);
            }
        }
    }
}
