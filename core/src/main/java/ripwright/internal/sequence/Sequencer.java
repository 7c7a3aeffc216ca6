package ripwright.internal.sequence;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ripwright.internal.cost.Buying;
import ripwright.internal.cost.PlanCost;
import ripwright.internal.cost.WoodTally;
import ripwright.internal.geometry.Layout;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.PlanIds;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.stock.Board;

/**
 * Turns what a search found into the whole plan: names every piece, plans the test blanks, writes the steps in the
 * order of work, lists what goes back to the rack and what to buy, and reckons the cost. The same job and layouts give
 * the same plan. A few passes over all pieces; quick next to any search.
 */
public final class Sequencer {
    private final Job job;
    private final List<Layout> layouts;
    private final Money lowerBound;

    /**
     * For those layouts.
     *
     * @param job the job
     * @param layouts how each consumed board is cut, in any order; boards that stay whole are not listed
     * @param lowerBound a proven floor under the net cost of every plan that makes as much
     */
    public Sequencer(Job job, List<Layout> layouts, Money lowerBound) {
        this.job = job;
        this.layouts =
                layouts.stream().sorted(Comparator.comparingInt(Layout::board)).toList();
        this.lowerBound = lowerBound;
    }

    /**
     * The plan.
     *
     * @throws NoTestWoodException when the layouts leave no wood, in time, to prove one of the rip settings on
     */
    public Plan plan() {
        PlanIds ids = new PlanIds(job);
        CutPieces cutting = new CutPieces(job, layouts, ids);
        TestPlan tests = new TestPlan(job, layouts, cutting, ids);
        ListedOffcuts offcuts = new ListedOffcuts(job, layouts, cutting, tests, ids);
        StepOrder order = new StepOrder(job, cutting, tests, offcuts);
        List<Board> consumed = new ArrayList<>();
        List<CutBoard> cut = new ArrayList<>();
        List<Board> boards = job.boards();
        for (int i = 0; i < boards.size(); i++) {
            if (!cutting.cuts(i) && !tests.opens(boards.get(i))) continue;
            consumed.add(boards.get(i));
            cut.add(cutting.board(i));
        }
        PlanCost costing = new PlanCost(job);
        BigDecimal minutes = costing.minutes(layouts, cutting, tests);
        List<Shortage> shortages = new Buying(job).shortages(layouts);
        return new Plan(
                job.name(),
                job.units(),
                shortages.isEmpty() ? Plan.Status.COMPLETE : Plan.Status.SHORT,
                costing.cost(consumed, offcuts.worth(), minutes, lowerBound),
                WoodTally.tally(job, layouts, consumed, offcuts.all(), minutes),
                cut,
                tests.settings(),
                tests.blanks().stream().map(TestPlan.ProvingBlank::blank).toList(),
                order.steps(),
                offcuts.all(),
                shortages,
                new Cautions(job, cutting, tests, order.steps(), shortages).all());
    }
}
