package ripwright.testing;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.countDistinct;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;

import java.util.List;
import java.util.Objects;
import org.optaplanner.core.api.score.buildin.simplelong.SimpleLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;

/** What {@link PlainOptaPlanner} minds, in millionths of the currency. */
public final class PlainConstraints implements ConstraintProvider {
    private static final long APART = 1_000_000_000; // a group from one board more costs a thousand

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {boards(factory), notMade(factory), together(factory)};
    }

    /** Boards that are cut cost their price, and blanks given to a board that do not fit cost their lack. */
    private Constraint boards(ConstraintFactory factory) {
        return factory.forEach(PlainCopy.class)
                .groupBy(copy -> Objects.requireNonNull(copy.getBoard()), toList())
                .join(PlainBench.class)
                .penalizeLong(SimpleLongScore.ONE, (board, copies, bench) -> cost(board, copies, bench))
                .asConstraint("boards");
    }

    private static long cost(int board, List<PlainCopy> copies, PlainBench bench) {
        return bench.cut(board, copies).cost();
    }

    private Constraint notMade(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(PlainCopy.class)
                .filter(copy -> copy.getBoard() == null)
                .join(PlainBench.class)
                .penalizeLong(SimpleLongScore.ONE, (copy, bench) -> bench.lack())
                .asConstraint("not made");
    }

    private Constraint together(ConstraintFactory factory) {
        return factory.forEach(PlainCopy.class)
                .filter(copy -> !copy.group().isEmpty())
                .groupBy(PlainCopy::group, countDistinct(PlainCopy::getBoard))
                .filter((group, boards) -> boards > 1)
                .penalizeLong(SimpleLongScore.ONE, (group, boards) -> APART * (boards - 1))
                .asConstraint("together");
    }
}
