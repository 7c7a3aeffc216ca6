package ripwright.runner.cli;

import java.time.Duration;
import ripwright.Progress;
import ripwright.ProgressListener;

/** One line that tells how far the search has come, written over again and again; none when nobody watches. */
final class ProgressLine implements ProgressListener {
    private static final Duration PAUSE = Duration.ofMillis(200); // faster than that nobody reads

    private final Terminal terminal;
    private Duration next = Duration.ZERO;
    private int length; // of what stands there

    ProgressLine(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public synchronized void progress(Progress progress) {
        if (!terminal.live() || progress.elapsed().compareTo(next) < 0) return;
        next = progress.elapsed().plus(PAUSE);
        show("  " + progress.elapsed().toSeconds() + " s: " + progress.partsMade() + " of " + progress.partsWanted()
                + " parts, cost " + progress.cost().toPlainString() + ", at least "
                + progress.bound().toPlainString());
    }

    /** Takes the line away. */
    synchronized void wipe() {
        if (length == 0) return;
        show("");
        terminal.err().print("\r");
        terminal.err().flush();
    }

    private void show(String line) {
        terminal.err().print("\r" + line + " ".repeat(Math.max(0, length - line.length())));
        terminal.err().flush();
        length = line.length();
    }
}
