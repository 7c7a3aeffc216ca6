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

    /** The same plan, to be altered. Whether it holds then is for replay. */
    public Builder toBuilder() {
        return new Builder(this);
    }

    /** Builds a plan from another. For one thread; checks nothing. What it builds is immutable. */
    public static final class Builder {
        private final String job;
        private final Unit units;
        private Status status;
        private Cost cost;
        private Tally tally;
        private List<CutBoard> boards;
        private List<Setting> settings;
        private List<TestBlank> testBlanks;
        private List<Step> steps;
        private List<Offcut> offcuts;
        private List<Shortage> shortages;
        private List<Caution> cautions;

        private Builder(Plan plan) {
            job = plan.job;
            units = plan.units;
            status = plan.status;
            cost = plan.cost;
            tally = plan.tally;
            boards = plan.boards;
            settings = plan.settings;
            testBlanks = plan.testBlanks;
            steps = plan.steps;
            offcuts = plan.offcuts;
            shortages = plan.shortages;
            cautions = plan.cautions;
        }

        /** Of that status. */
        public Builder status(Status status) {
            this.status = status;
            return this;
        }

        /** At that cost. */
        public Builder cost(Cost cost) {
            this.cost = cost;
            return this;
        }

        /** With that tally. */
        public Builder tally(Tally tally) {
            this.tally = tally;
            return this;
        }

        /** With boards cut so. */
        public Builder boards(List<CutBoard> boards) {
            this.boards = List.copyOf(boards);
            return this;
        }

        /** With those rip settings. */
        public Builder settings(List<Setting> settings) {
            this.settings = List.copyOf(settings);
            return this;
        }

        /** With those test blanks. */
        public Builder testBlanks(List<TestBlank> testBlanks) {
            this.testBlanks = List.copyOf(testBlanks);
            return this;
        }

        /** With those steps. */
        public Builder steps(List<Step> steps) {
            this.steps = List.copyOf(steps);
            return this;
        }

        /** With those offcuts. */
        public Builder offcuts(List<Offcut> offcuts) {
            this.offcuts = List.copyOf(offcuts);
            return this;
        }

        /** With those parts not made. */
        public Builder shortages(List<Shortage> shortages) {
            this.shortages = List.copyOf(shortages);
            return this;
        }

        /** With those cautions. */
        public Builder cautions(List<Caution> cautions) {
            this.cautions = List.copyOf(cautions);
            return this;
        }

        /** The plan. */
        public Plan build() {
            return new Plan(
                    job, units, status, cost, tally, boards, settings, testBlanks, steps, offcuts, shortages, cautions);
        }
    }
}
