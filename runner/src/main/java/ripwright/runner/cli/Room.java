package ripwright.runner.cli;

/** What may be in memory at once of what comes in and what goes out; who brings more waits until there is room. */
final class Room {
    private final long most;
    private long taken;

    /** For so many bytes. */
    Room(long most) {
        this.most = most;
    }

    /** Waits until so many bytes more fit, or nothing else is there. */
    synchronized void take(long bytes) throws InterruptedException {
        while (taken > 0 && taken + bytes > most) wait();
        taken += bytes;
    }

    /** Now so many bytes are there in place of those; nobody waits for that. */
    synchronized void change(long before, long after) {
        taken += after - before;
        notifyAll();
    }

    /** How many are there. */
    synchronized long taken() {
        return taken;
    }
}
