package ripwright.internal.search;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * The threads of one planning, made by the thread that plans. No more of them compute at once than the job allows, the thread
 * that plans counted in: work that finds no place waits, and long work makes room for it now and then. None is left once
 * this is closed.
 *
 * <p>The thread that plans waits for the others even when it is interrupted, as they are to end early then: whoever computes
 * asks {@link #interrupted}.
 */
public final class Workers implements AutoCloseable {
    private static final long LONGEST_NANOS = 250_000_000; // that work goes on while other work waits; about a turn's

    private final Thread planning = Thread.currentThread();
    private final Semaphore places;
    private final ExecutorService threads;
    private volatile boolean interrupted; // while the thread that plans waits, which clears its own flag

    /** For so many that compute at once. */
    public Workers(int most) {
        places = new Semaphore(most, true);
        AtomicInteger number = new AtomicInteger();
        threads = Executors.newCachedThreadPool(work -> new Worker(work, number.incrementAndGet()));
    }

    private static final class Worker extends Thread {
        private long since; // when it last got its place, as System.nanoTime has it

        Worker(Runnable work, int number) {
            super(work, "ripwright-" + number);
            setDaemon(true);
        }
    }

    /** Whether the thread that plans was interrupted. */
    public boolean interrupted() {
        return interrupted || planning.isInterrupted();
    }

    /** Begins that work on a thread of its own as soon as there is a place. */
    public <T> Future<T> begin(Callable<T> work) {
        return threads.submit(() -> {
            takePlace();
            try {
                return work.call();
            } finally {
                places.release();
            }
        });
    }

    private void takePlace() {
        places.acquireUninterruptibly();
        if (Thread.currentThread() instanceof Worker worker) worker.since = System.nanoTime();
    }

    /** Called now and then by work on a thread of ours: gives its place to work that waits, if it had it for long. */
    public void makeRoom() {
        if (!places.hasQueuedThreads()) return;
        if (!(Thread.currentThread() instanceof Worker worker)) return;
        if (System.nanoTime() - worker.since < LONGEST_NANOS) return;
        places.release();
        takePlace();
    }

    /** What that work comes to, on the thread that plans, once there is a place for it. */
    public <T> T here(Supplier<T> work) {
        untilDone(() -> {
            places.acquire();
            return true;
        });
        try {
            return work.get();
        } finally {
            places.release();
        }
    }

    /** What work that was begun came to; for the thread that plans, while it has no place. */
    public <T> T result(Future<T> work) {
        return untilDone(work::get);
    }

    /** Waits on though interrupted; the thread is interrupted afterwards. */
    private <T> T untilDone(Callable<T> waiting) {
        try {
            while (true) {
                try {
                    return waiting.call();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("A thread of the planning failed.", e.getCause());
        } catch (Exception e) {
            throw new IllegalStateException(e);
        } finally {
            if (interrupted) planning.interrupt();
        }
    }

    /** Waits for all that was begun; it is to end by itself. */
    @Override
    public void close() {
        end(threads);
    }

    /** Lets threads end and waits for that. */
    void end(ExecutorService service) {
        service.shutdown();
        untilDone(() -> service.awaitTermination(Long.MAX_VALUE, TimeUnit.NANOSECONDS));
    }
}
