package ripwright.internal.firstfit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import ripwright.bill.Part;
import ripwright.internal.geometry.BoardEdges;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/** A section being filled by hand: blanks go where they first fit, strips come off one beside the other. */
final class FirstFitSection {
    private final Job job;
    private final Board board;
    private final long from;
    private final long to;
    private final Edge edge;
    private final long start; // of the span its blanks may lie in
    private final long end;
    private final List<FirstFitStrip> strips = new ArrayList<>();

    /** A strip being filled. */
    private record FirstFitStrip(long width, long left, List<Layout.Blank> blanks) {}

    FirstFitSection(Job job, Board board, long from, long to, Edge edge) {
        this.job = job;
        this.board = board;
        this.from = from;
        this.to = to;
        this.edge = edge;
        SectionEnds ends = new SectionEnds(board, job, 0);
        start = ends.spanFrom(from);
        end = ends.spanTo(to);
    }

    /** The same again, to try something with. */
    FirstFitSection copy() {
        FirstFitSection copy = new FirstFitSection(job, board, from, to, edge);
        for (FirstFitStrip strip : strips)
            copy.strips.add(new FirstFitStrip(strip.width, strip.left, new ArrayList<>(strip.blanks)));
        return copy;
    }

    long to() {
        return to;
    }

    /** Lays a blank of {@code part} into a strip of its width; whether one had room. */
    boolean intoStrip(int part) {
        long width = job.parts().get(part).blankWidth().nanometers();
        for (FirstFitStrip strip : strips) if (strip.width == width && lay(part, strip)) return true;
        return false;
    }

    /** Rips a strip for {@code part} beside the last one; whether there was room for it and a blank in it. */
    boolean intoNewStrip(int part) {
        long width = job.parts().get(part).blankWidth().nanometers();
        long offset = loss(edge);
        long last = Long.MAX_VALUE;
        for (FirstFitStrip strip : strips) {
            offset += strip.width + job.saw().ripKerf().nanometers();
            last = strip.width;
        }
        if (board.ripped() ? !strips.isEmpty() || width != width() : width > last) return false;
        long spoilt = board.ripped() ? 0 : edge == Edge.LEFT ? otherLoss(Edge.RIGHT) : otherLoss(Edge.LEFT);
        if (offset + width + spoilt > width()) return false;
        FirstFitStrip strip =
                new FirstFitStrip(width, edge == Edge.LEFT ? offset : width() - offset - width, new ArrayList<>());
        if (!lay(part, strip)) return false;
        strips.add(strip);
        return true;
    }

    Layout.Section section() {
        List<Layout.Strip> done = new ArrayList<>();
        for (FirstFitStrip strip : strips) {
            List<Layout.Blank> blanks = new ArrayList<>(strip.blanks);
            blanks.sort(Comparator.comparing(Layout.Blank::from));
            done.add(new Layout.Strip(strip.width, blanks));
        }
        return new Layout.Section(from, to, edge, loss(edge), done);
    }

    private boolean lay(int part, FirstFitStrip strip) {
        OptionalLong at = firstClear(job.parts().get(part), strip);
        at.ifPresent(x -> strip.blanks.add(new Layout.Blank(part, x)));
        return at.isPresent();
    }

    /** Where a blank first fits: at the strip's start, a kerf behind another blank, or just behind a defect. */
    private OptionalLong firstClear(Part part, FirstFitStrip strip) {
        List<Long> places = new ArrayList<>(List.of(start));
        for (Layout.Blank blank : strip.blanks)
            places.add(blank.from()
                    + length(blank.part())
                    + job.saw().crosscutKerf().nanometers());
        for (Defect defect : board.defects())
            places.add(Math.max(start, defect.to().nanometers()));
        return places.stream()
                .mapToLong(Long::longValue)
                .sorted()
                .filter(x -> clear(part, strip, x))
                .findFirst();
    }

    private boolean clear(Part part, FirstFitStrip strip, long x) {
        long kerf = job.saw().crosscutKerf().nanometers();
        long stop = x + part.blankLength().nanometers();
        if (stop > end) return false;
        for (Layout.Blank other : strip.blanks) {
            boolean before = other.from() + length(other.part()) + kerf <= x;
            boolean behind = stop + kerf <= other.from();
            if (!before && !behind) return false;
            Part neighbor = job.parts().get(other.part());
            if (before && small(neighbor) && !small(part)) return false;
            if (behind && small(part) && !small(neighbor)) return false;
        }
        for (Defect defect : board.defects()) {
            boolean bars = defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW;
            if (bars
                    && x < defect.to().nanometers()
                    && stop > defect.from().nanometers()
                    && strip.left < defect.right().nanometers()
                    && strip.left + strip.width > defect.left().nanometers()) return false;
        }
        return true;
    }

    /** Too short to be crosscut but as the last of its strip. */
    private boolean small(Part part) {
        return job.saw()
                .shortestCrosscut()
                .filter(least -> least.exceeds(part.blankLength()))
                .isPresent();
    }

    private long length(int part) {
        return job.parts().get(part).blankLength().nanometers();
    }

    private long width() {
        return Math.min(
                board.widthAt(new Length(from)).nanometers(),
                board.widthAt(new Length(to)).nanometers());
    }

    /** What the edge that rides the fence must lose. */
    private long loss(Edge edge) {
        return straight(edge) ? 0 : new BoardEdges(board).straighteningLoss(to - from);
    }

    private long otherLoss(Edge edge) {
        return straight(edge) ? 0 : board.edgeLoss().nanometers();
    }

    private boolean straight(Edge edge) {
        return new BoardEdges(board).straight(edge);
    }
}
