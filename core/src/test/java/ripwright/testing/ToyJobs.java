package ripwright.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;
import ripwright.stock.Species;

/** Jobs of one or two boards a few ticks long and wide, and a handful of parts: small enough for {@link EveryLayout}. */
final class ToyJobs {
    /** What all lengths but crook are multiples of. */
    static final Length TICK = Length.inches("1/2");

    private final SplittableRandom random;
    private final Features features;
    private final int longest;
    private final int widest;

    private ToyJobs(SplittableRandom random, Features features, int longest, int widest) {
        this.random = random;
        this.features = features;
        this.longest = longest;
        this.widest = widest;
    }

    /** A toy of boards up to that many ticks long and wide. */
    static Job toy(SplittableRandom random, Features features, int longest, int widest) {
        return new ToyJobs(random, features, longest, widest).job();
    }

    private Job job() {
        List<Part> parts = new ArrayList<>();
        for (int i = whole(1, 3); i > 0; i--) parts.add(part("part " + i));
        List<Board> boards = new ArrayList<>();
        for (int i = whole(1, 2); i > 0; i--) boards.add(board("board " + i).build());
        JobBuilder job = new JobBuilder("toy")
                .saw(saw())
                .parts(parts)
                .stack(boards)
                .price("ash", new BigDecimal("5.5"))
                .offcuts(
                        new Keep(ticks(whole(1, 3)), ticks(whole(1, 2))),
                        features.has(Feature.SALVAGE) ? new BigDecimal("0.45") : BigDecimal.ZERO);
        if (features.has(Feature.LABOR) && chance(0.7))
            job.labor(new Labor(
                    BigDecimal.valueOf(whole(0, 3)),
                    BigDecimal.valueOf(whole(0, 5)),
                    BigDecimal.valueOf(whole(0, 3)),
                    BigDecimal.valueOf(whole(0, 2))));
        if (features.has(Feature.RACK) && chance(0.4))
            job.rack(List.of(board("rack").onRack(History.UNKNOWN).build()));
        return job.build();
    }

    private Part part(String name) {
        Part.Builder part = Part.of(
                        name, ticks(whole(1, 3)), ticks(whole(1, chance(0.3) ? 3 : 2)), JobBuilder.THICKNESS)
                .count(whole(1, 2))
                .face(chance(0.5) ? Part.Face.SHOW : Part.Face.HIDDEN);
        if (features.has(Feature.SNEAK_UP) && chance(0.3)) part.sneakUp(TICK);
        if (features.has(Feature.TOGETHER) && chance(0.5)) part.together("group");
        if (features.has(Feature.SPECIES) && chance(0.4))
            part.species(Set.of(new Species(chance(0.5) ? "maple" : "Ash")));
        return part.build();
    }

    private Board.Builder board(String id) {
        int length = whole(longest / 2 + 1, longest);
        int width = whole(2, widest);
        boolean ash = features.has(Feature.SPECIES) && chance(0.3);
        Board.Builder board =
                Board.measured(id, ash ? "ash" : "maple", JobBuilder.THICKNESS, ticks(width), ticks(length));
        if (features.has(Feature.ROUGH) && chance(0.3)) board.rough(Length.inches("1 1/2"), JobBuilder.THICKNESS);
        if (features.has(Feature.TRIMS) && chance(0.5)) board.endTrim(ticks(whole(0, 1)), ticks(whole(0, 1)));
        if (features.has(Feature.RIPPED) && chance(0.2)) return board.ripped(true);
        boolean tapered = features.has(Feature.TAPER) && chance(0.4);
        if (tapered) board.width(ticks(width), ticks(Math.max(1, width + whole(-2, 2))));
        if (features.has(Feature.EDGES) && chance(0.5)) {
            int straight = tapered ? 1 : whole(0, 1);
            boolean crooked = features.has(Feature.CROOK) && chance(0.7);
            Length crook = crooked ? new Length(whole(1, 60) * 635_000L) : Length.ZERO; // in 1/40 in, off the grid
            board.edges(straight, ticks(whole(0, 1)), crook);
        }
        if (features.has(Feature.DEFECTS)) defects(board);
        return board;
    }

    private void defects(Board.Builder builder) {
        Board board = builder.build();
        int length = (int) (board.length().nanometers() / TICK.nanometers());
        int width = (int) (board.width().min(board.widthAtFarEnd()).nanometers() / TICK.nanometers());
        List<Defect> defects = new ArrayList<>();
        for (int i = whole(0, 2); i > 0; i--) {
            int from = whole(0, length - 1);
            int left = whole(0, width - 1);
            defects.add(new Defect(
                    ticks(from),
                    ticks(whole(from + 1, Math.min(length, from + 3))),
                    ticks(left),
                    ticks(whole(left + 1, Math.min(width, left + 2))),
                    "knot",
                    chance(0.5) ? Defect.Blocks.ALL : Defect.Blocks.SHOW));
        }
        builder.defects(defects);
    }

    private Saw saw() {
        boolean limited = features.has(Feature.SAW_LIMITS);
        return new Saw(
                ticks(whole(0, 1)),
                ticks(whole(0, 1)),
                limit(limited, 3, longest),
                limit(limited, 1, 3),
                limit(limited, 1, 3),
                limit(limited, 1, 3));
    }

    private Optional<Length> limit(boolean limited, int least, int most) {
        return limited && chance(0.5) ? Optional.of(ticks(whole(least, most))) : Optional.empty();
    }

    private static Length ticks(int count) {
        return TICK.times(count);
    }

    private int whole(int least, int most) {
        return random.nextInt(least, most + 1);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }
}
