package ripwright.runner.cli;

import java.io.IOException;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import ripwright.json.tree.WrongInputException;

/**
 * The heap that jobs planned at once have together. One that finds it full is planned once more while no other is: a large
 * job costs the small ones beside it time, but never their plans.
 */
final class SharedHeap {
    private final ReentrantReadWriteLock atWork =
            new ReentrantReadWriteLock(true); // fair: who waits to be alone gets a turn

    /** What is done with one job. */
    interface Work<T> {
        T run() throws WrongInputException, IOException;
    }

    /** Does it, twice when the heap was full the first time. */
    <T> T run(Work<T> work) throws WrongInputException, IOException {
        try {
            return run(work, atWork.readLock());
        } catch (RuntimeException | Error e) {
            if (!isFull(e)) throw e;
        }
        return run(work, atWork.writeLock());
    }

    private static <T> T run(Work<T> work, Lock lock) throws WrongInputException, IOException {
        lock.lock();
        try {
            return work.run();
        } finally {
            lock.unlock();
        }
    }

    /** Whether it is that the heap was full. */
    static boolean isFull(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause())
            if (cause instanceof OutOfMemoryError) return true;
        return false;
    }
}
