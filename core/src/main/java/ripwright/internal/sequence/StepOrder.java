package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.List;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.SectionCut;
import ripwright.internal.pieces.StripCut;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.plan.Step;
import ripwright.stock.Board;

/** The order of work: boards are broken down, sections milled and straightened, then ripped, then crosscut. */
public final class StepOrder {
    private final CutPieces cutting;
    private final TestPlan tests;
    private final ListedOffcuts offcuts;
    private final StepList steps = new StepList();

    StepOrder(Job job, CutPieces cutting, TestPlan tests, ListedOffcuts offcuts) {
        this.cutting = cutting;
        this.tests = tests;
        this.offcuts = offcuts;
        List<Board> boards = job.boards();
        for (int i = 0; i < boards.size(); i++)
            if (cutting.cuts(i) || tests.opens(boards.get(i))) breakDown(i, boards.get(i));
        mill();
        straighten();
        new RipSteps(cutting, tests, offcuts, steps).write();
        new CrosscutSteps(job, cutting, tests, offcuts, steps).write();
    }

    List<Step> steps() {
        return steps.steps();
    }

    /** Its sections, then test blanks, then full-width offcuts; of ripped stock the strip too. */
    private void breakDown(int place, Board board) {
        List<String> makes = new ArrayList<>();
        for (SectionCut section : cutting.sectionsOf(place)) {
            makes.add(section.id());
            if (board.ripped()) for (StripCut strip : section.strips()) makes.add(strip.id());
        }
        for (TestPlan.ProvingBlank blank : tests.blanks())
            if (blank.blank().from().equals(board.id())) makes.add(blank.id());
        makes.addAll(offcuts.of(board.id()));
        steps.breakdown(board.id(), makes);
    }

    private void mill() {
        for (SectionCut section : cutting.sections()) if (section.board().rough()) steps.mill(section.id());
        for (TestPlan.ProvingBlank blank : tests.blanks()) if (!blank.piece().milled()) steps.mill(blank.id());
    }

    private void straighten() {
        for (SectionCut section : cutting.sections()) if (section.straightened()) steps.straighten(section.id());
        for (TestPlan.ProvingBlank blank : tests.blanks())
            if (!blank.piece().hasStraightEdge()) steps.straighten(blank.id());
    }
}
