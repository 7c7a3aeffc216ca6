package ripwright.internal.recreate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** Short ways to write down small jobs: maple at 8 a board foot, 3/4 in thick, both kerfs 1/8 in, no salvage. */
public final class ShopJobs {
    private static final Length THICK = Length.inches("3/4");

    private ShopJobs() {}

    /** That many inches. */
    public static Length in(String inches) {
        return Length.inches(inches);
    }

    /** A clear board. */
    public static Board.Builder board(String id, String width, String length) {
        return Board.measured(id, "maple", THICK, in(width), in(length));
    }

    /** A hidden part. */
    public static Part.Builder part(String name, int count, String width, String length) {
        return Part.of(name, in(length), in(width), THICK).count(count);
    }

    /** A job without salvage, labor and test rips. */
    public static Job job(List<Board> stack, List<Part> parts) {
        return job(stack, parts, "0", Optional.empty());
    }

    /** A job with a salvage share. */
    public static Job job(List<Board> stack, List<Part> parts, String salvage, Optional<Labor> labor) {
        return new Job(
                "test",
                Unit.INCH,
                Saw.of(in("1/8"), in("1/8")),
                TestRip.NONE,
                new Keep(in("12"), in("2")),
                Map.of(new Species("maple"), new BigDecimal("8")),
                new BigDecimal(salvage),
                labor,
                stack,
                new ArrayList<>(),
                parts,
                Limits.NONE);
    }
}
