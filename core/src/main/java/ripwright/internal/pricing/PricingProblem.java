package ripwright.internal.pricing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;

/**
 * The best layout of every board when each blank has a price: what its blanks are worth and its offcuts fetch, less what
 * its rips and crosscuts cost. No layout of a board is worth more than {@link #worth} says: where a program leaves
 * something out (defects, how tapered boards narrow along a layout, how few blanks of a kind there are over the whole
 * board) it errs upwards. Boards alike are priced once, and all boards that take the same parts share their strips and
 * sections. Serves one thread.
 *
 * @see "P. C. Gilmore, R. E. Gomory, Multistage cutting stock problems of two and more dimensions, Operations Research 13
 *     (1965) 94-120"
 */
public final class PricingProblem {
    private final JobNumbers numbers;
    private final ItemTypes kinds;
    private final ScaledMoney coins;
    private final int[] wanted; // wanted[k]: blanks of part kind k on the bill
    private final BoardClassPricing[] woods;
    private final int[] woodOf; // woodOf[k]: of board kind k, or -1
    private final int[] placeIn; // its place there
    private BooleanSupplier abort = () -> false;

    /** Builds the tables for a job. */
    public PricingProblem(JobNumbers numbers) {
        this(numbers, new ItemTypes(numbers), new ScaledMoney(numbers.job()));
    }

    /** Builds the tables for a job whose kinds and coins are known already. */
    public PricingProblem(JobNumbers numbers, ItemTypes kinds, ScaledMoney coins) {
        this.numbers = numbers;
        this.kinds = kinds;
        this.coins = coins;
        wanted = new int[kinds.parts()];
        for (int k = 0; k < wanted.length; k++) wanted[k] = kinds.wanted(k);
        ScaledLabor charges = ScaledLabor.of(numbers, coins);
        List<BoardClass> all = BoardClass.all(numbers, kinds, coins, charges);
        woods = new BoardClassPricing[all.size()];
        woodOf = new int[kinds.boards()];
        placeIn = new int[kinds.boards()];
        Arrays.fill(woodOf, -1);
        for (int w = 0; w < woods.length; w++) {
            BoardClass wood = all.get(w);
            woods[w] = new BoardClassPricing(wood, kinds, coins, charges, () -> abort.getAsBoolean());
            for (int i = 0; i < wood.boardKinds.length; i++) {
                woodOf[wood.boardKinds[i]] = w;
                placeIn[wood.boardKinds[i]] = i;
            }
        }
    }

    /** From now on breaks a pricing off with {@link PricingStopped} as soon as that says so; it is asked very often. */
    public void abortWhen(BooleanSupplier abort) {
        this.abort = abort;
    }

    /** Reckons every board at those prices, one for each kind of parts, in coins, none below zero. */
    public void price(long[] prices) {
        for (BoardClassPricing wood : woods) wood.price(prices, wanted);
    }

    /**
     * As {@link #price(long[])}, but for a smaller bill.
     *
     * @param most how many blanks of each part kind are wanted at most; a strip has no more of them, a section only where
     *     few are
     */
    public void price(long[] prices, int[] most) {
        for (BoardClassPricing wood : woods) wood.price(prices, most);
    }

    /**
     * Reckons boards of one kind alone; what was reckoned for others is forgotten.
     *
     * @param boardKind the kind of the board
     * @param prices of a blank of each part kind, in coins, none below zero
     * @param most how many blanks of each kind are wanted at most; a strip has no more of them, a section only where few are
     */
    public void price(int boardKind, long[] prices, int[] most) {
        int[] least = new int[most.length];
        for (int k = 0; k < least.length; k++) least[k] = Math.min(most[k], wanted[k]);
        if (woodOf[boardKind] >= 0) woods[woodOf[boardKind]].priceOnly(placeIn[boardKind], prices, least);
    }

    /**
     * Looks at boards of one kind again that were just reckoned at those prices: if the sections of the best layout have more
     * of a blank together than is wanted, for the best layout that has not.
     *
     * @param mostSteps how long to look; after that the pricing problem errs upwards once more
     * @param enough a worth that need not be told from less
     * @param stop asked at every step; the pricing problem errs upwards as well when it says so
     */
    public void sharpen(int boardKind, long[] prices, int[] most, int mostSteps, long enough, BooleanSupplier stop) {
        if (!cuts(boardKind)) return;
        woods[woodOf[boardKind]].sharpen(placeIn[boardKind], prices, most, mostSteps, enough, stop);
    }

    /** Whether a board of that kind can be cut at all. */
    public boolean cuts(int boardKind) {
        return woodOf[boardKind] >= 0 && worth(boardKind) != StripPricing.NONE;
    }

    /** What no layout of a board of that kind exceeds, in coins; very far below zero where there is none. */
    public long worth(int boardKind) {
        return woodOf[boardKind] < 0 ? StripPricing.NONE : woods[woodOf[boardKind]].worth(placeIn[boardKind]);
    }

    /**
     * A best layout of a board at those prices, of no more blanks than are allowed: as the pricing problem reckons it, then filled
     * with real blanks one strip after another. So where few blanks are left another layout may be better; and none comes of
     * it where a defect is in the way.
     *
     * @param board the board's place in {@code job.boards()}
     * @param prices of a blank of each part, in millionths of the currency; of parts alike the highest counts
     * @param most how many of each part at most
     */
    public Optional<PricedLayout> best(int board, double[] prices, int[] most) {
        long[] coinPrices = new long[kinds.parts()];
        int[] kindMost = new int[kinds.parts()];
        for (int p = 0; p < prices.length; p++) {
            int kind = kinds.typeOfPart(p);
            coinPrices[kind] = Math.max(coinPrices[kind], Math.round(prices[p] * coins.perMillionth()));
            kindMost[kind] += most[p];
        }
        int boardKind = kinds.typeOfBoard(board);
        price(boardKind, coinPrices, kindMost);
        if (!cuts(boardKind)) return Optional.empty();
        return LayoutConstruction.of(numbers, kinds, board, pattern(boardKind), coinPrices, most);
    }

    /**
     * Whether a board gives certain blanks.
     *
     * @param pattern a layout that gives them, as far as the pricing problem knows the board; empty when none was found
     * @param sure whether there is none when none was found
     */
    public record Given(Optional<Pattern> pattern, boolean sure) {}

    /** Whether a board of that kind gives so many blanks of each part kind, all from one layout. */
    public Given holding(int boardKind, int[] made) {
        if (woodOf[boardKind] < 0) return new Given(Optional.empty(), true);
        return woods[woodOf[boardKind]].holding(placeIn[boardKind], made);
    }

    /** The layout of real blanks that comes of a pattern for a board of its kind, of no more blanks than are allowed. */
    public Optional<PricedLayout> place(int board, Pattern pattern, long[] prices, int[] most) {
        return LayoutConstruction.of(numbers, kinds, board, pattern, prices, most);
    }

    /** The layout that worth was reckoned for; only where {@link #cuts}. */
    public Pattern pattern(int boardKind) {
        return woods[woodOf[boardKind]].pattern(placeIn[boardKind]);
    }
}
