package ripwright.runner.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Whether the user wants out. While this is open, Ctrl-C only sets it; the process ends when it is closed, or after a time
 * that is long enough to write a plan: the main thread halts it, or else this does, as an exit would wait for this forever.
 */
final class Interruption implements AutoCloseable {
    private static final long MOST_SECONDS = 30;
    private static final long SECONDS_TO_SAY_SO = 5; // for the main thread, which ends the process itself

    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupt, "interruption");
    private volatile boolean came;

    /** Listens for Ctrl-C from now on. */
    Interruption() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether it came. */
    boolean came() {
        return came;
    }

    private void interrupt() {
        came = true;
        try {
            boolean done = closed.await(MOST_SECONDS, TimeUnit.SECONDS);
            if (done) TimeUnit.SECONDS.sleep(SECONDS_TO_SAY_SO);
            else System.err.println("The search did not end in time; nothing more was written.");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Runtime.getRuntime().halt(ExitCode.INTERRUPTED.number()); // else the exit code would tell the signal
    }

    @Override
    public void close() {
        closed.countDown();
        if (came) return;
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            came = true; // it is coming just now
        }
    }
}
