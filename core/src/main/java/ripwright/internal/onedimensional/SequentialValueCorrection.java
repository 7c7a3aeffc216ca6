package ripwright.internal.onedimensional;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Fills strips of ripped stock one after another, each with the dearest blanks that are left. What a blank is worth is
 * learned: in every pass those that ended on wasteful strips become dearer, so that they come earlier in the next.
 *
 * @see "G. Belov, G. Scheithauer, Setup and open-stacks minimization in one-dimensional stock cutting, INFORMS Journal on
 *     Computing 19 (2007) 27-35; the correction from memory"
 */
public final class SequentialValueCorrection {
    private static final int OFTEN = 8;

    private final RippedStock stock;
    private final RippedStripPricing best;
    private final SplittableRandom random;
    private final BooleanSupplier stop;
    private final double[] value; // value[k]: of a blank of type k
    private final double longest; // ticks of the longest board

    SequentialValueCorrection(RippedStock stock, SplittableRandom random, BooleanSupplier stop) {
        this.stock = stock;
        this.random = random;
        this.stop = stop;
        best = new RippedStripPricing(stock);
        value = new double[stock.parts()];
        longest = IntStream.range(0, stock.boards()).map(stock::room).max().orElse(1);
        for (int k = 0; k < value.length; k++) value[k] = stock.ticks(k) / longest;
    }

    /** One pass over what is left of {@code begun}; unfinished where that cannot cost less than {@code most}. */
    PartialCutting pass(PartialCutting begun, long most) {
        PartialCutting cut = begun.copy();
        double power = 1 + random.nextDouble() * 0.05;
        while (!cut.complete() && cut.cost() < most && !stop.getAsBoolean()) {
            best.price(value, cut.left());
            int dearest = -1;
            for (int s = 0; s < stock.boards(); s++)
                if (cut.free(s) > 0 && best.worth(s) > 0 && (dearest < 0 || rate(s) > rate(dearest))) dearest = s;
            if (dearest < 0) break;
            RippedStock.Strip strip = best.strip(dearest);
            correct(strip, power);
            for (int n = copies(strip, cut); n > 0 && cut.cut(strip); n--) {}
        }
        return cut.complete() ? cut.onCheapest() : cut;
    }

    /** One; of what could be cut often, a part at once. */
    private static int copies(RippedStock.Strip strip, PartialCutting cut) {
        int[] types = strip.partTypes();
        int most = Integer.MAX_VALUE;
        for (int i = 0, same = 0; i < types.length; i++) {
            same = i > 0 && types[i] == types[i - 1] ? same + 1 : 1;
            most = Math.min(most, cut.left(types[i]) / same);
        }
        return Math.max(1, most / OFTEN);
    }

    private double rate(int boardType) {
        return best.worth(boardType) / Math.max(1, stock.cost(boardType));
    }

    private void correct(RippedStock.Strip strip, double power) {
        int used = Arrays.stream(strip.partTypes()).map(stock::ticks).sum();
        double room = stock.room(strip.boardType());
        int[] wanted = stock.wanted();
        for (int k : strip.partTypes()) {
            double share = 0.5 / wanted[k];
            value[k] += share * (Math.pow(stock.ticks(k) / longest, power) * room / used - value[k]);
        }
    }
}
