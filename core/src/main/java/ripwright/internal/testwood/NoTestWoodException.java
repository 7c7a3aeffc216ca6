package ripwright.internal.testwood;

import ripwright.measure.Length;

/** Says that nothing is left, in time, to prove a rip setting on. */
public final class NoTestWoodException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Length setting;

    NoTestWoodException(Length setting, Length thickness, Length narrowest, Length length) {
        super("Nothing is left to prove the rip setting at " + setting + " on: it takes a test blank " + length
                + " long, at least " + narrowest + " wide and " + thickness + " thick that is there before.");
        this.setting = setting;
    }

    /** The width of the strips that cannot be proved. */
    public Length setting() {
        return setting;
    }
}
