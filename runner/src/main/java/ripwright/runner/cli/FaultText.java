package ripwright.runner.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What is said when a run cannot go on and the user is not to blame: this program is at fault, or the memory was not enough. */
record FaultText(Throwable fault) {
    private static final int MEGABYTE = 1 << 20;

    /** In one line, without a full stop. */
    String reason() {
        if (!SharedHeap.isFull(fault)) return fault.toString();
        return "not enough memory: Java may use " + Runtime.getRuntime().maxMemory() / MEGABYTE
                + " MB here. Let it use more, as in java -Xmx2g";
    }

    /** All there is to say, every line ended by a line break. */
    String text() {
        if (SharedHeap.isFull(fault)) return "This takes more than there is: " + reason() + ".\n";
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        lines.println("This is a fault of Ripwright's, not yours. Please report it with all that follows.");
        fault.printStackTrace(lines);
        return text.toString();
    }
}
