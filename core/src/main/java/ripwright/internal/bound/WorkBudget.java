package ripwright.internal.bound;

import java.util.function.BooleanSupplier;

/** Ends a piece of work after it has asked so often whether to end, or when it must: the same on every machine. */
public final class WorkBudget implements BooleanSupplier {
    private final BooleanSupplier stop;
    private long left;

    /**
     * For one piece of work.
     *
     * @param stop when it must end
     * @param questions how often it may ask before it is to end
     */
    public WorkBudget(BooleanSupplier stop, long questions) {
        this.stop = stop;
        left = questions;
    }

    /** When it must end, however often it may still ask; to ask that costs no question. */
    public BooleanSupplier mustEnd() {
        return stop;
    }

    @Override
    public boolean getAsBoolean() {
        return left-- <= 0 || stop.getAsBoolean();
    }
}
