package ripwright.internal.testwood;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import ripwright.internal.pieces.RipSetting;

/**
 * Which settings each test blank proves, so that as few blanks as can be prove every setting {@code tries} times. From
 * wide to narrow, a blank is ripped again wherever it can be, and a new one begun only where none can: with one
 * thickness no plan begins fewer up to any setting, since all blanks that reach a setting reach every later one. Where
 * strips of several thicknesses share settings it depends on which thickness is tried first, so each order is tried.
 * Settings x blanks steps.
 */
public final class TestChains {
    private final List<RipSetting> settings;
    private final long ripKerf;
    private final int tries;

    /** For settings given widest first. */
    TestChains(List<RipSetting> settings, long ripKerf, int tries) {
        this.settings = settings;
        this.ripKerf = ripKerf;
        this.tries = tries;
    }

    /** The ways to take as few blanks as any order of thicknesses does. */
    List<List<TestChain>> fewest() {
        List<List<TestChain>> ways =
                orders().stream().map(this::preferring).distinct().toList();
        int fewest = ways.stream().mapToInt(List::size).min().orElse(0);
        return ways.stream().filter(way -> way.size() == fewest).toList();
    }

    /** One order where no setting leaves a choice of thickness, else all, or each thickness first when they are many. */
    private List<List<Long>> orders() {
        NavigableSet<Long> all = new TreeSet<>();
        for (RipSetting setting : settings) if (setting.tested()) all.addAll(setting.thicknesses());
        List<Long> rising = List.copyOf(all);
        if (settings.stream()
                .allMatch(setting -> !setting.tested() || setting.thicknesses().size() == 1)) return List.of(rising);
        List<List<Long>> orders = new ArrayList<>();
        if (all.size() <= 4) {
            permute(new ArrayList<>(rising), 0, orders);
            return orders;
        }
        for (long first : rising) {
            List<Long> order = new ArrayList<>(rising);
            order.remove(Long.valueOf(first));
            order.add(0, first);
            orders.add(order);
        }
        return orders;
    }

    private static void permute(List<Long> order, int fixed, List<List<Long>> found) {
        if (fixed == order.size()) found.add(List.copyOf(order));
        for (int i = fixed; i < order.size(); i++) {
            Collections.swap(order, fixed, i);
            permute(order, fixed + 1, found);
            Collections.swap(order, fixed, i);
        }
    }

    /** The chains, by their first setting, when the earlier thicknesses of {@code order} are taken where there is a choice. */
    private List<TestChain> preferring(List<Long> order) {
        List<Open> open = new ArrayList<>();
        for (int i = 0; i < settings.size(); i++)
            for (int n = 0; n < tries && settings.get(i).tested(); n++)
                next(open, i, order).settings.add(i);
        return open.stream()
                .map(chain -> new TestChain(chain.thickness, chain.settings))
                .toList();
    }

    private Open next(List<Open> open, int setting, List<Long> order) {
        NavigableSet<Long> thicknesses = settings.get(setting).thicknesses();
        for (long thickness : order) {
            if (!thicknesses.contains(thickness)) continue;
            for (Open chain : open) if (chain.thickness == thickness && reaches(chain, setting)) return chain;
        }
        long first = order.stream().filter(thicknesses::contains).findFirst().orElseThrow();
        Open chain = new Open(first);
        open.add(chain);
        return chain;
    }

    /** Without a kerf a blank would reach the very setting it has just been ripped at. */
    private boolean reaches(Open chain, int setting) {
        int last = chain.settings.get(chain.settings.size() - 1);
        return last != setting
                && settings.get(last).width() >= settings.get(setting).width() + ripKerf;
    }

    private static final class Open {
        private final long thickness;
        private final List<Integer> settings = new ArrayList<>();

        Open(long thickness) {
            this.thickness = thickness;
        }
    }
}
