package ripwright.runner.cli;

import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** What the libraries in use have to say: nothing, unless it is asked for; then a line each, on the error stream. */
final class Logging {
    private Logging() {}

    static void set(boolean verbose) {
        Logger root = LogManager.getLogManager().getLogger("");
        root.setLevel(verbose ? Level.FINE : Level.OFF);
        for (Handler handler : root.getHandlers()) {
            handler.setLevel(Level.ALL);
            handler.setFormatter(new OneLine());
        }
    }

    private static final class OneLine extends Formatter {
        @Override
        public String format(LogRecord record) {
            String logger = String.valueOf(record.getLoggerName());
            return logger.substring(logger.lastIndexOf('.') + 1) + ": " + formatMessage(record)
                    + System.lineSeparator();
        }
    }
}
