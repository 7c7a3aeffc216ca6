package ripwright.internal.firstfit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/**
 * A board being cut by hand, one blank after the other. The first section is as long as board and saw allow; where a blank
 * does not come out of that, for crook, taper or a defect, it is made as long as the blank. More sections follow behind
 * it while there is wood.
 */
public final class FirstFitBoard {
    private static final int MOST_SECTIONS = 3;

    private final Job job;
    private final int place; // in job.boards()
    private final Board board;
    private final List<FirstFitSection> sections = new ArrayList<>();

    public FirstFitBoard(Job job, int place) {
        this.job = job;
        this.place = place;
        this.board = job.boards().get(place);
    }

    /** The same again, to try something with. */
    FirstFitBoard copy() {
        FirstFitBoard copy = new FirstFitBoard(job, place);
        for (FirstFitSection section : sections) copy.sections.add(section.copy());
        return copy;
    }

    /** Lays a blank of {@code part} into a strip there is; whether one had room. */
    boolean intoStrip(int part) {
        if (!suits(part)) return false;
        for (FirstFitSection section : sections) if (section.intoStrip(part)) return true;
        return false;
    }

    /** Rips a new strip for a blank of {@code part}, in a new section where it must be; whether there was room. */
    boolean intoNewStrip(int part) {
        if (!suits(part)) return false;
        for (FirstFitSection section : sections) if (section.intoNewStrip(part)) return true;
        return intoNewSection(part);
    }

    /** Lays a blank of {@code part} wherever it fits; whether it does. */
    public boolean into(int part) {
        return intoStrip(part) || intoNewStrip(part);
    }

    /** How it is cut; empty when nothing is. */
    public Optional<Layout> layout() {
        if (sections.isEmpty()) return Optional.empty();
        return Optional.of(new Layout(
                place, sections.stream().map(FirstFitSection::section).toList()));
    }

    private boolean suits(int number) {
        Part part = job.parts().get(number);
        return !board.testOnly()
                && part.thickness().equals(board.millsTo())
                && part.takes(board.species())
                && part.mayComeFrom(board.id());
    }

    private boolean intoNewSection(int part) {
        SectionEnds ends = new SectionEnds(board, job, 0);
        long first = ends.begin();
        long end = ends.end();
        if (board.ripped()) return sections.isEmpty() && end > first && cut(part, first, end, Edge.LEFT);
        if (sections.size() == MOST_SECTIONS) return false;
        for (FirstFitSection section : sections)
            first = section.to() + job.saw().crosscutKerf().nanometers();
        long longest = job.saw().longestRip().orElse(Length.LONGEST).nanometers();
        long shortest = job.saw().shortestRip().orElse(Length.ZERO).nanometers();
        long needed = Math.max(job.parts().get(part).blankLength().nanometers(), shortest);
        for (long from : starts(first, ends))
            for (long to : new long[] {
                ends.endUpTo(from + longest), Math.min(end, ends.sectionTo(ends.spanFrom(from) + needed))
            }) {
                if (to > end || to - from < needed || to - from > longest) continue;
                if (cut(part, from, to, Edge.LEFT)) return true;
                if (!board.tapered() && board.straightEdges() != 1 && cut(part, from, to, Edge.RIGHT)) return true;
            }
        return false;
    }

    private boolean cut(int part, long from, long to, Edge edge) {
        FirstFitSection section = new FirstFitSection(job, board, from, to, edge);
        boolean fits = section.intoNewStrip(part);
        if (fits) sections.add(section);
        return fits;
    }

    /** Where a section may start: as soon as it can, or behind a defect. */
    private Iterable<Long> starts(long first, SectionEnds ends) {
        TreeSet<Long> starts = new TreeSet<>(List.of(first));
        for (Defect defect : board.defects())
            starts.add(Math.max(first, ends.sectionFrom(defect.to().nanometers())));
        return starts;
    }
}
