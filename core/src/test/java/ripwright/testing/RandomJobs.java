package ripwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/**
 * Jobs with a random stack and a random bill. The same seed, size and features make the same job. Lengths are on a 1/32 in
 * grid, kerfs are 1/8 in; parts average so much that about half of the stack is needed.
 */
public final class RandomJobs {
    private static final int GRID = 32;
    private static final double MEAN_WIDTH = 3.4; // of a blank, in inches
    private static final double MEAN_BOARD = 560; // square inches
    private static final double NEEDED = 0.55; // of the stack

    private RandomJobs() {}

    /** A job of that size with those features, on a grid of 1/32 in. */
    public static Job random(SplittableRandom random, JobSize size, Features features) {
        return random(random, size, features, GRID);
    }

    /** A job of that size with those features, on a grid of one {@code perInch}th of an inch. */
    public static Job random(SplittableRandom random, JobSize size, Features features, int perInch) {
        Dice dice = Dice.of(random, features, perInch);
        StockDraw stock = new StockDraw(dice, features);
        ShopDraw shop = new ShopDraw(dice, features);
        int lines = Math.max(1, Math.min(40, size.parts() / 3));
        BillDraw bill = new BillDraw(dice, features, lines, meanLength(size));
        List<Part> parts = parts(dice, features, size, lines, bill, stock);
        JobBuilder job = shop.shop("random", shop.saw())
                .parts(parts)
                .stack(stack(dice, features, size, stock, blankWidths(parts)));
        if (features.has(Feature.RACK)) job.rack(rack(dice, stock, blankWidths(parts)));
        return job.build();
    }

    /** A job that grows with {@code size}, a case for {@link Seeds}: features as they fall. */
    public static Job growing(SplittableRandom random, int size) {
        JobSize grown = new JobSize(random.nextInt(1, size + 2), random.nextInt(1, 2 + size / 3));
        return random(random, grown, Features.some(random));
    }

    /** The same with every setting tested, and offcuts kept only when they are large, so that there is waste. */
    public static Job proved(SplittableRandom random, int size) {
        Job job = growing(random, size);
        Keep keep = new Keep(inches(random.nextInt(15, 45)), inches(random.nextInt(1, 6)));
        TestRip testRip = new TestRip(job.testRip().length(), random.nextInt(1, 4));
        return JobBuilder.like(job)
                .testRip(testRip)
                .offcuts(keep, job.salvage())
                .build();
    }

    private static Length inches(int inches) {
        return Length.inches(String.valueOf(inches));
    }

    static double meanLength(JobSize size) {
        double area = NEEDED * size.boards() * MEAN_BOARD / size.parts();
        return Math.max(12, Math.min(32, area / MEAN_WIDTH));
    }

    private static List<Length> blankWidths(List<Part> parts) {
        return parts.stream().map(Part::blankWidth).distinct().toList();
    }

    private static List<Part> parts(
            Dice dice, Features features, JobSize size, int lines, BillDraw bill, StockDraw stock) {
        int[] counts = new int[lines];
        for (int i = 0; i < size.parts(); i++) counts[i < lines ? i : dice.whole(0, lines - 1)]++;
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            Set<Species> species = bill.including(dice.of(stock.woods()), stock.woods());
            Part.Builder line = bill.line(
                    "part " + (i + 1),
                    counts[i],
                    bill.lengths().get(i),
                    bill.width(),
                    dice.of(stock.thicknesses()),
                    species);
            boolean grouped = features.has(Feature.TOGETHER) && counts[i] <= 4 && dice.chance(0.3);
            parts.add(grouped ? line.together("group " + dice.whole(1, 2)).build() : line.build());
        }
        if (features.has(Feature.SHORT_STOCK) && dice.chance(0.5))
            parts.add(bill.line("too wide", 1, bill.length(), dice.nearest(14), dice.of(stock.thicknesses()), Set.of())
                    .build());
        return parts;
    }

    private static List<Board> stack(Dice dice, Features features, JobSize size, StockDraw stock, List<Length> widths) {
        int count = features.has(Feature.SHORT_STOCK) ? (size.boards() + 2) / 3 : size.boards();
        List<Board> stack = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Board.Builder board = stock.board("board " + i, widths);
            if (dice.chance(0.1)) board.price(dice.money(4, 12));
            stack.add(board.build());
        }
        return stack;
    }

    private static List<Board> rack(Dice dice, StockDraw stock, List<Length> widths) {
        List<Board> rack = new ArrayList<>();
        for (int i = dice.whole(1, 4); i > 0; i--)
            rack.add(stock.offcut("rack " + i, widths).build());
        return rack;
    }
}
