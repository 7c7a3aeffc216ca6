package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** A strip while its blanks are set in order: which parts they are of; where they lie follows. */
public final class TidyStrip {
    private final Job job;
    private final Board board;
    private final Layout.Section section;
    private final Layout.Strip original;
    private final List<Integer> parts = new ArrayList<>();
    private final boolean movable;
    private final long kerf;
    private final long start; // of the span blanks may lie in
    private final long end;
    private final long rest; // what lies behind that span and is not raw end to trim

    /** Which board it is of, by place in the job. */
    final int place;

    /** Its section's place in the layout. */
    final int sectionPlace;

    /** Its own place in the section. */
    final int stripPlace;

    TidyStrip(Job job, Layout layout, int sectionPlace, int stripPlace) {
        this.job = job;
        this.place = layout.board();
        this.sectionPlace = sectionPlace;
        this.stripPlace = stripPlace;
        board = job.board(place);
        section = layout.sections().get(sectionPlace);
        original = section.strips().get(stripPlace);
        kerf = job.saw().crosscutKerf().nanometers();
        SectionEnds ends = new SectionEnds(board, job, 0);
        start = ends.spanFrom(section.from());
        end = ends.spanTo(section.to());
        long clear = board.length().nanometers() - board.endTrim().far().nanometers();
        rest = Math.max(0, Math.min(section.to(), clear) - end);
        for (Layout.Blank blank : original.blanks()) parts.add(blank.part());
        movable = !parts.isEmpty() && clear() && parts.stream().noneMatch(this::shorterThanAllowed);
    }

    private boolean clear() {
        long width = Piece.across(board, section.from(), section.to()).narrowWidth();
        long taken = section.edgeLoss();
        for (Layout.Strip before : section.strips().subList(0, stripPlace))
            taken += before.width() + job.saw().ripKerf().nanometers();
        long left = section.referenceEdge() == Edge.LEFT ? taken : width - taken - original.width();
        return board.defects().stream()
                .noneMatch(defect -> defect.from().nanometers() < section.to()
                        && defect.to().nanometers() > section.from()
                        && defect.left().nanometers() < left + original.width()
                        && defect.right().nanometers() > left);
    }

    /** Such blanks come last off their strip. */
    private boolean shorterThanAllowed(int part) {
        return job.saw()
                .shortestCrosscut()
                .filter(shortest -> shortest.exceeds(part(part).blankLength()))
                .isPresent();
    }

    private Part part(int part) {
        return job.parts().get(part);
    }

    /** Whether its blanks may be changed for others: no defect lies on it. */
    boolean movable() {
        return movable;
    }

    long width() {
        return original.width();
    }

    Length thickness() {
        return board.millsTo();
    }

    List<Integer> parts() {
        return parts;
    }

    /** Whether that part may come from its board, wherever there is room. */
    boolean takes(int part) {
        return part(part).takes(board.species()) && part(part).mayComeFrom(board.id()) && !shorterThanAllowed(part);
    }

    /** The free wood beside its blanks. */
    long gap() {
        long gap = end - start - (parts.size() - 1) * kerf;
        for (int part : parts) gap -= part(part).blankLength().nanometers();
        return gap;
    }

    /** How long a leftover is that goes back to the rack; 0 when none does. */
    long kept() {
        long left = gap() + rest - kerf;
        boolean kept = left >= job.keep().length().nanometers()
                && original.width() >= job.keep().width().nanometers();
        return kept ? left : 0;
    }

    int crosscuts() {
        int first = OnePlace.are(start, section.from()) ? 0 : 1;
        return first + parts.size() - 1 + (OnePlace.are(gap() + section.to() - end, 0) ? 0 : 1);
    }

    long fitted() {
        return parts.stream().filter(part -> part(part).fitted()).count();
    }

    /** How many fitted blanks have the free wood beside them: each in its turn, as the others may move along. */
    long spared() {
        return kept() == 0 ? fitted() : Math.min(1, fitted());
    }

    /** How many hidden parts come from a board with defects, or off the rack. */
    long hiddenInPoorWood() {
        if (!board.fromRack() && board.defects().isEmpty()) return 0;
        return parts.stream()
                .filter(part -> part(part).face() == Part.Face.HIDDEN)
                .count();
    }

    /**
     * The strip, its blanks from the near end on: parts of one group side by side, fitted ones last, so that the free wood
     * lies beside them. Strips with neither stay as they were, unless their parts have changed.
     */
    Layout.Strip strip() {
        List<Integer> before =
                original.blanks().stream().map(Layout.Blank::part).toList();
        boolean plain = fitted() == 0
                && parts.stream().allMatch(part -> part(part).together().isEmpty());
        if (!movable || (plain && parts.equals(before))) return original;
        List<Integer> order = new ArrayList<>(parts);
        order.sort(Comparator.comparing((Integer part) -> part(part).fitted())
                .thenComparing(part -> part(part).together().orElse(""))
                .thenComparing(part -> part(part).blankLength(), Comparator.reverseOrder())
                .thenComparing(part -> part));
        List<Layout.Blank> blanks = new ArrayList<>();
        long from = start;
        for (int part : order) {
            blanks.add(new Layout.Blank(part, from));
            from += part(part).blankLength().nanometers() + kerf;
        }
        return new Layout.Strip(original.width(), blanks);
    }
}
