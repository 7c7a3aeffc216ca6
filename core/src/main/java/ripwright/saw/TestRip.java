package ripwright.saw;

import ripwright.measure.Length;

/**
 * How a rip setting is proved before good wood goes through.
 *
 * @param length how long a test blank is, along the grain
 * @param tries how many test blanks stand by for every setting; with 0 no setting is tested
 */
public record TestRip(Length length, int tries) {
    /** No setting is tested. */
    public static final TestRip NONE = new TestRip(Length.inches("12"), 0);

    /**
     * Refuses a test blank without length and a negative number of tries.
     *
     * @throws IllegalArgumentException when it is either
     */
    public TestRip {
        if (length.isZero()) throw new IllegalArgumentException("length is 0; it must be more.");
        if (tries < 0) throw new IllegalArgumentException("tries is " + tries + "; it cannot be negative.");
    }
}
