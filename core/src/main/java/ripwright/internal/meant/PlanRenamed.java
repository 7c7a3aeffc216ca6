package ripwright.internal.meant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import ripwright.stock.History;

/** A plan whose pieces and settings have other ids; nothing else of it changes. */
public final class PlanRenamed {
    private final Map<String, String> names;

    /** With those new ids by the old ones; what has none there keeps its own. */
    public PlanRenamed(Map<String, String> names) {
        this.names = Map.copyOf(names);
    }

    private String name(String id) {
        return names.getOrDefault(id, id);
    }

    private List<String> names(List<String> ids) {
        return ids.stream().map(this::name).toList();
    }

    /** That plan under the new ids. */
    public Plan of(Plan plan) {
        return plan.toBuilder()
                .boards(plan.boards().stream().map(this::of).toList())
                .settings(plan.settings().stream().map(this::of).toList())
                .testBlanks(plan.testBlanks().stream().map(this::of).toList())
                .steps(plan.steps().stream().map(this::of).toList())
                .offcuts(plan.offcuts().stream().map(this::of).toList())
                .build();
    }

    private CutBoard of(CutBoard cut) {
        return new CutBoard(cut.board(), cut.sections().stream().map(this::of).toList());
    }

    private Section of(Section section) {
        List<Strip> strips = new ArrayList<>();
        for (Strip strip : section.strips()) {
            List<Blank> blanks = strip.blanks().stream()
                    .map(blank -> new Blank(name(blank.id()), blank.part(), blank.from(), blank.length()))
                    .toList();
            Optional<String> setting = strip.setting().map(this::name);
            strips.add(new Strip(name(strip.id()), strip.offset(), strip.width(), setting, blanks));
        }
        return new Section(
                name(section.id()), section.from(), section.to(), section.referenceEdge(), section.edgeLoss(), strips);
    }

    private Setting of(Setting setting) {
        Optional<Setting.Test> test = setting.test().map(one -> new Setting.Test(name(one.blank()), one.source()));
        return new Setting(name(setting.id()), setting.width(), test);
    }

    private TestBlank of(TestBlank blank) {
        return new TestBlank(
                name(blank.id()),
                name(blank.from()),
                blank.source(),
                blank.width(),
                blank.length(),
                blank.thickness(),
                blank.species(),
                names(blank.proves()));
    }

    private Step of(Step step) {
        return new Step(
                step.n(),
                step.saw(),
                step.does(),
                step.setting().map(this::name),
                step.stop(),
                name(step.piece()),
                names(step.makes()),
                step.spare());
    }

    /** Its mark too, where that is its id or a number of its own. */
    private Offcut of(Offcut offcut) {
        Board piece = offcut.piece();
        Board.Builder renamed = piece.toBuilder().id(name(piece.id()));
        piece.history()
                .ifPresent(history -> renamed.onRack(
                        new History(history.mark().map(this::name), history.since(), history.job(), history.board())));
        return new Offcut(name(offcut.from()), renamed.build());
    }
}
