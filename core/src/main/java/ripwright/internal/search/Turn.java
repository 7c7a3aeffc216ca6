package ripwright.internal.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.onedimensional.RippedStockHeuristic;

/**
 * What one thread does in one round of the search. Until the floor is known it anneals the best answer. After that some turns
 * better the best answer, and the others begin afresh, as an answer packed tight is hard to leave: from a greedy answer,
 * which is quick, or from the layouts the floor rests on. How often each, and how long, was found by trying.
 *
 * @param tables what the recuts of the job share
 * @param ripped its ripped stock
 * @param lowerBound the floor under plans that make the whole bill, once it is known
 * @param moves how many recuts an annealing tries
 * @param watch ends it
 */
public record Turn(
        RecreateTables tables,
        RippedStockHeuristic ripped,
        Optional<LowerBound> lowerBound,
        long moves,
        SolverWatch watch) {
    private static final int MOST_PARTS_AFRESH = 250; // beyond, a greedy answer is too far from a good one
    private static final int MOST_PARTS_FOR_DIVES = 700;
    private static final int MANY = 50; // small recuts; more where there are more parts
    private static final int SOME = 30;
    private static final int FEW = 20;
    private static final int FEWER_WITH_MONEY = 10; // where offcuts and labor count, and each takes up to seconds
    private static final int AGAIN = 3; // annealed a little and cut again, for a fresh answer

    private static final double WARM = 0.01; // of a mean board's price
    private static final double COOL = 0.005;

    /** The kinds of turns, in their order; neighbors run side by side. */
    private enum Kind {
        RECUT_BEST,
        DIVE,
        FRESH,
        ANNEAL_BEST
    }

    private static final Kind[] SOME_PARTS = {
        Kind.RECUT_BEST, Kind.DIVE, Kind.FRESH, Kind.FRESH, Kind.ANNEAL_BEST, Kind.DIVE, Kind.FRESH, Kind.FRESH
    };
    private static final Kind[] MANY_PARTS = {Kind.RECUT_BEST, Kind.DIVE, Kind.DIVE, Kind.DIVE};

    /** What the {@code turn}-th turn makes of the best answer so far, or of none. */
    Incumbent taken(int turn, Incumbent from, long seed) {
        if (watch.stopped()) return from;
        if (lowerBound.isEmpty()) return anneal(turn, moves).from(from, seed);
        SplittableRandom random = new SplittableRandom(seed);
        Kind[] kinds = wanted() <= MOST_PARTS_AFRESH ? SOME_PARTS : MANY_PARTS;
        return switch (kinds[turn % kinds.length]) {
            case RECUT_BEST ->
                small()
                        ? recut(from, Math.max(MANY, wanted() / 2), random)
                        : anneal(turn, moves).from(from, seed);
            case ANNEAL_BEST -> anneal(turn, moves).from(from, seed);
            case DIVE -> recut(anneal(turn, moves).from(rounded(random), seed), FEW, random);
            case FRESH -> fresh(random);
        };
    }

    /** Waste is gathered but in every third turn, which is the coolest. */
    private SimulatedAnnealing anneal(int turn, long most) {
        SimulatedAnnealing anneal = new SimulatedAnnealing(
                tables, SimulatedAnnealing.HEATS[turn % SimulatedAnnealing.HEATS.length], most, watch);
        return turn % SimulatedAnnealing.HEATS.length == 0 ? anneal : anneal.wasteGathered();
    }

    /** A greedy answer, annealed shortly and cut again, a few times: many quick ones find more than a few long ones. */
    private Incumbent fresh(SplittableRandom random) {
        Incumbent best = new GreedyHeuristic(tables, watch::stopped).best(random.split());
        long most = moves / 2;
        for (int i = 0; i <= AGAIN && !watch.stopped(); i++) {
            SimulatedAnnealing anneal =
                    new SimulatedAnnealing(tables, i == 0 ? WARM : COOL, most, watch).wasteGathered();
            Incumbent other = recut(anneal.from(best, random.nextLong()), SOME, random);
            if (other.betterThan(best)) best = other;
            most = moves / 4;
        }
        return best;
    }

    /** An answer to begin with that owes little to those so far. */
    private Incumbent rounded(SplittableRandom random) {
        JobNumbers numbers = tables.numbers();
        if (ripped.all()) return Incumbent.of(numbers, ripped.layouts(random));
        GreedyHeuristic greedy = new GreedyHeuristic(tables, watch::stopped);
        boolean dives = wanted() <= MOST_PARTS_FOR_DIVES && !numbers.grouped();
        return dives
                ? new DivingHeuristic(numbers, greedy, lowerBound.orElseThrow(), watch::stopped).answer(random)
                : new RoundingHeuristic(numbers, greedy, lowerBound.orElseThrow()).best(random);
    }

    /** An answer with some boards cut again by the proof, if it makes the whole bill. */
    private Incumbent recut(Incumbent from, int tries, SplittableRandom random) {
        if (!small() || from.blanks() < wanted()) return from;
        int most = tables.numbers().boardsAlone() ? tries : tries / FEWER_WITH_MONEY;
        return new ExactNeighborhood(tables.numbers(), lowerBound.orElseThrow(), watch::stopped)
                .better(from, most, random);
    }

    /** Whether a few of the job's boards make a job of their own. */
    private boolean small() {
        return !tables.numbers().grouped();
    }

    private int wanted() {
        return Arrays.stream(tables.numbers().wanted()).sum();
    }
}
