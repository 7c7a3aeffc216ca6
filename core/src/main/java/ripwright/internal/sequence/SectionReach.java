package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.List;
import ripwright.internal.geometry.BoardEdges;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.LayoutLeftovers;
import ripwright.internal.geometry.Leftover;
import ripwright.internal.geometry.OffcutWorth;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * Lets sections that are left long reach over what would be cut off beside them as waste: to the raw end of the board, or to
 * the reading before the next section, unless a width, a limit or an offcut would change. Blanks stay where they are.
 *
 * @see "CONTRACT.md 4, between plans of equal net"
 */
public final class SectionReach {
    private final Job job;
    private final List<Layout> layouts = new ArrayList<>();
    private final OffcutWorth salvage;

    /** Of those layouts; of a job that leaves its sections long. */
    public SectionReach(Job job, List<Layout> layouts) {
        this.job = job;
        salvage = new OffcutWorth(job);
        for (Layout layout : layouts) this.layouts.add(job.board(layout.board()).ripped() ? layout : reached(layout));
    }

    /** The layouts, their sections as long as they may be. */
    public List<Layout> layouts() {
        return List.copyOf(layouts);
    }

    private Layout reached(Layout layout) {
        SectionEnds ends = new SectionEnds(job.board(layout.board()), job, 0);
        long kerf = job.saw().crosscutKerf().nanometers();
        Layout now = layout;
        for (int i = 0; i < layout.sections().size(); i++) {
            Layout.Section section = now.sections().get(i);
            boolean last = i == layout.sections().size() - 1;
            long to = last ? ends.end() : ends.endUpTo(now.sections().get(i + 1).from() - kerf);
            if (to > section.to()) now = better(now, i, section.from(), to);
            section = now.sections().get(i);
            if (i == 0 && section.from() > 0) now = better(now, i, ends.begin(), section.to());
        }
        return now;
    }

    private Layout better(Layout layout, int i, long from, long to) {
        Layout.Section section = layout.sections().get(i);
        List<Layout.Section> sections = new ArrayList<>(layout.sections());
        sections.set(i, new Layout.Section(from, to, section.referenceEdge(), section.edgeLoss(), section.strips()));
        Layout longer = new Layout(layout.board(), sections);
        return fits(job.board(layout.board()), sections.get(i)) && kept(longer).equals(kept(layout)) ? longer : layout;
    }

    private boolean fits(Board board, Layout.Section section) {
        long length = section.to() - section.from();
        if (length > job.saw().longestRip().orElse(Length.LONGEST).nanometers()) return false;
        BoardEdges edges = new BoardEdges(board);
        Edge other = section.referenceEdge() == Edge.LEFT ? Edge.RIGHT : Edge.LEFT;
        if (!edges.straight(section.referenceEdge()) && edges.straighteningLoss(length) > section.edgeLoss())
            return false;
        long taken = section.edgeLoss()
                + (edges.straight(other) ? 0 : board.edgeLoss().nanometers());
        long kerf = job.saw().ripKerf().nanometers();
        for (Layout.Strip strip : section.strips()) taken += strip.width() + kerf;
        return taken - kerf <= Piece.across(board, section.from(), section.to()).narrowWidth();
    }

    private List<Piece> kept(Layout layout) {
        return new LayoutLeftovers(job, layout)
                .all().stream().map(Leftover::piece).filter(salvage::keeps).toList();
    }
}
