package ripwright.internal.recreate;

import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;
import ripwright.internal.model.PricedLayout;

/**
 * Ruin and recreate: takes the layouts of a few boards away, pools their blanks with those not made yet, and cuts the boards
 * again one after another. The recreate step is a randomized greedy construction, exact in the filling of each strip and in
 * the choice of strips for a section. Serves one thread; keeps nothing but tables between one recut and the next.
 *
 * @see "G. Schrimpf et al., Record breaking optimization results using the ruin and recreate principle, Journal of
 *     Computational Physics 159 (2000) 139-171; pages from memory"
 */
public final class RuinAndRecreate {
    private final JobNumbers numbers;
    private final BoardRecreate cutter;
    private final double[] area; // area[p]: of a blank of part p, in square nanometers

    /** For boards of that job. */
    public RuinAndRecreate(JobNumbers numbers) {
        this.numbers = numbers;
        cutter = new BoardRecreate(numbers);
        area = new double[numbers.parts.length];
        for (PartNumbers part : numbers.parts) area[part.index] = (double) part.length * part.width;
    }

    /**
     * New layouts for {@code boards}, cut in that order.
     *
     * @param boards places of boards, each once
     * @param left blanks of each part to be made from them; what the layouts make is taken off
     * @param random where chance comes from
     * @return a layout for each of {@code boards}; null where nothing is cut
     */
    public @Nullable PricedLayout[] cut(List<Integer> boards, int[] left, RandomGenerator random) {
        return cut(boards, left, worth(random), random);
    }

    /** As {@link #cut(List, int[], RandomGenerator)}, filling strips and sections by what a blank of each part is worth. */
    public @Nullable PricedLayout[] cut(List<Integer> boards, int[] left, double[] worth, RandomGenerator random) {
        BlankPool pool = new BlankPool(left, worth, numbers.groups);
        for (PartNumbers part : numbers.parts)
            if (part.group >= 0 && left[part.index] < part.count) pool.closed[part.group] = true; // begun elsewhere
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[boards.size()];
        for (int i = 0; i < layouts.length && !pool.empty(); i++) layouts[i] = cutter.cut(boards.get(i), pool, random);
        return layouts;
    }

    /** The blanks' areas, now and then with some widths worth a little more or less, for variety. */
    private double[] worth(RandomGenerator random) {
        double[] worth = area.clone();
        if (random.nextBoolean()) return worth;
        double spread = random.nextInt(3) * 0.1;
        double[] weight = new double[numbers.widths.length];
        for (int w = 0; w < weight.length; w++) weight[w] = 1 + spread * (random.nextDouble() - 0.5);
        for (PartNumbers part : numbers.parts) worth[part.index] *= weight[part.widthIndex];
        return worth;
    }
}
