package ripwright.solve;

import java.util.function.BooleanSupplier;

/** Ends a piece of work after it has asked so often whether to end, or when it must: the same on every machine. */
final class Patience implements BooleanSupplier {
    private final BooleanSupplier stop;
    private long left;

    /**
     * @param stop when it must end
     * @param questions how often it may ask before it is to end
     */
    Patience(BooleanSupplier stop, long questions) {
        this.stop = stop;
        left = questions;
    }

    @Override
    public boolean getAsBoolean() {
        return left-- <= 0 || stop.getAsBoolean();
    }
}
