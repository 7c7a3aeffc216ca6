package ripwright.runner.sheet.drawing;

import java.util.List;

/** How areas are filled: each kind differs from the others by the slope, the spacing or the grouping of its lines. */
public enum Hatching {
    /** An offcut: single lines, wide apart, rising to the right. */
    OFFCUT,
    /** Waste: single lines, close together, falling to the right. */
    WASTE,
    /** A test blank: lines in pairs, rising to the right. */
    TEST_BLANK,
    /** A defect that bars every part: crossed lines, very close. */
    DEFECT,
    /** A defect that bars show parts only: crossed lines, further apart. */
    SOUND_DEFECT;

    /** The sets of parallel lines it is made of. */
    public List<Family> families() {
        return switch (this) {
            case OFFCUT -> List.of(new Family(1, 1000, 0));
            case WASTE -> List.of(new Family(-1, 360, 0));
            case TEST_BLANK -> List.of(new Family(1, 1000, 0), new Family(1, 1000, 220));
            case DEFECT -> List.of(new Family(1, 260, 0), new Family(-1, 260, 0));
            case SOUND_DEFECT -> List.of(new Family(1, 520, 0), new Family(-1, 520, 0));
        };
    }

    /**
     * Parallel lines at 45 degrees.
     *
     * @param rise 1 when they rise to the right, -1 when they fall
     * @param spacing from one to the next along x, in hundredths of a point
     * @param phase where along x the first one starts
     */
    public record Family(int rise, long spacing, long phase) {
        /** Which line of the family goes through that spot, as where it crosses y = 0. */
        long offset(Spot spot) {
            return spot.x() + rise * spot.y();
        }
    }
}
