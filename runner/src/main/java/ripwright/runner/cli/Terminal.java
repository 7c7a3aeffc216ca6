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

    /** Says that this program is at fault, not the user. */
    void fault(Throwable fault) {
        fault(fault, err);
        err.flush();
    }

    /** The same into a text. */
    static void fault(Throwable fault, PrintWriter text) {
        text.println("This is a fault of Ripwright's, not yours. Please report it with all that follows.");
        fault.printStackTrace(text);
    }
}
