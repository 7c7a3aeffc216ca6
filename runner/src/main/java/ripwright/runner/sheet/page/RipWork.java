package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;
import ripwright.runner.sheet.drawing.Isolated;
import ripwright.runner.sheet.page.Table.Group;

/** What is done at one rip setting: the test, the first strip and its check, the rest. */
final class RipWork {
    private static final int COLUMNS = 5;

    private static final String HOW_TO_MARK =
            "Edges are left and right as seen from the marked end, face up. The edge named rides the fence: look for the"
                    + " triangle that points to it. Each strip comes off that side, so the edge just sawn is the next to"
                    + " ride the fence. Write each strip's id at its marked end as it comes off, S5 on S5, and the section's"
                    + " id and triangle again on what stays if they went with it.";

    private final Plan plan;
    private final Pieces pieces;
    private final Tape tape;
    private final StepCells cells;

    RipWork(Plan plan, Pieces pieces, Tape tape, StepCells cells) {
        this.plan = plan;
        this.pieces = pieces;
        this.tape = tape;
        this.cells = cells;
    }

    Block block(Run run) {
        Optional<Setting> setting = plan.settings().stream()
                .filter(one -> one.id().equals(run.key()))
                .findFirst();
        String width = setting.map(one -> tape.full(one.width())).orElse("setting " + run.key());
        String stage = setting.map(one -> "Rip setting " + (plan.settings().indexOf(one) + 1) + " of "
                        + plan.settings().size() + " \u2013 " + one.id())
                .orElse("");
        Table table = new Table(
                "Strips to rip " + width + " wide",
                List.of(
                        Table.step(),
                        Table.text("Section"),
                        Table.text("Edge to the fence"),
                        Table.number(tape.column("Length")),
                        Table.ticks("Strips, and what is kept of the rest")),
                run.steps().stream().map(this::group).toList());
        return new Block(stage, "Rip at " + width, notes(setting), Optional.of(table));
    }

    private List<String> notes(Optional<Setting> setting) {
        boolean first = setting.filter(one -> plan.settings().indexOf(one) == 0).isPresent();
        return Stream.concat(
                        first ? Stream.of(HOW_TO_MARK) : Stream.of(),
                        setting.map(this::tries).stream().flatMap(List::stream))
                .toList();
    }

    private List<String> tries(Setting setting) {
        List<String> ids = plan.testBlanks().stream()
                .filter(test -> test.proves().contains(setting.id()))
                .map(TestBlank::id)
                .toList();
        if (ids.isEmpty()) return List.of("This setting is not tested: measure the first strip before the next.");
        String first = setting.test().map(Setting.Test::blank).orElse(ids.get(0));
        List<String> others = ids.stream().filter(id -> !id.equals(first)).toList();
        return others.isEmpty()
                ? List.of()
                : List.of("If " + Isolated.name(first) + " comes out wrong, move the fence and try again on "
                        + others.stream().map(Isolated::name).collect(Collectors.joining(", then ")) + ".");
    }

    private Group group(Step step) {
        return switch (step.does()) {
            case TEST -> wide(step, "Test: " + testBlank(step) + ". Go on when it reads " + width(step) + ".");
            case CHECK ->
                wide(
                        step,
                        "Check strip " + Isolated.name(step.piece()) + ": " + width(step)
                                + " wide over its whole length? Only then run the rest.");
            case TRIM -> wide(step, trim(step));
            default -> rip(step);
        };
    }

    private Group wide(Step step, String text) {
        return Group.of(List.of(
                cells.number(step),
                Cell.ticks(List.of(StepCells.tick(step, step.piece(), text))).across(COLUMNS - 1)));
    }

    private String width(Step step) {
        return step.setting()
                .flatMap(id -> plan.settings().stream()
                        .filter(one -> one.id().equals(id))
                        .findFirst())
                .map(setting -> tape.full(setting.width()))
                .orElse("as set");
    }

    private String testBlank(Step step) {
        return pieces.testBlank(step.piece())
                .map(test -> "rip test blank " + Isolated.name(test.id()) + " ("
                        + Isolated.name(test.species().name()) + " " + source(test) + ", now "
                        + widthBefore(test, step).map(tape::read).orElse("") + " wide) and measure it")
                .orElse("rip " + Isolated.name(step.piece()) + " and measure it");
    }

