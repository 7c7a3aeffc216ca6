package ripwright.internal.pricing;

import java.util.List;

/**
 * A layout of a board as a program reckoned it: which blanks, not yet where. Where a program errs upwards, the blanks may be
 * more than there is room for, or than the bill wants.
 *
 * @param boardKind the kind of the board
 * @param worth what it is worth at the prices it was reckoned for, in coins: blanks and offcuts less labor
 * @param sections its sections, in any order
 */
public record Pattern(int boardKind, long worth, List<Section> sections) {
    /** Keeps a copy of the list. */
    public Pattern {
        sections = List.copyOf(sections);
    }

    /**
     * A section.
     *
     * @param length nanometers along the grain, as the program reckoned it; what it really takes may be a little more
     * @param strips its strips, widest first
     */
    public record Section(long length, List<Strip> strips) {
        /** Keeps a copy of the list. */
        public Section {
            strips = List.copyOf(strips);
        }
    }

    /**
     * A strip.
     *
     * @param width nanometers across
     * @param partKinds the kinds of its blanks
     */
    public record Strip(long width, List<Integer> partKinds) {
        /** Keeps a copy of the list. */
        public Strip {
            partKinds = List.copyOf(partKinds);
        }
    }

    /** How many blanks of each kind it makes. */
    public int[] made(int partKinds) {
        int[] made = new int[partKinds];
        for (Section section : sections)
            for (Strip strip : section.strips()) for (int kind : strip.partKinds()) made[kind]++;
        return made;
    }
}
