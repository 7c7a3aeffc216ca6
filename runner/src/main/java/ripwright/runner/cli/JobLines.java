package ripwright.runner.cli;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.plan.Plan;

/**
 * Plans jobs that come in line by line, a few at once, and writes a line for each in the order they came. No more of them
 * are in memory than are planned at once and a few that wait, however many come: reading waits for planning, planning for
 * whoever takes the lines.
 */
final class JobLines {
    private static final int WAITING = 8; // for each that is planned at once: one slow job holds up few
    private static final long LOOK_MILLIS = 100; // for an interruption, while no line comes

    private final Terminal terminal;
    private final BiFunction<Job, Options, Plan> planner;
    private final Share share;
    private final Interruption interruption;
    private final Map<ExitCode, Integer> ended = new EnumMap<>(ExitCode.class); // only for the thread that writes
    private volatile boolean unreadable;
    private final BlockingQueue<Optional<Future<LineAnswer>>> answers; // empty: no more come

    JobLines(Terminal terminal, BiFunction<Job, Options, Plan> planner, Share share, Interruption interruption) {
        this.terminal = terminal;
        this.planner = planner;
        this.share = share;
        this.interruption = interruption;
        answers = new ArrayBlockingQueue<>(share.jobs() * WAITING);
    }

    /** Plans them all; the worst of their exit codes. */
    ExitCode run() {
        ExecutorService threads = Executors.newFixedThreadPool(share.jobs());
        Thread reading = new Thread(() -> read(threads), "ripwright-lines");
        reading.setDaemon(true); // it may wait for a line that never comes
        reading.start();
        try {
            Optional<Future<LineAnswer>> next = next();
            while (next.isPresent()) {
                if (!write(next.get().get())) return ExitCode.BAD_INPUT;
                next = next();
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException("Nobody interrupts this thread.", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("A job's end could not be told.", e.getCause());
        } finally {
            threads.shutdownNow();
        }
        if (unreadable) ended.putIfAbsent(ExitCode.BAD_INPUT, 0);
        if (interruption.came()) ended.putIfAbsent(ExitCode.INTERRUPTED, 0);
        terminal.err().println(total());
        return ended.keySet().stream().reduce(ExitCode.COMPLETE, ExitCode::worse);
    }

    private void read(ExecutorService threads) {
        LineReader lines = new LineReader(terminal.in());
        try {
            Optional<LineReader.Line> line = lines.next();
            while (line.isPresent() && !interruption.came()) {
                LineReader.Line job = line.get();
                if (!job.blank()) answers.put(Optional.of(threads.submit(() -> answer(job))));
                line = lines.next();
            }
        } catch (IOException e) {
            terminal.err().println("Standard input cannot be read: " + e.getMessage() + ".");
            unreadable = true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            end();
        }
    }

    private void end() {
        try {
            answers.put(Optional.empty());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private LineAnswer answer(LineReader.Line line) {
        Options options = Options.defaults().withCancellation(interruption::came);
        return interruption.came()
                ? LineAnswer.notBegun(line)
                : new LineJob(line, planner, share.threads(), options, interruption::came).answer();
    }

    private Optional<Future<LineAnswer>> next() throws InterruptedException {
        while (true) {
            Optional<Future<LineAnswer>> next = answers.poll(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            if (next != null) return next;
            if (interruption.came()) return Optional.empty();
        }
    }

    /** Whether somebody still takes the lines. */
    private boolean write(LineAnswer answer) {
        ended.merge(answer.exit(), 1, Integer::sum);
        if (!answer.said().isEmpty()) terminal.err().print(answer.said());
        terminal.out().print(answer.json() + "\n");
        if (!terminal.out().checkError()) return true;
        terminal.err().println("Nobody takes the plans any more: standard output is closed.");
        return false;
    }

    private String total() {
        int jobs = ended.values().stream().mapToInt(Integer::intValue).sum();
        String counts = ended.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> entry.getValue() + " " + entry.getKey().word())
                .collect(Collectors.joining(", "));
        return (jobs == 1 ? "1 job" : jobs + " jobs") + (counts.isEmpty() ? "." : ": " + counts + ".");
    }
}
