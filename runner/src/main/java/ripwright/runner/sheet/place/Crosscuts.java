package ripwright.runner.sheet.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ripwright.measure.OnePlace;
import ripwright.runner.sheet.place.Piece.Fate;

/**
 * How crosscuts part a length: a board into sections, or a strip into blanks. What lies between two wanted pieces is given
 * up to kerfs and leftovers; the leftovers are searched for listed pieces, and all else is waste.
 */
final class Crosscuts {
    /** What two honest readers may differ by: 0.0005 in. */
    static final long TOLERANCE = OnePlace.NANOMETERS;

    private final String piece;
    private final long from;
    private final long to;
    private final List<Span> wanted; // by where they start
    private final long kerf;

    Crosscuts(String piece, long from, long to, List<Span> wanted, long kerf) {
        this.piece = piece;
        this.from = from;
        this.to = to;
        this.wanted = wanted;
        this.kerf = kerf;
    }

    /** The leftovers: what is left between the wanted pieces once their kerfs are off. */
    List<Span> gaps() {
        List<Span> gaps = new ArrayList<>();
        long end = from;
        for (int i = 0; i <= wanted.size(); i++) {
            long start = i == wanted.size() ? to : wanted.get(i).from();
            long left = i == 0 ? end : end + kerf;
            long right = i == wanted.size() ? start : start - kerf;
            if (right - left > TOLERANCE) gaps.add(new Span(Fate.WASTE, piece, left, right));
            if (i < wanted.size()) end = wanted.get(i).to();
        }
        return gaps;
    }

    /** Everything the length is parted into: the wanted pieces, the listed leftovers, and the waste between. */
    List<Span> parts(List<Span> listed) {
        List<Span> parts = new ArrayList<>(wanted);
        for (Span gap : gaps()) {
            List<Span> inside = listed.stream()
                    .filter(span -> span.from() >= gap.from() - TOLERANCE && span.to() <= gap.to() + TOLERANCE)
                    .sorted(Comparator.comparingLong(Span::from))
                    .toList();
            parts.addAll(inside);
            long start = gap.from();
            for (Span span : inside) {
                waste(parts, start, span.from() - kerf);
                start = span.to() + kerf;
            }
            waste(parts, start, gap.to());
        }
        parts.sort(Comparator.comparingLong(Span::from));
        return parts;
    }

    private void waste(List<Span> parts, long start, long end) {
        if (end - start > TOLERANCE) parts.add(new Span(Fate.WASTE, piece, start, end));
    }

    /** The kerfs: what lies between the parts, and between them and the ends. */
    List<Span> kerfs(List<Span> parts) {
        List<Span> kerfs = new ArrayList<>();
        long end = from;
        for (Span part : parts) {
            kerf(kerfs, end, part.from());
            end = part.to();
        }
        kerf(kerfs, end, to);
        return kerfs;
    }

    private void kerf(List<Span> kerfs, long start, long end) {
        if (end - start > TOLERANCE) kerfs.add(new Span(Fate.WASTE, piece, start, end));
    }
}
