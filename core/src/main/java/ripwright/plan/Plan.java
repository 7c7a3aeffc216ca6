package ripwright.plan;

import java.util.List;
import ripwright.measure.Unit;

/**
 * The whole answer to a job: which board every part comes from and how it is cut.
 *
 * @param job the job's name
 * @param units what the job's lengths are written in
 * @param status whether every part is made
 * @param cost what it costs, and how far it can be from the cheapest
 * @param tally where the wood goes and how long it takes
 * @param boards how every consumed board is cut, in the order of the job; a board opened for test wood alone has no
 *     sections
 * @param settings the rip settings, widest first
 * @param testBlanks the test blanks, in the order they are first needed
 * @param steps the order of work
 * @param offcuts what goes to the rack
 * @param shortages the parts that are not made
 * @param cautions what to mind
 */
public record Plan(
        String job,
        Unit units,
        Status status,
        Cost cost,
        Tally tally,
        List<CutBoard> boards,
        List<Setting> settings,
        List<TestBlank> testBlanks,
        List<Step> steps,
        List<Offcut> offcuts,
        List<Shortage> shortages,
        List<Caution> cautions) {
    /** Whether every part is made. */
    public enum Status {
        /** Every part is made. */
        COMPLETE,
        /** Some are not. */
        SHORT
    }

    /** Keeps copies of the lists. */
    public Plan {
        boards = List.copyOf(boards);
        settings = List.copyOf(settings);
        testBlanks = List.copyOf(testBlanks);
        steps = List.copyOf(steps);
        offcuts = List.copyOf(offcuts);
        shortages = List.copyOf(shortages);
        cautions = List.copyOf(cautions);
    }
}
