package ripwright.internal.testwood;

import java.util.List;

/**
 * The settings one test blank proves, ripped narrower at each.
 *
 * @param thickness the blank's, in nanometers
 * @param settings their places, widest first, each at least a rip kerf narrower than the one before
 */
public record TestChain(long thickness, List<Integer> settings) {
    public TestChain {
        settings = List.copyOf(settings);
    }

    /** The place of the first setting it proves. */
    int first() {
        return settings.get(0);
    }
}
