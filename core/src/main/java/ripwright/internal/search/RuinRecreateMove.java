package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/** Cuts a few boards again: their blanks and those not made yet, by chance drawn from the move's own seed. */
public final class RuinRecreateMove extends AbstractMove<CuttingSolution> {
    private static final int ONE_SHORT_OF = 8;

    private final List<BoardCut> cuts;
    private final long seed;
    private @Nullable PricedLayout @Nullable [] after; // what the boards become; computed once

    RuinRecreateMove(List<BoardCut> cuts, long seed) {
        this.cuts = cuts;
        this.seed = seed;
    }

    private RuinRecreateMove(List<BoardCut> cuts, @Nullable PricedLayout[] after) {
        this(cuts, 0);
        this.after = after;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<CuttingSolution> scoreDirector) {
        return true;
    }

    /** Comes before the move on one thread and after it on a move thread; what it undoes is drawn from the boards now. */
    @Override
    protected RuinRecreateMove createUndoMove(ScoreDirector<CuttingSolution> scoreDirector) {
        @Nullable PricedLayout[] before = new @Nullable PricedLayout[cuts.size()];
        for (int i = 0; i < before.length; i++) before[i] = cuts.get(i).getLayout();
        return new RuinRecreateMove(cuts, before);
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // a layout set again is the same object; comparing it deeply would cost more
    protected void doMoveOnGenuineVariables(ScoreDirector<CuttingSolution> scoreDirector) {
        if (after == null) after = recut(scoreDirector.getWorkingSolution());
        for (int i = 0; i < after.length; i++) {
            BoardCut cut = cuts.get(i);
            if (cut.getLayout() == after[i]) continue;
            scoreDirector.beforeVariableChanged(cut, "layout");
            cut.setLayout(after[i]);
            scoreDirector.afterVariableChanged(cut, "layout");
        }
    }

    private @Nullable PricedLayout[] recut(CuttingSolution cutting) {
        int[] left = cutting.missing();
        List<Integer> boards = new ArrayList<>();
        for (BoardCut cut : cuts) {
            boards.add(cut.board());
            PricedLayout layout = cut.getLayout();
            if (layout != null) for (int part : layout.made()) left[part]++;
        }
        return recut(cutting.tables(), boards, left, new SplittableRandom(seed));
    }

    /** Now and then the first board keeps its end for a test blank. */
    private static @Nullable PricedLayout[] recut(
            RecreateTables tables, List<Integer> boards, int[] left, SplittableRandom random) {
        JobNumbers numbers = tables.numbers();
        if (!numbers.proving().wanted() || random.nextInt(ONE_SHORT_OF) > 0)
            return tables.recut().cut(boards, left, random);
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[boards.size()];
        PricedLayout first = tables.shortRecut().cut(boards.subList(0, 1), left, random)[0];
        if (first != null) layouts[0] = numbers.priced(first.layout());
        @Nullable PricedLayout[] others = tables.recut().cut(boards.subList(1, boards.size()), left, random);
        System.arraycopy(others, 0, layouts, 1, others.length);
        return layouts;
    }

    @Override
    public RuinRecreateMove rebase(ScoreDirector<CuttingSolution> destination) {
        List<BoardCut> there = rebaseList(cuts, destination);
        return after == null ? new RuinRecreateMove(there, seed) : new RuinRecreateMove(there, after);
    }

    @Override
    public Collection<? extends Object> getPlanningEntities() {
        return cuts;
    }

    @Override
    public Collection<? extends Object> getPlanningValues() {
        return List.of();
    }

    @Override
    public String toString() {
        return "recut of " + cuts;
    }
}
