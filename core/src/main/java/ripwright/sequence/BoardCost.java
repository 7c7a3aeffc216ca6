package ripwright.sequence;

import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.Layout;

/** What cutting one board costs, exactly: its price and the work on it less what its leftovers are worth. */
public final class BoardCost {
    private final Job job;
    private final Salvage salvage;
    private final SawTime time;

    /** By that job's prices and labor. */
    public BoardCost(Job job) {
        this.job = job;
        this.salvage = new Salvage(job);
        this.time = new SawTime(job);
    }

    /** What that layout costs; rip settings, shared by all boards, and test blanks are not in it. */
    public Money of(Layout layout) {
        Money cost = job.cost(job.board(layout.board())).plus(time.cost(time.minutes(SawWork.of(job, layout))));
        for (Leftover leftover : new Leftovers(job, layout).all()) cost = cost.minus(salvage.worth(leftover.piece()));
        return cost;
    }
}
