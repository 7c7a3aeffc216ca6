package ripwright.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** Jobs on ripped stock, where only lengths matter. */
public final class RippedJobs {
    private static final long STOCK = 144 * 25_400_000L; // nanometers
    private static final long LEAST = 2 * 25_400_000L; // nanometers of a part
    private static final long MOST = 20 * 25_400_000L;
    private static final Length INCH = Length.inches("1");
    private static final List<String> WOODS = List.of(JobBuilder.MAPLE, "ash");

    private RippedJobs() {}

    /**
     * A published instance of cutting stock in one dimension: no kerf, and a stock length is a board of 144 in x 1 in x 1 in,
     * which is one board foot and costs 1, so that the cost counts stock lengths.
     *
     * @param stock the stock length; 144 in must be a whole number of nanometers for each of its units
     * @param items a length and how often it is wanted, each
     * @param copies how many stock lengths there are
     */
    public static Job published(String name, long stock, List<long[]> items, int copies) {
        if (STOCK % stock != 0)
            throw new IllegalArgumentException("144 in do not come to " + stock + " lengths of whole nanometers.");
        long unit = STOCK / stock;
        List<Part> parts = new ArrayList<>();
        for (long[] item : items)
            parts.add(Part.of("part " + (parts.size() + 1), new Length(Math.multiplyExact(item[0], unit)), INCH, INCH)
                    .count(Math.toIntExact(item[1]))
                    .build());
        List<Board> boards = new ArrayList<>();
        Board.Builder board = Board.measured("", JobBuilder.MAPLE, INCH, INCH, new Length(STOCK))
                .ripped(true)
                .price(BigDecimal.ONE);
        for (int i = 1; i <= copies; i++) boards.add(board.id("length " + i).build());
        return new JobBuilder(name)
                .saw(Saw.of(Length.ZERO, Length.ZERO))
                .offcuts(new Keep(INCH, INCH), BigDecimal.ZERO)
                .parts(parts)
                .stack(boards)
                .build();
    }

    /**
     * A job of so many blanks on so many clear boards of two woods, in a few lengths, each at a price of its own; kerf and end
     * trims as they fall. Some parts take either wood. The stack may be short.
     */
    public static Job random(SplittableRandom random, int blanks, int boards) {
        return random(random, blanks, boards, Length.inches("1/4"));
    }

    /** The same; parts are whole numbers of {@code tick} long. */
    public static Job random(SplittableRandom random, int blanks, int boards, Length tick) {
        List<Board> stack = new ArrayList<>();
        long[] lengths = {whole(random, 24, 60), whole(random, 24, 60), whole(random, 24, 60)};
        for (int i = 1; i <= boards; i++) {
            Board.Builder board = Board.measured(
                            "strip " + i,
                            WOODS.get(random.nextInt(4) / 3),
                            JobBuilder.THICKNESS,
                            Length.inches("2"),
                            inches(lengths[random.nextInt(3)], 1))
                    .ripped(true);
            if (random.nextInt(4) == 0) board.price(BigDecimal.valueOf(whole(random, 400, 900), 2));
            if (random.nextInt(3) == 0) board.endTrim(inches(random.nextInt(3), 2), inches(random.nextInt(3), 2));
            stack.add(board.build());
        }
        List<Part> parts = new ArrayList<>();
        for (int left = blanks; left > 0; ) {
            int count = Math.min(left, 1 + random.nextInt(1 + blanks / 4));
            left -= count;
            Part.Builder part = Part.of(
                            "part " + (parts.size() + 1),
                            new Length(random.nextLong(LEAST / tick.nanometers(), MOST / tick.nanometers())
                                    * tick.nanometers()),
                            Length.inches("2"),
                            JobBuilder.THICKNESS)
                    .count(count);
            if (random.nextBoolean()) part.species(Set.of(new Species(WOODS.get(random.nextInt(4) / 3))));
            parts.add(part.build());
        }
        String kerf = List.of("0", "1/8", "3/32").get(random.nextInt(3));
        return new JobBuilder("strips")
                .kerfs("1/8", kerf)
                .price("ash", new BigDecimal("6.50"))
                .parts(parts)
                .stack(stack)
                .build();
    }

    private static long whole(SplittableRandom random, int least, int most) {
        return random.nextInt(least, most + 1);
    }

    private static Length inches(long count, int perInch) {
        return new Length(count * 25_400_000L / perInch);
    }
}
