package ripwright.internal.sequence;

import java.util.List;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
import ripwright.internal.pieces.SectionCut;
import ripwright.internal.pieces.StripCut;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.plan.Blank;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/**
 * How much longer a strip could still make a fitted part: the free wood beside its blank, both sides together, up to the
 * strip's ends, to a kerf beside the next blank or test blank, or to a defect the part must avoid.
 */
public final class SpareWood {
    private final SectionCut section;
    private final StripCut strip;
    private final Blank blank;
    private final Part part;
    private final long kerf;
    private long from;
    private long to;

    SpareWood(Job job, TestPlan tests, SectionCut section, StripCut strip, int blank) {
        List<Blank> blanks = strip.strip().blanks();
        this.section = section;
        this.strip = strip;
        this.blank = blanks.get(blank);
        this.part = strip.parts().get(blank);
        this.kerf = job.saw().crosscutKerf().nanometers();
        this.from = section.section().from().nanometers();
        this.to = section.section().to().nanometers();
        for (TestPlan.ProvingBlank test : tests.blanks())
            if (test.blank().from().equals(strip.id()))
                stopAt(test.piece().from() - kerf, test.piece().to() + kerf);
        if (blank > 0) stopAt(blanks.get(blank - 1));
        if (blank < blanks.size() - 1) stopAt(blanks.get(blank + 1));
        barring()
                .forEach(
                        defect -> stopAt(defect.from().nanometers(), defect.to().nanometers()));
    }

    Length length() {
        return new Length(start() - from + to - end());
    }

    private void stopAt(Blank neighbor) {
        long start = neighbor.from().nanometers();
        stopAt(start - kerf, start + neighbor.length().nanometers() + kerf);
    }

    /** Wood taken between two places along the grain lies wholly on one side of the blank. */
    private void stopAt(long start, long end) {
        if (end <= start()) from = Math.max(from, end);
        else to = Math.min(to, start);
    }

    private long start() {
        return blank.from().nanometers();
    }

    private long end() {
        return start() + blank.length().nanometers();
    }

    /** The defects on the strip that the part must avoid; one that only touches its edge is none of them. */
    private Stream<Defect> barring() {
        long width = Piece.across(
                        section.board(),
                        section.section().from().nanometers(),
                        section.section().to().nanometers())
                .narrowWidth();
        long taken = section.section().edgeLoss().nanometers()
                + strip.strip().offset().nanometers();
        long left = section.section().referenceEdge() == Edge.LEFT ? taken : width - taken - strip.width();
        return section.board().defects().stream()
                .filter(defect -> defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW)
                .filter(defect -> defect.left().nanometers() + OnePlace.NANOMETERS < left + strip.width()
                        && defect.right().nanometers() - OnePlace.NANOMETERS > left);
    }
}
