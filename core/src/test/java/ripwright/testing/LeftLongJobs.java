package ripwright.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.bill.Tenon;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.stock.Board;

/**
 * Drawn jobs whose sections are left long, with square ends, parts that need no test, tenons and wood for test blanks alone
 * mixed in.
 */
public final class LeftLongJobs {
    private static final List<Length> OVER =
            List.of(Length.inches("1/2"), Length.millimeters("12"), Length.inches("1/4"), Length.inches("1"));
    private static final Length LONG_ENOUGH = Length.inches("8"); // for both tenons
    private static final Length TENONS = Length.inches("2");

    private LeftLongJobs() {}

    /** One with any features, larger with size. */
    public static Job growing(SplittableRandom random, int size) {
        Job drawn = RandomJobs.growing(random, 2 * size);
        Length over = OVER.get(random.nextInt(OVER.size())).max(drawn.saw().crosscutKerf());
        return drawn.toBuilder()
                .breakdown(new Breakdown(over))
                .stack(stack(drawn, random))
                .parts(drawn.parts().stream().map(part -> part(part, random)).toList())
                .limits(new Limits(Optional.empty(), OptionalLong.of(size), OptionalInt.of(1)))
                .build();
    }

    private static List<Board> stack(Job drawn, SplittableRandom random) {
        List<Board> stack = new ArrayList<>();
        for (Board board : drawn.stack()) stack.add(squared(board, random));
        if (random.nextInt(3) > 0) return stack;
        Board first = stack.get(0);
        stack.add(Board.measured("scrap", first.species().name(), first.millsTo(), first.width(), Length.inches("30"))
                .price(BigDecimal.ONE)
                .testOnly(true)
                .build());
        return stack;
    }

    private static Board squared(Board board, SplittableRandom random) {
        boolean may = board.straightEdges() == 2 && board.endTrim().near().isZero();
        if (!may || random.nextInt(4) > 0) return board;
        int ends = board.endTrim().far().isZero() ? 1 + random.nextInt(2) : 1;
        return board.toBuilder().squareEnds(ends).build();
    }

    private static Part part(Part part, SplittableRandom random) {
        Part.Builder drawn = part.toBuilder().tested(random.nextInt(3) > 0);
        if (random.nextInt(4) == 0 && part.length().exceeds(LONG_ENOUGH))
            drawn.length(part.length().minus(TENONS)).tenon(new Tenon(Length.inches("3/4"), Length.inches("1 1/4")));
        return drawn.build();
    }
}
