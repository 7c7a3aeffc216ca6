package ripwright.testing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/** A plan as it comes back from its file: every length in it to six decimals of its unit. */
public final class Printed {
    private static final int DECIMALS = 6;

    private final Unit unit;

    private Printed(Unit unit) {
        this.unit = unit;
    }

    /** That plan, written and read. */
    public static Plan plan(Plan plan) {
        return new Printed(plan.units()).of(plan);
    }

    private Plan of(Plan plan) {
        return new Plan(
                plan.job(),
                plan.units(),
                plan.status(),
                plan.cost(),
                plan.tally(),
                plan.boards().stream().map(this::of).toList(),
                plan.settings().stream()
                        .map(one -> new Setting(one.id(), of(one.width()), one.test()))
                        .toList(),
                plan.testBlanks().stream().map(this::of).toList(),
                plan.steps().stream().map(this::of).toList(),
                plan.offcuts().stream()
                        .map(one -> new Offcut(one.from(), of(one.piece())))
                        .toList(),
                plan.shortages(),
                plan.cautions());
    }

    private CutBoard of(CutBoard cut) {
        return new CutBoard(cut.board(), cut.sections().stream().map(this::of).toList());
    }

    private Section of(Section section) {
        List<Strip> strips = section.strips().stream().map(this::of).toList();
        return new Section(
                section.id(),
                of(section.from()),
                of(section.to()),
                section.referenceEdge(),
                of(section.edgeLoss()),
                strips);
    }

    private Strip of(Strip strip) {
        List<Blank> blanks = strip.blanks().stream()
                .map(blank -> new Blank(blank.id(), blank.part(), of(blank.from()), of(blank.length())))
                .toList();
        return new Strip(strip.id(), of(strip.offset()), of(strip.width()), strip.setting(), blanks);
    }

    private TestBlank of(TestBlank blank) {
        return new TestBlank(
                blank.id(),
                blank.from(),
                blank.source(),
                of(blank.width()),
                of(blank.length()),
                of(blank.thickness()),
                blank.species(),
                blank.proves());
    }

    private Step of(Step step) {
        return new Step(
                step.n(),
                step.saw(),
                step.does(),
                step.setting(),
                of(step.stop()),
                step.piece(),
                step.makes(),
                of(step.spare()));
    }

    private Board of(Board board) {
        List<Defect> defects = board.defects().stream().map(this::of).toList();
        return board.toBuilder()
                .rough(of(board.thickness()), of(board.millsTo()))
                .width(of(board.width()), of(board.widthAtFarEnd()))
                .length(of(board.length()))
                .edges(board.straightEdges(), of(board.edgeLoss()), of(board.crook()))
                .endTrim(of(board.endTrim().near()), of(board.endTrim().far()))
                .defects(defects)
                .build();
    }

    private Defect of(Defect defect) {
        return new Defect(
                of(defect.from()),
                of(defect.to()),
                of(defect.left()),
                of(defect.right()),
                defect.kind(),
                defect.blocks());
    }

    private Optional<Length> of(Optional<Length> length) {
        return length.map(this::of);
    }

    private Length of(Length length) {
        BigDecimal units = BigDecimal.valueOf(length.nanometers())
                .divide(BigDecimal.valueOf(unit.nanometers()), DECIMALS, RoundingMode.HALF_UP);
        return Length.of(units, unit);
    }
}
