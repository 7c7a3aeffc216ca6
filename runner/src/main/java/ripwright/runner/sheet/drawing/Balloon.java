package ripwright.runner.sheet.drawing;

/**
 * The number of a step, in the rounded frame that says so.
 *
 * @param step the number
 * @param x its middle, in hundredths of a point
 * @param y its middle
 */
public record Balloon(int step, long x, long y) {
    /** How high it is. */
    public static final long HEIGHT = 1040;

    /** How wide it is, the number of digits considered. */
    public long width() {
        return Math.max(HEIGHT, Lettering.STEP.width(Integer.toString(step)) + 380);
    }

    /** Its left side. */
    public long left() {
        return x - width() / 2;
    }

    /** Its upper side. */
    public long top() {
        return y - HEIGHT / 2;
    }

    /** Where its number stands. */
    public long baseline() {
        return y + Lettering.STEP.rise() / 2;
    }

    Box box() {
        return new Box(left() - 60, top() - 30, left() + width() + 60, top() + HEIGHT + 30);
    }
}
