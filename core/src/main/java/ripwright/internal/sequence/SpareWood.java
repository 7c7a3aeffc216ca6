package ripwright.internal.sequence;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.SectionEnds;
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
 * How much longer a strip could still make a fitted part when its turn comes, all that comes later made as planned: the wood
 * around it that is not cut off by then, as far from the strip's ends as blanks must keep, up to wood that test blanks took, up
 * to defects that bar it and to a kerf from blanks to come that a defect bars, as these stay; less its own length and, with a
 * kerf each, less what the other blanks to come take of it, as they may move along.
 *
 * @see "CONTRACT.md 5, Steps"
 */
public final class SpareWood {
    private final SectionCut section;
    private final StripCut strip;
    private final Blank blank;
    private final Part part;
    private final long kerf;
    private long from;
    private long to;
    private long taken;

    /** {@code toCome} are the blanks of the strip that are cut later. */
    SpareWood(Job job, TestPlan tests, SectionCut section, StripCut strip, int blank, Set<Integer> toCome) {
        List<Blank> blanks = strip.strip().blanks();
        this.section = section;
        this.strip = strip;
        this.blank = blanks.get(blank);
        this.part = strip.parts().get(blank);
        this.kerf = job.saw().crosscutKerf().nanometers();
        SectionEnds ends = new SectionEnds(section.board(), job, 0);
        this.from = ends.spanFrom(section.section().from().nanometers());
        this.to = ends.spanTo(section.section().to().nanometers());
        if (job.breakdown().leavesOver())
            this.from = Math.max(from, blanks.get(0).from().nanometers()); // where the strip is squared
        for (TestPlan.ProvingBlank test : tests.blanks())
            if (test.blank().from().equals(strip.id()))
                stopAt(test.piece().from() - kerf, test.piece().to() + kerf);
        barring(part, section.section().from(), section.section().to())
                .forEach(
                        defect -> stopAt(defect.from().nanometers(), defect.to().nanometers()));
        for (int i = 0; i < blanks.size(); i++)
            if (i != blank && (!toCome.contains(i) || stays(i))) stopAt(blanks.get(i));
        for (int i : toCome) if (!stays(i)) movesAlong(blanks.get(i));
    }

    Length length() {
        return new Length(Math.max(0, to - from - blank.length().nanometers() - taken));
    }

    /** Whether a defect on the strip bars that blank's part, so that it cannot be cut but where it lies. */
    private boolean stays(int i) {
        return barring(
                        strip.parts().get(i),
                        section.section().from(),
                        section.section().to())
                .findAny()
                .isPresent();
    }

    private void movesAlong(Blank other) {
        long start = other.from().nanometers();
        if (start >= from && start + other.length().nanometers() <= to)
            taken += other.length().nanometers() + kerf;
    }

    private void stopAt(Blank other) {
        long start = other.from().nanometers();
        stopAt(start - kerf, start + other.length().nanometers() + kerf);
    }

    /** Wood taken between two places along the grain lies wholly on one side of the blank. */
    private void stopAt(long start, long end) {
        if (end <= start()) from = Math.max(from, end);
        else to = Math.min(to, start);
    }

    private long start() {
        return blank.from().nanometers();
    }

    /** The defects on the strip that a part must avoid; one that only touches its edge is none of them. */
    private Stream<Defect> barring(Part part, Length start, Length end) {
        long width = Piece.across(section.board(), start.nanometers(), end.nanometers())
                .narrowWidth();
        long across = section.section().edgeLoss().nanometers()
                + strip.strip().offset().nanometers();
        long left = section.section().referenceEdge() == Edge.LEFT ? across : width - across - strip.width();
        return section.board().defects().stream()
                .filter(defect -> defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW)
                .filter(defect -> defect.from().nanometers() < end.nanometers()
                        && defect.to().nanometers() > start.nanometers())
                .filter(defect -> defect.left().nanometers() + OnePlace.NANOMETERS < left + strip.width()
                        && defect.right().nanometers() - OnePlace.NANOMETERS > left);
    }
}
