package ripwright.internal.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.TestWoodCost;

/**
 * What proving the rip settings costs while the search runs.
 *
 * @param proving reckons it
 * @param missing what a test blank that finds no wood counts, in millionths of the currency
 */
public record TestWoodPrice(TestWoodCost proving, long missing) {
    /** Of all boards, in any order. */
    long millionths(List<BoardCut> boards) {
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[boards.size()];
        for (BoardCut cut : boards) layouts[cut.board()] = cut.getLayout();
        TestWoodCost.Cost cost = proving.of(layouts);
        return cost.millionths() + cost.missing() * missing;
    }
}
