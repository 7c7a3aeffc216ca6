package ripwright.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ripwright.pattern.PricedLayout;
import ripwright.pattern.Proving;

/**
 * What proving the rip settings costs while the search runs.
 *
 * @param proving reckons it
 * @param missing what a test blank that finds no wood counts, in millionths of the currency
 */
public record ProvingPrice(Proving proving, long missing) {
    /** Of all boards, in any order. */
    long millionths(List<BoardCut> boards) {
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[boards.size()];
        for (BoardCut cut : boards) layouts[cut.board()] = cut.getLayout();
        Proving.Cost cost = proving.of(layouts);
        return cost.millionths() + cost.missing() * missing;
    }
}
