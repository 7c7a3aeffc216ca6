package ripwright.runner.cli;

import ripwright.Progress;
import ripwright.ProgressListener;

/** One line that tells how far the search has come, written over again and again; none when nobody watches. */
final class ProgressLine implements ProgressListener {
    private final Terminal terminal;
    private int length; // of what stands there

    ProgressLine(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public synchronized void progress(Progress progress) {
        if (!terminal.live()) return;
        String floor =
                progress.bound().signum() > 0 ? ", at least " + progress.bound().toPlainString() : "";
        write("  Searching. After " + progress.elapsed().toSeconds() + " s: " + progress.partsMade() + " of "
                + progress.partsWanted() + " parts, cost " + progress.cost().toPlainString() + floor
                + ". Ctrl-C ends it.");
    }

    /** Shows {@code line} instead of what stands there. */
    synchronized void show(String line) {
        if (terminal.live()) write(line);
    }

    /** Takes the line away. */
    synchronized void wipe() {
        if (length == 0) return;
        write("");
        terminal.err().print("\r");
        terminal.err().flush();
    }

    private void write(String line) {
        terminal.err().print("\r" + line + " ".repeat(Math.max(0, length - line.length())));
        terminal.err().flush();
        length = line.length();
    }
}