    private String source(TestBlank test) {
        return switch (test.source()) {
            case RACK -> "from the rack";
            case WASTE -> "from waste";
            case FRESH -> "cut for the purpose";
        };
    }

    /** How wide a test blank is when it comes to a setting: as cut, or as the setting before left it. */
    private Optional<Length> widthBefore(TestBlank test, Step step) {
        int turn = step.setting().map(test.proves()::indexOf).orElse(-1);
        if (turn <= 0) return Optional.of(test.width());
        return plan.settings().stream()
                .filter(setting -> setting.id().equals(test.proves().get(turn - 1)))
                .map(Setting::width)
                .findFirst();
    }

    private String made(Step step) {
        return step.makes().isEmpty()
                ? "nothing that is kept"
                : step.makes().stream().map(Isolated::name).collect(Collectors.joining(", "));
    }

    /** A test blank off what lies beside the strips; what stays is chalked now, not when it was ripped. */
    private String trim(Step step) {
        String made = step.makes().stream().map(this::cutOff).collect(Collectors.joining(", "));
        String text = "Crosscut " + Isolated.name(step.piece()) + ": makes " + made + ".";
        if (!trimsAfter(step.n(), step.piece()).isEmpty()) return text;
        String stays = plan.steps().stream()
                .filter(before -> before.n() < step.n())
                .flatMap(before -> before.makes().stream())
                .flatMap(id -> pieces.offcut(id).stream())
                .filter(offcut -> offcut.from().equals(step.piece()))
                .map(offcut -> Isolated.name(offcut.id()) + ", "
                        + tape.full(offcut.piece().length()) + " long")
                .collect(Collectors.joining("; "));
        return stays.isEmpty() ? text : text + " What stays is " + stays + ": chalk it now.";
    }

    private String cutOff(String id) {
        return pieces.testBlank(id)
                .map(test -> Isolated.name(id) + ", " + tape.full(test.length()) + " long")
                .orElse(Isolated.name(id));
    }

    private List<Step> trimsAfter(int n, String piece) {
        return plan.steps().stream()
                .filter(later -> later.n() > n && later.does() == Step.Does.TRIM)
                .filter(later -> later.piece().equals(piece))
                .toList();
    }

    private Group rip(Step step) {
        List<Pieces.StripOf> strips =
                step.makes().stream().flatMap(id -> pieces.strip(id).stream()).toList();
        if (strips.isEmpty()) return wide(step, "Rip " + Isolated.name(step.piece()) + ": makes " + made(step) + ".");
        Pieces.StripOf first = strips.get(0);
        List<Cell.Tick> boxes = new ArrayList<>();
        for (Pieces.StripOf strip : strips) {
            String id = strip.strip().id();
            boxes.add(StepCells.tick(step, id, Isolated.name(id)));
        }
        for (String id : step.makes())
            if (pieces.strip(id).isEmpty()) boxes.add(StepCells.tick(step, id, beside(id, step)));
        Section section = first.section().section();
        return Group.of(List.of(
                cells.number(step),
                Cell.text(step.piece()),
                Cell.text(fence(first)),
                Cell.number(tape.read(section.to().minus(section.from()))),
                Cell.ticks(boxes)));
    }

    /** The edge that rides the fence, and how it is known: strips come off that side, so it is a new one after each. */
    private String fence(Pieces.StripOf strip) {
        Section section = strip.section().section();
        String edge = RoughWork.edge(section);
        List<Strip> strips = section.strips();
        int i = strips.indexOf(strip.strip());
        return i <= 0
                ? edge + ", with the triangle"
                : edge + ", sawn with " + Isolated.name(strips.get(i - 1).id());
    }

    private String beside(String id, Step step) {
        List<Step> trims = trimsAfter(step.n(), step.piece());
        String first = trims.isEmpty()
                ? ""
                : ", when " + trims.stream().map(this::made).collect(Collectors.joining(", ")) + " is off it: "
                        + StepNumbers.of(trims.stream().map(Step::n).toList()).toLowerCase(Locale.ROOT);
        return pieces.offcut(id)
                .map(offcut ->
                        Isolated.name(id) + ", " + tape.read(offcut.piece().width()) + " wide" + first)
                .orElse(Isolated.name(id));
    }
}
