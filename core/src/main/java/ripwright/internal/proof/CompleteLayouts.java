package ripwright.internal.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.Demand;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.pricing.Pattern;
import ripwright.internal.pricing.PricingProblem;

/**
 * Layouts of real blanks that make the whole bill.
 *
 * @param layouts one for each board that is cut
 * @param money what they cost, rip settings included
 */
public record CompleteLayouts(List<PricedLayout> layouts, long money) {
    /** What comes of patterns of different boards; empty when some blank is left unmade. */
    static Optional<CompleteLayouts> of(Demand demand, PricingProblem pricing, @Nullable Pattern[] patterns) {
        int[] left = demand.numbers.wanted();
        int[] used = new int[demand.copies.length];
        long[] prices = new long[demand.wanted.length];
        Arrays.fill(prices, 1);
        List<PricedLayout> layouts = new ArrayList<>();
        for (Pattern pattern : patterns) {
            if (pattern == null) continue;
            int board = demand.types.boardsOf(pattern.boardType())[used[pattern.boardType()]++];
            Optional<PricedLayout> layout = pricing.place(board, pattern, prices, left);
            if (layout.isEmpty()) continue;
            for (int part : layout.get().made()) left[part]--;
            layouts.add(layout.get());
        }
        if (Arrays.stream(left).anyMatch(n -> n > 0)) return Optional.empty();
        return Optional.of(new CompleteLayouts(List.copyOf(layouts), cost(demand, layouts)));
    }

    private static long cost(Demand demand, List<PricedLayout> layouts) {
        Set<Long> widths = new HashSet<>();
        double net = 0;
        for (PricedLayout layout : layouts) {
            net += layout.net() - layout.cost();
            for (long width : layout.widths()) widths.add(width);
        }
        net += (double) widths.size() * demand.numbers.settingCost();
        long money = demand.money.up(net);
        for (PricedLayout layout : layouts)
            money += demand.money.cost(layout.layout().board());
        return money;
    }
}
