package ripwright.internal.search;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;
import ripwright.internal.model.PricedLayout;

/** One board of the search, and how it is cut: the search's only decision. */
@PlanningEntity
public final class BoardCut {
    @PlanningId
    private int board;

    private @Nullable BlankRewards rewards;

    @PlanningVariable(valueRangeProviderRefs = "layouts", nullable = true)
    private @Nullable PricedLayout layout;

    /** For the search, which fills it in. */
    public BoardCut() {}

    BoardCut(int board, BlankRewards rewards, @Nullable PricedLayout layout) {
        this.board = board;
        this.rewards = rewards;
        this.layout = layout;
    }

    /** The board's place in {@code job.boards()}. */
    public int board() {
        return board;
    }

    /** How it is cut; null while it stays whole. */
    public @Nullable PricedLayout getLayout() {
        return layout;
    }

    /** Cuts it so. */
    public void setLayout(@Nullable PricedLayout layout) {
        this.layout = layout;
    }

    PricedLayout cut() {
        if (layout == null) throw new IllegalStateException("Board " + board + " is whole.");
        return layout;
    }

    long blanksWorth() {
        return rewards().of(cut());
    }

    long wasteGathered() {
        return rewards().wasteGathered(cut());
    }

    double waste() {
        return rewards().waste(cut());
    }

    private BlankRewards rewards() {
        if (rewards == null) throw new IllegalStateException("Board " + board + " has no tariff.");
        return rewards;
    }

    @Override
    public String toString() {
        return "board " + board + (layout == null ? " whole" : " cut");
    }
}
