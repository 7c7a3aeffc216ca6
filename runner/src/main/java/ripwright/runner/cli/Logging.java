package ripwright.runner.cli;

import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;

/** What the libraries in use have to say: nothing, unless it is asked for. */
final class Logging {
    private Logging() {}

    static void set(boolean verbose) {
        Logger root = LogManager.getLogManager().getLogger("");
        root.setLevel(verbose ? Level.FINE : Level.OFF);
        for (Handler handler : root.getHandlers()) handler.setLevel(Level.ALL);
    }
}
