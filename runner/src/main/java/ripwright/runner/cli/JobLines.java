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
import ripwright.json.tree.TextLimit;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;

/**
 * Plans jobs that come in line by line, a few at once, and writes a line for each in the order they came. No more of them
 * are in memory than are planned at once and a few that wait, and no more than fit the heap, however many and large they
 * are: reading waits for planning, planning for whoever takes the lines. Every line is answered, whatever befalls it.
 */
final class JobLines {
    private static final int WAITING = 8; // for each that is planned at once: one slow job holds up few
    private static final long LOOK_MILLIS = 100; // for an interruption, while no line comes

    private final Terminal terminal;
    private final BiFunction<Job, Options, Plan> planner;
    private final Share share;
    private final Interruption interruption;
    private final TextLimit limit = TextLimit.ofThisHeap();
    private final Room room = new Room(limit.forReading());
    private final SharedHeap heap = new SharedHeap();
    private final Map<ExitCode, Integer> ended = new EnumMap<>(ExitCode.class); // only for the thread that writes
    private final BlockingQueue<Optional<Waiting>> answers; // empty: no more come
    private volatile Optional<Throwable> unread = Optional.empty(); // why there may be lines that were not read

    /** A line whose answer is awaited. */
    private record Waiting(long line, Future<LineAnswer> answer) {}

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
            Optional<Waiting> next = next();
            while (next.isPresent()) {
                if (!write(answer(next.get()))) return ExitCode.BAD_INPUT;
                next = next();
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException("Nobody interrupts this thread.", e);
        } finally {
            threads.shutdownNow();
        }
        unread.ifPresent(this::tell);
        if (interruption.came()) ended.putIfAbsent(ExitCode.INTERRUPTED, 0);
        terminal.err().println(total());
        return ended.keySet().stream().reduce(ExitCode.COMPLETE, ExitCode::worse);
    }

    /** The end of reading is not the end of the lines: the run must not end as if all were answered. */
    private void tell(Throwable why) {
        if (why instanceof IOException) {
            terminal.err().println("Standard input cannot be read: " + why.getMessage() + ".");
            ended.putIfAbsent(ExitCode.BAD_INPUT, 0);
        } else {
            terminal.err().println("Reading ended early; lines after those answered may be left.");
            terminal.fault(why);
            ended.putIfAbsent(ExitCode.FAULT, 0);
        }
    }

    private void read(ExecutorService threads) {
        LineReader lines = new LineReader(terminal.in(), limit.bytes());
        try {
            Optional<LineReader.Line> line = lines.next();
            while (line.isPresent() && !interruption.came()) {
                if (!line.get().blank()) plan(line.get(), threads);
                line = lines.next();
            }
        } catch (IOException | RuntimeException | Error e) {
            unread = Optional.of(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            end();
        }
    }

    private void plan(LineReader.Line line, ExecutorService threads) throws InterruptedException {
        room.take(taken(line));
        answers.put(Optional.of(new Waiting(line.number(), threads.submit(() -> answer(line)))));
    }

    private long taken(LineReader.Line line) {
        return limit.taken(line.bytes().length);
    }

    private void end() {
        try {
            answers.put(Optional.empty());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private LineAnswer answer(LineReader.Line line) {
        long size = 0;
        try {
            LineAnswer answer =
                    interruption.came() ? LineAnswer.notBegun(line.number()) : heap.run(() -> planned(line));
            size = answer.size();
            return answer;
        } catch (WrongInputException | IOException | RuntimeException | Error e) {
            LineAnswer answer = LineAnswer.fault(line.number(), e);
            size = answer.size();
            return answer;
        } finally {
            room.change(taken(line), size);
        }
    }

    private LineAnswer planned(LineReader.Line line) throws IOException {
        Options options = Options.defaults().withCancellation(interruption::came);
        return new LineJob(line, planner, share.threads(), options, interruption::came).answer();
    }

    private Optional<Waiting> next() throws InterruptedException {
        while (true) {
            Optional<Waiting> next = answers.poll(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            if (next != null) return next;
            if (interruption.came()) return Optional.empty();
        }
    }

    /** A line is answered even when whoever planned it is gone. */
    private LineAnswer answer(Waiting waiting) throws InterruptedException {
        try {
            LineAnswer answer = waiting.answer().get();
            room.change(answer.size(), 0);
            return answer;
        } catch (ExecutionException e) {
            return LineAnswer.fault(waiting.line(), e.getCause() == null ? e : e.getCause());
        }
    }

    /** Whether somebody still takes the lines. */
    private boolean write(LineAnswer answer) {
        ended.merge(answer.exit(), 1, Integer::sum);
        if (!answer.said().isEmpty()) terminal.err().print(answer.said());
        new Pieces(terminal.out()).write(answer.json());
        terminal.out().write('\n');
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
