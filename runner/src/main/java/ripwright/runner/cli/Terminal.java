package ripwright.runner.cli;

import java.io.PrintWriter;

/**
 * Where a run talks to its user.
 *
 * @param out what it found
 * @param err what is wrong, and how far it has come
 * @param live whether somebody watches, so that a line may be written over
 */
public record Terminal(PrintWriter out, PrintWriter err, boolean live) {
    /** Says that this program is at fault, not the user. */
    void fault(Throwable fault) {
        err.println("This is a fault of Ripwright's, not yours. Please report it with all that follows.");
        fault.printStackTrace(err);
        err.flush();
    }
}
