package ripwright.internal.pricing;

import java.util.List;

/**
 * A layout of a board as a program reckoned it: which blanks, not yet where. Where a program errs upwards, the blanks may be
 * more than there is room for, or than the bill wants.
 *
 * @param boardType the type of the board
 * @param worth what it is worth at the prices it was reckoned for, in scaled money: blanks and offcuts less labor
 * @param sections its sections, in any order
 */
public record Pattern(int boardType, long worth, List<Section> sections) {
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
     * @param partTypes the types of its blanks
     */
    public record Strip(long width, List<Integer> partTypes) {
        /** Keeps a copy of the list. */
        public Strip {
            partTypes = List.copyOf(partTypes);
        }
    }

    /** How many blanks of each type it makes. */
    public int[] made(int partTypes) {
        int[] made = new int[partTypes];
        for (Section section : sections)
            for (Strip strip : section.strips()) for (int type : strip.partTypes()) made[type]++;
        return made;
    }
}
