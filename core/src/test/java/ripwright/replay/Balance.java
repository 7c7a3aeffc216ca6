package ripwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.leftovers.ReplayLeftover;
import ripwright.internal.replay.leftovers.ReplayLeftovers;

/** Adds up a board's wood piece by piece; nothing in it is a difference from the whole. */
record Balance(ReplayIndex pieces, PlacedBoard board, Predicate<ReplayLeftover> counted) {
    /** With all that is left of it. */
    Balance(ReplayIndex pieces, PlacedBoard board) {
        this(pieces, board, leftover -> true);
    }

    /** Blanks, kerfs, losses, and those leftovers that count. */
    BigFraction sum() {
        CrosscutLine line = board.line(pieces.crosscutKerf());
        BigFraction sum = BigFraction.ZERO;
        for (ReplayLeftover leftover : new ReplayLeftovers(pieces).of(board)) sum = sum.add(of(leftover));
        for (CrosscutLine.Span kerf : kerfs(line))
            sum = sum.add(area(
                    kerf.length(),
                    board.frame().widthAt(kerf.from()),
                    board.frame().widthAt(kerf.to())));
        for (PlacedSection section : board.sections()) sum = sum.add(of(section));
        return sum;
    }

    private BigFraction of(PlacedSection section) {
        long length = section.length();
        Optional<ReplayLeftover> beside = new ReplayLeftovers(pieces).of(section);
        BigFraction sum = area(length, section.edgeLoss(), section.edgeLoss());
        List<PlacedStrip> strips = section.strips();
        for (PlacedStrip strip : strips) sum = sum.add(of(strip));
        long kerfs = Math.max(0L, strips.size() - 1L) * pieces.ripKerf();
        sum = sum.add(area(length, kerfs, kerfs));
        if (beside.isPresent()) {
            sum = sum.add(area(length, pieces.ripKerf(), pieces.ripKerf()));
            return sum.add(of(beside.get()));
        }
        // no more than a kerf is left beside the last strip, sawn off or not
        return sum.add(area(
                length,
                board.frame().widthAt(section.from()) - section.reach(),
                board.frame().widthAt(section.to()) - section.reach()));
    }

    private BigFraction of(PlacedStrip strip) {
        BigFraction sum = BigFraction.ZERO;
        for (PlacedBlank blank : strip.blanks())
            sum = sum.add(area(blank.span().length(), strip.width(), strip.width()));
        for (CrosscutLine.Span kerf : kerfs(strip.line(pieces.crosscutKerf())))
            sum = sum.add(area(kerf.length(), strip.width(), strip.width()));
        for (ReplayLeftover leftover : new ReplayLeftovers(pieces).of(strip)) sum = sum.add(of(leftover));
        return sum;
    }

    /** What the cuts beside each span take, where the wood is not the neighbor's or gone already. */
    private static List<CrosscutLine.Span> kerfs(CrosscutLine line) {
        List<CrosscutLine.Span> kerfs = new ArrayList<>();
        long sawn = line.from(); // up to where no wood stands any more
        for (CrosscutLine.Span span : line.spans()) {
            long start = Math.max(sawn, span.from() - line.kerf());
            if (start < span.from()) kerfs.add(new CrosscutLine.Span(start, span.from()));
            sawn = Math.min(line.to(), span.to() + line.kerf());
            if (span.to() < sawn) kerfs.add(new CrosscutLine.Span(span.to(), sawn));
        }
        return kerfs;
    }

    private BigFraction of(ReplayLeftover leftover) {
        return counted.test(leftover) ? area(leftover.length(), leftover.near(), leftover.far()) : BigFraction.ZERO;
    }

    private static BigFraction area(long length, long near, long far) {
        return BigFraction.of(near + far).multiply(BigFraction.of(length)).divide(2);
    }
}
