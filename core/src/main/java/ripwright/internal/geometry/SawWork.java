package ripwright.internal.geometry;

import java.util.List;
import ripwright.job.Job;
import ripwright.measure.OnePlace;
import ripwright.stock.Board;

/**
 * How often the saws are used on a board, rip settings and test blanks not counted.
 *
 * @param strips strips ripped; none of stock ripped before
 * @param straightened sections whose reference edge is ripped straight
 * @param crosscuts saw cuts across the grain; neighbors one kerf apart share one
 */
public record SawWork(int strips, int straightened, int crosscuts) {
    /** No work at all. */
    public static final SawWork NONE = new SawWork(0, 0, 0);

    /** What one layout asks. */
    public static SawWork of(Job job, Layout layout) {
        Board board = job.board(layout.board());
        int strips = 0;
        int straightened = 0;
        Cuts ends = new Cuts(
                0, board.length().nanometers(), job.saw().crosscutKerf().nanometers());
        int blankEnds = 0;
        for (Layout.Section section : layout.sections()) {
            if (!board.ripped()) strips += section.strips().size();
            if (straightened(board, section)) straightened++;
            ends.piece(section.from(), section.to());
            for (Layout.Strip strip : section.strips()) blankEnds += blankEnds(job, section, strip.blanks());
        }
        return new SawWork(strips, straightened, ends.cuts + blankEnds);
    }

    /** Whether a section is ripped straight first: its reference edge is not, or it gives up wood there. */
    public static boolean straightened(Board board, Layout.Section section) {
        return !OnePlace.are(section.edgeLoss(), 0) || !new BoardEdges(board).straight(section.referenceEdge());
    }

    private static int blankEnds(Job job, Layout.Section section, List<Layout.Blank> blanks) {
        Cuts ends =
                new Cuts(section.from(), section.to(), job.saw().crosscutKerf().nanometers());
        for (Layout.Blank blank : blanks)
            ends.piece(
                    blank.from(),
                    blank.from() + job.parts().get(blank.part()).blankLength().nanometers());
        return ends.cuts;
    }

    /** Both together. */
    public SawWork plus(SawWork other) {
        return new SawWork(strips + other.strips, straightened + other.straightened, crosscuts + other.crosscuts);
    }

    /** Counts the cuts that free pieces, one after another, from a length that ends cut or raw already. */
    private static final class Cuts {
        private final long end;
        private final long kerf;
        private long shared;
        private int cuts;

        Cuts(long start, long end, long kerf) {
            this.shared = start;
            this.end = end;
            this.kerf = kerf;
        }

        void piece(long from, long to) {
            if (!OnePlace.are(from, shared)) cuts++;
            if (!OnePlace.are(to, end)) cuts++;
            shared = to + kerf;
        }
    }
}
