package ripwright.internal.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.SawTime;
import ripwright.internal.geometry.SawWork;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.RipSetting;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.plan.Cost;
import ripwright.stock.Board;

/** What a plan costs: exact until printed, then stock, salvage and labor each rounded once. */
public final class PlanCost {
    private final Job job;
    private final SawTime time;

    public PlanCost(Job job) {
        this.job = job;
        this.time = new SawTime(job);
    }

    /** The time at the saws, exactly. */
    public BigDecimal minutes(List<Layout> layouts, CutPieces cutting, TestPlan tests) {
        SawWork work = new SawWork(0, 0, tests.crosscuts());
        for (Layout layout : layouts) work = work.plus(SawWork.of(job, layout));
        int settings = cutting.settings().size();
        int tested = tests.blanks().isEmpty()
                ? 0
                : (int) cutting.settings().stream().filter(RipSetting::tested).count();
        return time.minutes(work).add(time.settingMinutes(settings, tested));
    }

    /** As printed; {@code lowerBound} is a proven one under the net cost of every plan that makes as much. */
    public Cost cost(List<Board> consumed, Money salvage, BigDecimal minutes, Money lowerBound) {
        Money stock = Money.ZERO;
        for (Board board : consumed) stock = stock.plus(job.cost(board));
        BigDecimal labor = time.cost(minutes).rounded();
        BigDecimal net = stock.rounded().subtract(salvage.rounded()).add(labor);
        BigDecimal bound = lowerBound.roundedDown().min(net);
        return new Cost(
                stock.rounded(), salvage.rounded(), labor, net, bound, gap(net, bound), net.compareTo(bound) == 0);
    }

    private static BigDecimal gap(BigDecimal net, BigDecimal bound) {
        if (net.signum() == 0) return BigDecimal.ZERO.setScale(4);
        return net.subtract(bound).divide(net.abs(), 4, RoundingMode.UP);
    }
}
