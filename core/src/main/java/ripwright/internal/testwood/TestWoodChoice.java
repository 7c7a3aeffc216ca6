package ripwright.internal.testwood;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.internal.pieces.RipSetting;
import ripwright.measure.Money;
import ripwright.plan.TestBlank.Source;

/**
 * Chooses the wood for a set of test chains: for each in turn, earliest and so widest first, from the rack, else from
 * waste, else fresh; and among wood of one source so that all together costs least. What serves one chain serves every
 * later one of its thickness, so taking the best source for the hardest chain first wastes none, and where that finds no
 * wood there is none. Branch and bound, exact while it looks at no more than {@value #MOST_NODES} choices, else the best
 * of those; the first it finds takes the cheapest each time.
 */
public final class TestWoodChoice {
    private static final int MOST_NODES = 2_000;
    private static final int MOST_CANDIDATES = 12;

    private final List<TestWood> wood;
    private final List<RipSetting> settings;
    private final List<TestChain> chains;
    private final long ripKerf;
    private final Map<Need, List<TestWood>> candidates = new HashMap<>();
    private final Map<Integer, Use> uses = new HashMap<>();
    private final List<Taken> taken = new ArrayList<>();
    private Optional<Answer> best = Optional.empty();
    private int nodes;
    private int deepest;

    /** For chains by their first setting. */
    TestWoodChoice(List<TestWood> wood, List<RipSetting> settings, List<TestChain> chains, long ripKerf) {
        this.wood = wood;
        this.settings = settings;
        this.chains = chains;
        this.ripKerf = ripKerf;
        choose(0, Money.ZERO);
    }

    /** One test blank and the wood it comes from; {@code nth} of that wood. */
    record Taken(TestChain chain, TestWood wood, int nth) {}

    /** Wood for every chain, in their order, and how good a choice it is. */
    record Answer(List<Taken> taken, long fresh, long waste, Money cost) implements Comparable<Answer> {
        private static final Comparator<Answer> BEST_FIRST = Comparator.<Answer>comparingInt(
                        answer -> answer.taken().size())
                .thenComparingLong(Answer::fresh)
                .thenComparingLong(Answer::waste)
                .thenComparing(Answer::cost);

        Answer {
            taken = List.copyOf(taken);
        }

        @Override
        public int compareTo(Answer other) {
            return BEST_FIRST.compare(this, other);
        }
    }

    private record Need(int first, long thickness, Source source) {}

    private record Use(TestWood wood, int count) {}

    /** The best choice; empty when some chain finds no wood. */
    Optional<Answer> best() {
        return best;
    }

    /** Where there is no choice: the first chain that no wood was ever found for. */
    TestChain stuck() {
        return chains.get(deepest);
    }

    private void choose(int chain, Money cost) {
        if (best.isPresent() && cost.compareTo(best.get().cost()) >= 0) return;
        if (chain == chains.size()) {
            Answer answer = new Answer(taken, count(Source.FRESH), count(Source.WASTE), cost);
            if (best.isEmpty() || answer.compareTo(best.get()) < 0) best = Optional.of(answer);
            return;
        }
        deepest = Math.max(deepest, chain);
        for (TestWood next : options(chains.get(chain))) {
            if (nodes++ >= MOST_NODES) return;
            int count = count(next) + 1;
            Use before = uses.put(next.number, new Use(next, count));
            taken.add(new Taken(chains.get(chain), next, count));
            choose(chain + 1, cost.plus(added(next, count)));
            taken.remove(taken.size() - 1);
            if (before == null) uses.remove(next.number);
            else uses.put(next.number, before);
        }
    }

    private long count(Source source) {
        return taken.stream().filter(one -> one.wood().source == source).count();
    }

    private int count(TestWood one) {
        Use use = uses.get(one.number);
        return use == null ? 0 : use.count();
    }

    private static Money added(TestWood one, int count) {
        return one.loss(count).minus(one.loss(count - 1));
    }

    /** What of the best source that is left can serve the chain, cheapest first. */
    private List<TestWood> options(TestChain chain) {
        for (Source source : Source.values()) {
            List<TestWood> left =
                    candidates
                            .computeIfAbsent(new Need(chain.first(), chain.thickness(), source), this::candidates)
                            .stream()
                            .filter(one -> isFree(one) && one.yields(count(one) + 1, widthAt(chain.first())))
                            .sorted(Comparator.comparing(
                                            (TestWood one) -> !one.piece.board().testOnly())
                                    .thenComparing(one -> added(one, count(one) + 1))
                                    .thenComparing(one -> -count(one))
                                    .thenComparing(one -> one.piece.clearLength())
                                    .thenComparing(one -> one.number))
                            .toList();
            if (!left.isEmpty()) return left;
        }
        return List.of();
    }

    /** How wide a blank must be to be ripped there. */
    private long widthAt(int setting) {
        return settings.get(setting).width() + ripKerf;
    }

    /** Blanks come from one end of a piece only. */
    private boolean isFree(TestWood one) {
        Use use = uses.get(one.number);
        return use == null || use.wood() == one;
    }

    /** As many as could be needed if each gave but one. */
    private List<TestWood> candidates(Need need) {
        return wood.stream()
                .filter(one -> one.source == need.source()
                        && one.after < need.first()
                        && one.piece.board().millsTo().nanometers() == need.thickness()
                        && one.yields(1, widthAt(need.first())))
                .sorted(Comparator.comparing(
                                (TestWood one) -> !one.piece.board().testOnly())
                        .thenComparing(one -> one.loss(1))
                        .thenComparing(one -> one.piece.clearLength())
                        .thenComparing(one -> one.number))
                .limit(2L * Math.max(MOST_CANDIDATES, chains.size()))
                .toList();
    }
}
