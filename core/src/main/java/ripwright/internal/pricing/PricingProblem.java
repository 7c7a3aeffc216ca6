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
 * something out (defects, how tapered boards narrow along a layout, how few blanks of a type there are over the whole
 * board) it errs upwards. Boards alike are priced once, and all boards that take the same parts share their strips and
 * sections. Serves one thread.
 *
 * @see "P. C. Gilmore, R. E. Gomory, Multistage cutting stock problems of two and more dimensions, Operations Research 13
 *     (1965) 94-120"
 */
public final class PricingProblem {
    private final JobNumbers numbers;
    private final ItemTypes types;
    private final ScaledMoney money;
    private final int[] wanted; // wanted[k]: blanks of part type k on the bill
    private final BoardClassPricing[] woods;
    private final int[] woodOf; // woodOf[k]: of board type k, or -1
    private final int[] placeIn; // its place there
    private BooleanSupplier abort = () -> false;

    /** Builds the tables for a job. */
    public PricingProblem(JobNumbers numbers) {
        this(numbers, new ItemTypes(numbers), new ScaledMoney(numbers.job()));
    }

    /** Builds the tables for a job whose types and money are known already. */
    public PricingProblem(JobNumbers numbers, ItemTypes types, ScaledMoney money) {
        this.numbers = numbers;
        this.types = types;
        this.money = money;
        wanted = new int[types.parts()];
        for (int k = 0; k < wanted.length; k++) wanted[k] = types.wanted(k);
        ScaledLabor charges = ScaledLabor.of(numbers, money);
        List<BoardClass> all = BoardClass.all(numbers, types, money, charges);
        woods = new BoardClassPricing[all.size()];
        woodOf = new int[types.boards()];
        placeIn = new int[types.boards()];
        Arrays.fill(woodOf, -1);
        for (int w = 0; w < woods.length; w++) {
            BoardClass wood = all.get(w);
            woods[w] = new BoardClassPricing(wood, types, money, charges, () -> abort.getAsBoolean());
            for (int i = 0; i < wood.boardTypes.length; i++) {
                woodOf[wood.boardTypes[i]] = w;
                placeIn[wood.boardTypes[i]] = i;
            }
        }
    }

    /** From now on breaks a pricing off with {@link PricingStopped} as soon as that says so; it is asked very often. */
    public void abortWhen(BooleanSupplier abort) {
        this.abort = abort;
    }

    /** Reckons every board at those prices, one for each type of parts, in scaled money, none below zero. */
    public void price(long[] prices) {
        for (BoardClassPricing wood : woods) wood.price(prices, wanted);
    }

    /**
     * As {@link #price(long[])}, but for a smaller bill.
     *
     * @param most how many blanks of each part type are wanted at most; a strip has no more of them, a section only where
     *     few are
     */
    public void price(long[] prices, int[] most) {
        for (BoardClassPricing wood : woods) wood.price(prices, most);
    }

    /**
     * Reckons boards of one type alone; what was reckoned for others is forgotten.
     *
     * @param boardType the type of the board
     * @param prices of a blank of each part type, in scaled money, none below zero
     * @param most how many blanks of each type are wanted at most; a strip has no more of them, a section only where few are
     */
    public void price(int boardType, long[] prices, int[] most) {
        int[] least = new int[most.length];
        for (int k = 0; k < least.length; k++) least[k] = Math.min(most[k], wanted[k]);
        if (woodOf[boardType] >= 0) woods[woodOf[boardType]].priceOnly(placeIn[boardType], prices, least);
    }

    /**
     * Looks at boards of one type again that were just reckoned at those prices: if the sections of the best layout have more
     * of a blank together than is wanted, for the best layout that has not.
     *
     * @param mostSteps how long to look; after that the pricing problem errs upwards once more
     * @param enough a worth that need not be told from less
     * @param stop asked at every step; the pricing problem errs upwards as well when it says so
     */
    public void sharpen(int boardType, long[] prices, int[] most, int mostSteps, long enough, BooleanSupplier stop) {
        if (!cuts(boardType)) return;
        woods[woodOf[boardType]].sharpen(placeIn[boardType], prices, most, mostSteps, enough, stop);
    }

    /** Whether a board of that type can be cut at all. */
    public boolean cuts(int boardType) {
        return woodOf[boardType] >= 0 && worth(boardType) != StripPricing.NONE;
    }

    /** What no layout of a board of that type exceeds, in scaled money; very far below zero where there is none. */
    public long worth(int boardType) {
        return woodOf[boardType] < 0 ? StripPricing.NONE : woods[woodOf[boardType]].worth(placeIn[boardType]);
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
        long[] scaledPrices = new long[types.parts()];
        int[] typeMost = new int[types.parts()];
        for (int p = 0; p < prices.length; p++) {
            int type = types.typeOfPart(p);
            scaledPrices[type] = Math.max(scaledPrices[type], Math.round(prices[p] * money.perMillionth()));
            typeMost[type] += most[p];
        }
        int boardType = types.typeOfBoard(board);
        price(boardType, scaledPrices, typeMost);
        if (!cuts(boardType)) return Optional.empty();
        return LayoutConstruction.of(numbers, types, board, pattern(boardType), scaledPrices, most);
    }

    /**
     * Whether a board gives certain blanks.
     *
     * @param pattern a layout that gives them, as far as the pricing problem knows the board; empty when none was found
     * @param sure whether there is none when none was found
     */
    public record Given(Optional<Pattern> pattern, boolean sure) {}

    /** Whether a board of that type gives so many blanks of each part type, all from one layout. */
    public Given holding(int boardType, int[] made) {
        if (woodOf[boardType] < 0) return new Given(Optional.empty(), true);
        return woods[woodOf[boardType]].holding(placeIn[boardType], made);
    }

    /** The layout of real blanks that comes of a pattern for a board of its type, of no more blanks than are allowed. */
    public Optional<PricedLayout> place(int board, Pattern pattern, long[] prices, int[] most) {
        return LayoutConstruction.of(numbers, types, board, pattern, prices, most);
    }

    /** The layout that worth was reckoned for; only where {@link #cuts}. */
    public Pattern pattern(int boardType) {
        return woods[woodOf[boardType]].pattern(placeIn[boardType]);
    }
}
