package ripwright.shared;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.stock.Board;

/**
 * One plan for each of several jobs that share a stack, to be cut one job after the other: what a job leaves lies on the
 * rack of the next. A board is paid by the job that cuts it first, and what that job is credited for an offcut, the job
 * that takes it pays; so the costs of the plans add up to what all of them cost together. Money is to the cent.
 *
 * @param turns the jobs in the order they are cut
 * @param leftOut jobs for which there was no board left at all
 */
public record SharedPlan(List<Turn> turns, List<Job> leftOut) {
    /** Keeps copies of the lists. */
    public SharedPlan {
        turns = List.copyOf(turns);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * One of them.
     *
     * @param place its place among the jobs as they were given, from 0
     * @param job the job with the stack and the rack that are there at its turn: the plan replays on it
     * @param plan its plan
     */
    public record Turn(int place, Job job, Plan plan) {
        /** Board feet of the boards of the stack that are cut for it, raw, by true thickness, each to four decimals. */
        public BigDecimal fresh() {
            Set<String> cut = plan.boards().stream().map(CutBoard::board).collect(Collectors.toSet());
            return job.stack().stream()
                    .filter(board -> cut.contains(board.id()))
                    .map(SharedPlan::feet)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    private static BigDecimal feet(Board board) {
        return BoardFeet.of(board.area(), board.thickness()).rounded();
    }

    /** What all plans cost. */
    public BigDecimal net() {
        return turns.stream().map(turn -> turn.plan().cost().net()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Board feet of the parts that all plans make. */
    public BigDecimal made() {
        return turns.stream().map(turn -> turn.plan().tally().parts()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Board feet of the stack's boards that are cut for any of them. */
    public BigDecimal fresh() {
        return turns.stream().map(Turn::fresh).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Whether every part of every job is made. */
    public boolean complete() {
        return leftOut.isEmpty() && turns.stream().allMatch(turn -> turn.plan().status() == Plan.Status.COMPLETE);
    }
}
