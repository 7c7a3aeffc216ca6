package ripwright.runner.cli;

import java.io.InputStream;
import java.io.PrintWriter;

/**
 * Where a run talks to its user.
 *
 * @param in what it is given
 * @param out what it found
 * @param err what is wrong, and how far it has come
 * @param live whether somebody watches, so that a line may be written over
 */
public record Terminal(InputStream in, PrintWriter out, PrintWriter err, boolean live) {
    /** Where nothing is given. */
    public Terminal(PrintWriter out, PrintWriter err, boolean live) {
        this(InputStream.nullInputStream(), out, err, live);
    }

    /** Says why a run cannot go on when the user is not to blame. */
    void fault(Throwable fault) {
        err.print(new FaultText(fault).text());
        err.flush();
    }
}
