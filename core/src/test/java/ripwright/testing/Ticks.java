package ripwright.testing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/**
 * A small job in whole ticks, the longest step that all its lengths are multiples of. Crook is left out of that: it takes
 * no whole number of ticks anyway. A plan of least stock cost can always be moved to whole ticks:
 *
 * <ul>
 *   <li>With all choices made, what is left are differences between two positions that are at most or at least some length.
 *       Where all those are whole, positions can be rounded down together and stay right. The longest section a crook allows at
 *       a loss of so many ticks, and the last place where a tapered board is so wide, are not whole, but can be rounded down
 *       as well: no chain of differences that closes uses two of them.
 *   <li>Across a board all is whole but the loss to crook and a tapered width. A loss can be rounded up when the width is
 *       whole, and a width down when the loss is. Hence a tapered board whose crook matters is refused.
 * </ul>
 */
final class Ticks {
    private static final int MOST = 20_000; // ticks in the longest board: beyond, the solver gets slow

    final Job job;
    final long tick; // nanometers
    final List<Blank> blanks = new ArrayList<>();
    final List<TickBoard> boards = new ArrayList<>();
    final int ripKerf;
    final int crosscutKerf;
    final int over; // left on at each end of a section; 0: sections are cut to length
    final int reading; // sections are cut to whole multiples of it then
    final int longestRip;
    final int shortestRip;
    final int narrowestRip;

    /**
     * A blank, one for every copy of a part.
     *
     * @param part its part's place in the bill
     * @param length its length
     * @param width its width
     * @param small whether it is too short to be crosscut but as the last of its strip
     */
    record Blank(int part, int length, int width, boolean small) {}

    /**
     * A board.
     *
     * @param board as the job has it
     * @param near its width at the marked end
     * @param far its width at the other
     * @param length its length
     * @param from where sections may start
     * @param to where they must end
     * @param edgeLoss what an edge loses that is not straight
     * @param defects those that bar some blank that could come from it
     */
    record TickBoard(Board board, int near, int far, int length, int from, int to, int edgeLoss, List<Bad> defects) {
        /** What the left edge loses at least. */
        int leftLoss() {
            return board.straightEdges() >= 1 ? 0 : edgeLoss;
        }

        /** What the right edge loses at least. */
        int rightLoss() {
            return board.straightEdges() == 2 ? 0 : edgeLoss;
        }
    }

    /** A defect. */
    record Bad(Defect defect, int from, int to, int left, int right) {
        boolean bars(Part part) {
            return defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW;
        }
    }

    Ticks(Job job) {
        this.job = job;
        this.tick = lengths(job).map(Length::nanometers).reduce(0L, Ticks::gcd);
        this.ripKerf = of(job.saw().ripKerf());
        this.crosscutKerf = of(job.saw().crosscutKerf());
        this.over = of(job.breakdown().over());
        this.reading = of(reading(job));
        this.longestRip = job.saw().longestRip().map(this::of).orElse(MOST);
        this.shortestRip = job.saw().shortestRip().map(this::of).orElse(1);
        this.narrowestRip = job.saw().narrowestRip().map(this::of).orElse(1);
        Length shortest = job.saw().shortestCrosscut().orElse(Length.ZERO);
        for (int part = 0; part < job.parts().size(); part++) {
            Part line = job.parts().get(part);
            Blank blank = new Blank(
                    part, of(line.blankLength()), of(line.blankWidth()), shortest.exceeds(line.blankLength()));
            for (int i = 0; i < line.count(); i++) blanks.add(blank);
        }
        for (Board board : job.boards()) boards.add(board(board));
    }

    /** What a tape is read to: CONTRACT.md 3, Sections. */
    private static Length reading(Job job) {
        return job.units() == Unit.INCH ? Length.inches("1/8") : Length.millimeters("5");
    }

    private TickBoard board(Board board) {
        if (of(board.length()) > MOST)
            throw new IllegalArgumentException("A tick of " + tick + " nm is too fine for " + board.id() + ".");
        if (board.tapered() && board.straightEdges() == 0 && board.crook().exceeds(board.edgeLoss()))
            throw new IllegalArgumentException("Taper and crook together are not on the grid: " + board.id() + ".");
        List<Bad> defects = board.defects().stream()
                .map(bad -> new Bad(bad, of(bad.from()), of(bad.to()), of(bad.left()), of(bad.right())))
                .filter(bad -> job.parts().stream().anyMatch(part -> suits(part, board) && bad.bars(part)))
                .toList();
        return new TickBoard(
                board,
                of(board.width()),
                of(board.widthAtFarEnd()),
                of(board.length()),
                of(board.endTrim().near()),
                Math.max(
                        of(board.endTrim().near()),
                        of(board.length()) - of(board.endTrim().far())),
                of(board.edgeLoss()),
                defects);
    }

    Part part(Blank blank) {
        return job.parts().get(blank.part());
    }

    /** Whether a blank could come from a board as far as wood, thickness and raw size go. */
    boolean suits(Blank blank, TickBoard board) {
        return suits(part(blank), board.board())
                && blank.length() <= lastEnd(board) - firstStart(board)
                && (board.board().ripped()
                        ? blank.width() == board.near()
                        : blank.width() <= Math.max(board.near(), board.far()));
    }

    /** Where the first blank of a board may start. */
    int firstStart(TickBoard board) {
        return Math.max(board.from(), over);
    }

    /** Where its last blank must end. */
    int lastEnd(TickBoard board) {
        return Math.min(board.to(), board.length() - over);
    }

    private static boolean suits(Part part, Board board) {
        return part.thickness().equals(board.millsTo()) && part.takes(board.species());
    }

    /** The longest section of which a crook takes no more than {@code loss} from the reference edge. */
    int longestAtLoss(TickBoard board, int loss) {
        BigInteger square = BigInteger.valueOf(loss)
                .multiply(BigInteger.valueOf(board.length()).pow(2))
                .multiply(BigInteger.valueOf(tick))
                .divide(BigInteger.valueOf(board.board().crook().nanometers()));
        return square.sqrt().intValueExact();
    }

    /** The most a crook takes, in ticks, rounded up. */
    int crook(TickBoard board) {
        return (int) -Math.floorDiv(-board.board().crook().nanometers(), tick);
    }

    long nanometers(long ticks) {
        return ticks * tick;
    }

    int of(Length length) {
        return Math.toIntExact(length.nanometers() / tick);
    }

    private static Stream<Length> lengths(Job job) {
        Stream<Length> saw = Stream.of(
                        Optional.of(job.saw().ripKerf()),
                        Optional.of(job.saw().crosscutKerf()),
                        job.saw().longestRip(),
                        job.saw().shortestRip(),
                        job.saw().narrowestRip())
                .flatMap(Optional::stream);
        Stream<Length> parts = job.parts().stream().flatMap(part -> Stream.of(part.blankLength(), part.blankWidth()));
        Stream<Length> boards = job.boards().stream()
                .flatMap(board -> Stream.of(
                        board.length(),
                        board.width(),
                        board.widthAtFarEnd(),
                        board.edgeLoss(),
                        board.endTrim().near(),
                        board.endTrim().far()));
        Stream<Length> defects = job.boards().stream()
                .flatMap(board -> board.defects().stream())
                .flatMap(bad -> Stream.of(bad.from(), bad.to(), bad.left(), bad.right()));
        Stream<Length> ends =
                job.breakdown().leavesOver() ? Stream.of(job.breakdown().over(), reading(job)) : Stream.empty();
        return Stream.of(saw, parts, boards, defects, ends, Stream.of(job.keep().length()))
                .flatMap(all -> all);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
