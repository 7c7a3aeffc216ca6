package ripwright.runner.cli;

import java.util.EnumMap;
import java.util.Map;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarConsumer;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** How far many jobs have come: a bar where somebody watches, else a plain line for every job that ended. */
final class BatchProgress implements AutoCloseable {
    private final Terminal terminal;
    private final int jobs;
    private final @Nullable ProgressBar bar; // null where nobody watches
    private final Map<ExitCode, Integer> ended = new EnumMap<>(ExitCode.class);
    private int done;

    BatchProgress(Terminal terminal, int jobs) {
        this.terminal = terminal;
        this.jobs = jobs;
        bar = terminal.live()
                ? new ProgressBarBuilder()
                        .setTaskName("Planning")
                        .setInitialMax(jobs)
                        .setStyle(ProgressBarStyle.ASCII)
                        .setConsumer(new Line(terminal))
                        .build()
                : null;
    }

    /** A job ended; {@code said} is what its user should read at once, whole lines or nothing. */
    synchronized void ended(Result result, String said) {
        done++;
        ended.merge(result.exit(), 1, Integer::sum);
        if (bar == null) {
            terminal.err().print(said);
            terminal.err().println(done + " of " + jobs + ": " + line(result));
            terminal.err().flush();
            return;
        }
        if (!said.isEmpty()) {
            terminal.err().print(Line.WIPED + said);
            terminal.err().flush();
        }
        bar.setExtraMessage(extra());
        bar.step();
    }

    private static String line(Result result) {
        String words = result.file().name() + ": " + result.words();
        return result.figures()
                .map(figures -> words + ", " + figures.made() + " of " + figures.wanted() + " parts, cost "
                        + figures.net().toPlainString())
                .orElse(words);
    }

    private String extra() {
        StringBuilder extra = new StringBuilder();
        ended.forEach((exit, count) -> {
            if (exit != ExitCode.COMPLETE)
                extra.append(" ").append(count).append(" ").append(exit.word());
        });
        return extra.toString();
    }

    @Override
    public void close() {
        if (bar != null) bar.close();
    }

    /** The line that is written over again and again. */
    private record Line(Terminal terminal) implements ProgressBarConsumer {
        private static final int WIDTH = 79;
        private static final String WIPED = "\r" + " ".repeat(WIDTH) + "\r";

        @Override
        public int getMaxRenderedLength() {
            return WIDTH;
        }

        @Override
        public void accept(String line) {
            terminal.err().print("\r" + line);
            terminal.err().flush();
        }

        @Override
        public void clear() {
            terminal.err().print(WIPED);
            terminal.err().flush();
        }

        @Override
        public void close() {
            clear();
        }
    }
}
