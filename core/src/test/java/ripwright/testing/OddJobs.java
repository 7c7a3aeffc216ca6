package ripwright.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.EndTrim;

/**
 * Jobs that no shop would draw but that plans must survive: tiny and huge ones, sizes in mixed units, parts a sliver shorter
 * or narrower than a board, strips that are ripped already, groups, none to three tests, almost free and very dear wood.
 */
public final class OddJobs {
    /** Nanometers by which a part falls short of a board: around half a thousandth of an inch, which is a reader's tolerance. */
    private static final long[] SLIVERS = {0, 1, 100, 12_699, 12_700, 12_701, 25_400, 3_175_000};

    /** The least size that a job may have, and more. */
    private static final long READABLE = 25_400;

    private static final double[] SCALES = {1.0 / 512, 1.0 / 16, 1, 1, 1, 1, 1, 4, 16};

    private OddJobs() {}

    /** A case for {@link Seeds}, without limits. */
    public static Job growing(SplittableRandom random, int size) {
        Job job = RandomJobs.growing(random, size);
        double scale = SCALES[random.nextInt(SCALES.length)];
        List<Board> stack = new ArrayList<>();
        for (Board board : job.stack()) stack.add(board(random, board, scale));
        List<Board> rack = new ArrayList<>();
        for (Board board : job.rack()) rack.add(scaled(board, scale).build());
        List<Part> parts = new ArrayList<>();
        for (Part part : job.parts()) parts.add(part(random, part, scale, stack));
        Length test = scaled(job.testRip().length(), scale);
        JobBuilder odd = new JobBuilder("odd")
                .units(job.units())
                .saw(saw(random, job.saw(), scale, test))
                .stack(stack)
                .rack(rack)
                .parts(parts)
                .testRip(new TestRip(test, random.nextInt(4)))
                .offcuts(
                        new Keep(
                                scaled(job.keep().length(), scale),
                                scaled(job.keep().width(), scale)),
                        job.salvage());
        BigDecimal factor = new BigDecimal(new String[] {"0.0001", "1", "1", "1", "90"}[random.nextInt(5)]);
        job.prices().forEach((species, price) -> odd.price(species.name(), price.multiply(factor)));
        job.labor().ifPresent(labor -> odd.labor(labor(random, labor)));
        return odd.build();
    }

    /** The same, to be planned within so much time on so many threads. */
    public static Job within(Job job, String seconds, int threads) {
        return job.withLimits(
                new Limits(Optional.of(new BigDecimal(seconds)), OptionalLong.of(1), OptionalInt.of(threads)));
    }

    private static Board board(SplittableRandom random, Board board, double scale) {
        Board.Builder builder = scaled(board, scale);
        boolean plain = board.straightEdges() == 2 && board.defects().isEmpty() && !board.rough();
        boolean square = board.width().equals(board.widthAtFarEnd());
        if (plain && square && random.nextInt(4) == 0) builder.ripped(true);
        return builder.build();
    }

    private static Board.Builder scaled(Board board, double scale) {
        Board.Builder builder = board.toBuilder()
                .rough(scaled(board.thickness(), scale), scaled(board.millsTo(), scale))
                .length(scaled(board.length(), scale))
                .width(scaled(board.width(), scale), scaled(board.widthAtFarEnd(), scale))
                .edges(board.straightEdges(), scaled(board.edgeLoss(), scale), scaled(board.crook(), scale));
        EndTrim trim = board.endTrim();
        return builder.endTrim(scaled(trim.near(), scale), scaled(trim.far(), scale))
                .defects(board.defects().stream()
                        .map(defect -> new Defect(
                                scaled(defect.from(), scale),
                                scaled(defect.to(), scale),
                                scaled(defect.left(), scale),
                                scaled(defect.right(), scale),
                                defect.kind(),
                                defect.blocks()))
                        .toList());
    }

    private static Part part(SplittableRandom random, Part part, double scale, List<Board> stack) {
        Part.Builder builder = Part.of(
                        part.name(),
                        length(random, scaled(part.length(), scale)),
                        length(random, scaled(part.width(), scale)),
                        scaled(part.thickness(), scale))
                .count(part.count())
                .species(part.species())
                .face(part.face())
                .sneakUp(scaled(part.sneakUp(), scale))
                .edgeAllowance(scaled(part.edgeAllowance(), scale))
                .fitted(part.fitted())
                .together(part.together());
        Board like = stack.get(random.nextInt(stack.size()));
        if (random.nextInt(4) == 0)
            builder.length(shortOf(random, like.length())).sneakUp(Length.ZERO);
        if (random.nextInt(4) == 0) builder.width(shortOf(random, like.width())).edgeAllowance(Length.ZERO);
        return builder.build();
    }

    private static Length shortOf(SplittableRandom random, Length size) {
        long sliver = SLIVERS[random.nextInt(SLIVERS.length)];
        return new Length(Math.max(READABLE, size.nanometers() - sliver));
    }

    /** As it is, or as somebody else would write it down: to the tenth of a millimeter, to a 1024th, to a ten thousandth. */
    private static Length length(SplittableRandom random, Length length) {
        long[] grids = {1, 100_000, 24_804, 2_540};
        long grid = grids[random.nextInt(grids.length)];
        return new Length(Math.max(READABLE, length.nanometers() / grid * grid));
    }

    private static Saw saw(SplittableRandom random, Saw saw, double scale, Length test) {
        boolean none = random.nextInt(5) == 0;
        return new Saw(
                none ? Length.ZERO : scaled(saw.ripKerf(), Math.min(1, scale)),
                none ? Length.ZERO : scaled(saw.crosscutKerf(), Math.min(1, scale)),
                saw.longestRip().map(length -> scaled(length, scale)),
                saw.shortestRip().map(length -> scaled(length, scale).min(test)),
                saw.narrowestRip().map(length -> scaled(length, scale)),
                saw.shortestCrosscut().map(length -> scaled(length, scale)));
    }

    /** As it is, or for one kind of work alone. */
    private static Labor labor(SplittableRandom random, Labor labor) {
        BigDecimal zero = BigDecimal.ZERO;
        return switch (random.nextInt(4)) {
            case 0 -> new Labor(labor.perHour(), zero, zero, labor.crosscutMinutes());
            case 1 -> new Labor(labor.perHour(), labor.settingMinutes(), zero, zero);
            default -> labor;
        };
    }

    private static Length scaled(Length length, double scale) {
        long nanometers = Math.round(length.nanometers() * scale);
        return new Length(length.isZero() ? 0 : Math.max(READABLE, Math.min(nanometers, Length.LONGEST.nanometers())));
    }
}
