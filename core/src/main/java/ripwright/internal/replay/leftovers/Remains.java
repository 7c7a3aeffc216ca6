package ripwright.internal.replay.leftovers;

import java.util.List;
import ripwright.internal.replay.Tolerance;
import ripwright.plan.Offcut;
import ripwright.plan.TestBlank;

/**
 * What is left of one board, section or strip once its test blanks are cut, held against the offcuts listed for it.
 *
 * @param of the id of the board, section or strip
 * @param taken where each test blank was cut
 * @param unplaced the test blanks that no leftover has room for
 * @param kept the leftovers that go to the rack
 * @param mistaken the offcuts that are listed as what they are not
 * @param missing the leftovers that go to the rack and that the plan does not list
 * @param unexplained the listed offcuts that nothing is left for
 * @param waste the leftovers that are too small for the rack
 * @param fewestCuts how many crosscuts the test blanks took, at least
 * @param mostCuts how many they took at most; where the test blanks were cut can leave that open
 */
public record Remains(
        String of,
        List<Taken> taken,
        List<TestBlank> unplaced,
        List<ReplayLeftover> kept,
        List<Mistaken> mistaken,
        List<ReplayLeftover> missing,
        List<Offcut> unexplained,
        List<ReplayLeftover> waste,
        int fewestCuts,
        int mostCuts) {
    /**
     * Where a test blank was cut.
     *
     * @param blank the test blank
     * @param from the leftover it was cut from, as it was before any test blank was
     * @param cut where it lies, and how wide it is there
     * @param dueSource where it comes from
     * @param byOwnEnd whether its width is that of its own narrower end, and no other
     */
    public record Taken(
            TestBlank blank, ReplayLeftover from, CutDown.Cut cut, TestBlank.Source dueSource, boolean byOwnEnd) {
        /** As wide as its own narrower end; in older plans also as that of the piece it is cut from. */
        public boolean asWideAsListed() {
            long listed = blank.width().nanometers();
            return Tolerance.same(listed, cut.width()) || (!byOwnEnd && Tolerance.same(listed, from.narrow()));
        }
    }

    /**
     * A listed offcut and the leftover it must be.
     *
     * @param offcut as listed
     * @param leftover as it is
     * @param differences a sentence each
     */
    record Mistaken(Offcut offcut, ReplayLeftover leftover, List<String> differences) {}

    Remains withCuts(int fewest, int most) {
        return new Remains(of, taken, unplaced, kept, mistaken, missing, unexplained, waste, fewest, most);
    }

    /** How much of what the plan says it leaves unexplained. */
    int faults() {
        long wrong = taken.stream()
                .filter(test -> !test.asWideAsListed() || test.blank().source() != test.dueSource())
                .count();
        int differences = mistaken.stream()
                .mapToInt(offcut -> offcut.differences().size())
                .sum();
        return Math.toIntExact(wrong)
                + differences
                + 10 * (missing.size() + unexplained.size())
                + 100 * unplaced.size();
    }
}
