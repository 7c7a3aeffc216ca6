package ripwright.internal.testwood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.internal.geometry.BoardEdges;
import ripwright.internal.geometry.OffcutWorth;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.SawTime;
import ripwright.internal.geometry.SawWork;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.OnePlace;
import ripwright.plan.TestBlank.Source;

/**
 * A piece that test blanks can be cut from, one after another from one of its ends: from the end itself, or from where
 * the trim of a raw end stops.
 */
public final class TestWood {
    /** Tells pieces apart: both ends of one piece share it. */
    final int number;

    final Piece piece;
    final Source source;

    /** The id of what the piece is part of, or left of. */
    final String from;

    /** The place of the setting whose rips make the piece; -1 when it is there before the first. */
    final int after;

    /** Whether it is a board nothing else is cut from. */
    final boolean uncut;

    private final boolean farEnd;
    private final long blankLength;
    private final Job job;
    private final OffcutWorth salvage;
    private final List<Money> losses = new ArrayList<>();

    /** One end of a piece. */
    TestWood(Job job, int number, Piece piece, Source source, String from, int after, boolean farEnd) {
        this.number = number;
        this.piece = piece;
        this.source = source;
        this.from = from;
        this.after = after;
        this.farEnd = farEnd;
        this.uncut = from.equals(piece.board().id())
                && piece.length() == piece.board().length().nanometers();
        this.blankLength = job.testRip().length().nanometers();
        this.job = job;
        this.salvage = new OffcutWorth(job);
    }

    /** Whether {@code count} blanks come out of its length, and the last of them at least {@code width} wide. */
    boolean yields(int count, long width) {
        long kerfs = Math.multiplyExact(count - 1L, kerf());
        long length = Math.addExact(Math.multiplyExact(count, blankLength), kerfs);
        return piece.clearLength() >= length && straightWidth(blank(count)) >= width;
    }

    /** The {@code n}th blank, from 1. */
    Piece blank(int n) {
        long before = Math.multiplyExact(n - 1L, blankLength + kerf());
        if (farEnd) {
            long to = piece.to() - piece.endTrim().far().nanometers() - before;
            return piece.span(to - blankLength, to);
        }
        long from = piece.from() + piece.endTrim().near().nanometers() + before;
        return piece.span(from, from + blankLength);
    }

    /** What is left behind {@code count} blanks. */
    Optional<Piece> rest(int count) {
        if (count == 0) return Optional.of(piece);
        Piece last = blank(count);
        long from = farEnd ? piece.from() : last.to() + kerf();
        long to = farEnd ? last.from() - kerf() : piece.to();
        return from < to ? Optional.of(piece.span(from, to)) : Optional.empty();
    }

    /** How many crosscuts free {@code count} blanks: one each, but none for a last one that is all of what was left. */
    int cuts(int count) {
        if (count == 0) return 0;
        Piece last = blank(count);
        boolean all = farEnd ? OnePlace.are(last.from(), piece.from()) : OnePlace.are(last.to(), piece.to());
        Length trim = farEnd ? piece.endTrim().far() : piece.endTrim().near();
        boolean trimmed = count == 1 && !OnePlace.are(trim.nanometers(), 0);
        return all && !trimmed ? count - 1 : count;
    }

    /** What the shop loses by cutting {@code count} blanks, crosscuts counted. */
    Money loss(int count) {
        while (losses.size() <= count) losses.add(lossOf(losses.size()));
        return losses.get(count);
    }

    private Money lossOf(int count) {
        if (count == 0) return Money.ZERO;
        SawTime time = new SawTime(job);
        Money kept = rest(count).map(salvage::worth).orElse(Money.ZERO);
        return worth().minus(kept).plus(time.cost(time.minutes(new SawWork(0, 0, cuts(count)))));
    }

    /** What it is worth while no blank is cut from it: an uncut board what opening it costs, a leftover what it fetches. */
    private Money worth() {
        return uncut ? job.cost(piece.board()) : salvage.worth(piece);
    }

    /** A blank without any straight edge is straightened before it is ripped. */
    private long straightWidth(Piece blank) {
        long width = blank.narrowWidth();
        return blank.hasStraightEdge() ? width : width - new BoardEdges(blank.board()).straighteningLoss(blankLength);
    }

    private long kerf() {
        return job.saw().crosscutKerf().nanometers();
    }
}
