package ripwright.internal.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Takes wood for test blanks, for those of one setting after another: of the best source there is what loses least, each
 * by itself or all of one piece.
 */
public final class TestWoodAssignment {
    private final List<Stock> stock = new ArrayList<>();
    private final long ripKerf;
    private int missing;
    private Optional<TestWoodCost.Missing> firstMissing = Optional.empty();
    private double millionths;

    TestWoodAssignment(List<TestWoodPiece> ends, long ripKerf) {
        this.ripKerf = ripKerf;
        for (TestWoodPiece end : ends) stock.add(new Stock(end));
    }

    /** A piece, and how many test blanks are cut from it so far. */
    private static final class Stock {
        private final TestWoodPiece end;
        private int taken;

        Stock(TestWoodPiece end) {
            this.end = end;
        }

        double lossOf(int blanks) {
            return end.losses()[taken + blanks - 1] - (taken == 0 ? 0 : end.losses()[taken - 1]);
        }
    }

    TestWoodCost.Cost cost() {
        return new TestWoodCost.Cost(missing, Math.round(millionths), firstMissing);
    }

    /** So many blanks of that thickness that are to be ripped to that width. */
    void take(long width, int thickness, int blanks) {
        Stock single = best(width, thickness, blanks);
        List<Stock> taken = new ArrayList<>();
        double loss = 0;
        for (int n = 0; n < blanks; n++) {
            Stock next = best(width, thickness, 1);
            if (next == null) break;
            loss += next.lossOf(1);
            next.taken++;
            taken.add(next);
        }
        int without = blanks - taken.size();
        missing += without;
        if (without > 0 && firstMissing.isEmpty())
            firstMissing = Optional.of(new TestWoodCost.Missing(width, thickness, without));
        for (Stock one : taken) one.taken--;
        boolean asGood = single != null
                && taken.stream().allMatch(one -> one.end.source() >= single.end.source())
                && single.lossOf(blanks) < loss;
        if (single != null && asGood) {
            millionths += single.lossOf(blanks);
            single.taken += blanks;
            return;
        }
        millionths += loss;
        for (Stock one : taken) one.taken++;
    }

    private @Nullable Stock best(long width, int thickness, int blanks) {
        Stock best = null;
        double least = 0;
        for (Stock one : stock) {
            if (one.end.thickness() != thickness || !one.end.proves(width, ripKerf, one.taken + blanks - 1)) continue;
            double loss = one.lossOf(blanks);
            boolean better = best == null
                    || one.end.source() < best.end.source()
                    || (one.end.source() == best.end.source() && loss < least);
            if (!better) continue;
            best = one;
            least = loss;
        }
        return best;
    }
}
