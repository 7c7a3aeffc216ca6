package ripwright.replay;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.Caution;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** A plan to be altered, one thing at a time. */
final class Draft {
    private String job;
    private Unit units;
    private Plan.Status status;
    private Cost cost;
    private Tally tally;
    private final List<CutBoard> boards;
    private final List<Setting> settings;
    private final List<TestBlank> testBlanks;
    private final DraftSteps steps;
    private final List<Offcut> offcuts;
    private final List<Shortage> shortages;

    Draft(Plan plan) {
        job = plan.job();
        units = plan.units();
        status = plan.status();
        cost = plan.cost();
        tally = plan.tally();
        boards = new ArrayList<>(plan.boards());
        settings = new ArrayList<>(plan.settings());
        testBlanks = new ArrayList<>(plan.testBlanks());
        steps = new DraftSteps(plan);
        offcuts = new ArrayList<>(plan.offcuts());
        shortages = new ArrayList<>(plan.shortages());
    }

    Plan plan() {
        return new Plan(
                job,
                units,
                status,
                cost,
                tally,
                boards,
                settings,
                testBlanks,
                steps.steps(),
                offcuts,
                shortages,
                steps.cautions());
    }

    private Length length(String text) {
        return Length.parse(text, units);
    }

    Draft job(String name) {
        job = name;
        return this;
    }

    Draft units(Unit unit) {
        units = unit;
        return this;
    }

    Draft status(Plan.Status status) {
        this.status = status;
        return this;
    }

    Draft cost(String stock, String salvage, String labor, String net, String bound, String gap, boolean proven) {
        cost = Make.cost(stock, salvage, labor, net, bound, gap, proven);
        return this;
    }

    Draft tally(String consumed, String parts, String offcuts, String waste, String yield, String minutes) {
        tally = Make.tally(consumed, parts, offcuts, waste, yield, minutes);
        return this;
    }

    Draft minutes(String minutes) {
        tally = new Tally(
                tally.consumed(),
                tally.parts(),
                tally.offcuts(),
                tally.waste(),
                tally.yield(),
                new BigDecimal(minutes));
        return this;
    }

    // ---- boards ----

    Draft addBoard(String board, Section... sections) {
        boards.add(new CutBoard(board, List.of(sections)));
        return this;
    }

    Draft removeBoard(String board) {
        boards.removeIf(cut -> cut.board().equals(board));
        return this;
    }

    Draft renameBoard(String board, String name) {
        boards.replaceAll(cut -> cut.board().equals(board) ? new CutBoard(name, cut.sections()) : cut);
        return this;
    }

    Draft sections(String board, UnaryOperator<List<Section>> edit) {
        boards.replaceAll(cut ->
                cut.board().equals(board) ? new CutBoard(board, edit.apply(new ArrayList<>(cut.sections()))) : cut);
        return this;
    }

    private Draft section(String id, UnaryOperator<Section> edit) {
        boards.replaceAll(cut -> new CutBoard(
                cut.board(),
                cut.sections().stream()
                        .map(section -> section.id().equals(id) ? edit.apply(section) : section)
                        .toList()));
        return this;
    }

    Draft strips(String section, UnaryOperator<List<Strip>> edit) {
        return section(
                section,
                s -> new Section(
                        s.id(),
                        s.from(),
                        s.to(),
                        s.referenceEdge(),
                        s.edgeLoss(),
                        edit.apply(new ArrayList<>(s.strips()))));
    }

    Draft span(String section, String from, String to) {
        return section(
                section,
                s -> new Section(s.id(), length(from), length(to), s.referenceEdge(), s.edgeLoss(), s.strips()));
    }

    Draft rides(String section, Edge edge, String loss) {
        return section(section, s -> new Section(s.id(), s.from(), s.to(), edge, length(loss), s.strips()));
    }

    private Draft strip(String id, UnaryOperator<Strip> edit) {
        boards.replaceAll(cut -> new CutBoard(
                cut.board(),
                cut.sections().stream()
                        .map(s -> new Section(
                                s.id(),
                                s.from(),
                                s.to(),
                                s.referenceEdge(),
                                s.edgeLoss(),
                                s.strips().stream()
                                        .map(strip -> strip.id().equals(id) ? edit.apply(strip) : strip)
                                        .toList()))
                        .toList()));
        return this;
    }

    Draft offset(String strip, String offset) {
        return strip(strip, s -> new Strip(s.id(), length(offset), s.width(), s.setting(), s.blanks()));
    }

    Draft width(String strip, String width) {
        return strip(strip, s -> new Strip(s.id(), s.offset(), length(width), s.setting(), s.blanks()));
    }

    Draft atSetting(String strip, String setting) {
        Optional<String> at = setting.isEmpty() ? Optional.empty() : Optional.of(setting);
        return strip(strip, s -> new Strip(s.id(), s.offset(), s.width(), at, s.blanks()));
    }

    Draft blanks(String strip, UnaryOperator<List<Blank>> edit) {
        return strip(
                strip,
                s -> new Strip(s.id(), s.offset(), s.width(), s.setting(), edit.apply(new ArrayList<>(s.blanks()))));
    }

    Draft blank(String id, String part, String from, String length) {
        boards.stream()
                .flatMap(cut -> cut.sections().stream())
                .flatMap(section -> section.strips().stream())
                .map(Strip::id)
                .toList()
                .forEach(strip -> blanks(strip, blanks -> {
                    blanks.replaceAll(
                            blank -> blank.id().equals(id) ? new Blank(id, part, length(from), length(length)) : blank);
                    return blanks;
                }));
        return this;
    }

    Draft renameBlank(String strip, String id, String name) {
        return blanks(strip, blanks -> {
            blanks.replaceAll(blank ->
                    blank.id().equals(id) ? new Blank(name, blank.part(), blank.from(), blank.length()) : blank);
            return blanks;
        });
    }

    // ---- settings and test blanks ----

    Draft settings(UnaryOperator<List<Setting>> edit) {
        List<Setting> edited = edit.apply(new ArrayList<>(settings));
        settings.clear();
        settings.addAll(edited);
        return this;
    }

    Draft setting(Setting setting) {
        settings.replaceAll(old -> old.id().equals(setting.id()) ? setting : old);
        return this;
    }

    Draft testBlank(String id, UnaryOperator<TestBlank> edit) {
        testBlanks.replaceAll(blank -> blank.id().equals(id) ? edit.apply(blank) : blank);
        return this;
    }

    Draft proves(String testBlank, String... settings) {
        return testBlank(
                testBlank,
                t -> new TestBlank(
                        t.id(),
                        t.from(),
                        t.source(),
                        t.width(),
                        t.length(),
                        t.thickness(),
                        t.species(),
                        List.of(settings)));
    }

    Draft addTestBlank(TestBlank blank) {
        testBlanks.add(blank);
        return this;
    }

    Draft removeTestBlank(String id) {
        testBlanks.removeIf(blank -> blank.id().equals(id));
        return this;
    }

    // ---- steps ----

    private Draft steps(Consumer<DraftSteps> edit) {
        edit.accept(steps);
        return this;
    }

    Draft step(int n, UnaryOperator<Step> edit) {
        return steps(all -> all.replace(n, edit));
    }

    Draft makes(int n, String... makes) {
        return steps(all -> all.makes(n, List.of(makes)));
    }

    Draft piece(int n, String piece) {
        return steps(all -> all.piece(n, piece));
    }

    Draft stepSetting(int n, Optional<String> setting) {
        return steps(all -> all.setting(n, setting));
    }

    Draft stop(int n, Optional<String> stop) {
        return steps(all -> all.stop(n, stop.map(this::length)));
    }

    Draft spare(int n, Optional<String> spare) {
        return steps(all -> all.spare(n, spare.map(this::length)));
    }

    Draft saw(int n, Optional<Step.Saw> saw) {
        return steps(all -> all.saw(n, saw));
    }

    Draft does(int n, Step.Does does) {
        return steps(all -> all.does(n, does));
    }

    /** Takes step {@code n} out, and numbers the others, and the cautions about them, anew. */
    Draft removeStep(int n) {
        return steps(all -> all.remove(n));
    }

    /** Puts {@code step} before the one now numbered {@code n}. */
    Draft insertStep(int n, Step step) {
        return steps(all -> all.insert(n, step));
    }

    Draft swapSteps(int n, int m) {
        return steps(all -> all.swap(n, m));
    }

    /** Takes step {@code n} out and puts it in place {@code m}; cautions stay with their steps. */
    Draft moveStep(int n, int m) {
        return steps(all -> all.move(n, m));
    }

    Draft number(int n, int number) {
        return steps(all -> all.number(n, number));
    }

    // ---- offcuts, shortages, cautions ----

    Draft offcut(String id, UnaryOperator<Board.Builder> edit) {
        offcuts.replaceAll(offcut -> offcut.id().equals(id)
                ? new Offcut(
                        offcut.from(), edit.apply(offcut.piece().toBuilder()).build())
                : offcut);
        return this;
    }

    Draft offcutFrom(String id, String from) {
        offcuts.replaceAll(offcut -> offcut.id().equals(id) ? new Offcut(from, offcut.piece()) : offcut);
        return this;
    }

    Draft addOffcut(Offcut offcut) {
        offcuts.add(offcut);
        return this;
    }

    Draft removeOffcut(String id) {
        offcuts.removeIf(offcut -> offcut.id().equals(id));
        return this;
    }

    Draft shortages(UnaryOperator<List<Shortage>> edit) {
        List<Shortage> edited = edit.apply(new ArrayList<>(shortages));
        shortages.clear();
        shortages.addAll(edited);
        return this;
    }

    Draft shortage(String part, UnaryOperator<Shortage> edit) {
        shortages.replaceAll(shortage -> shortage.part().equals(part) ? edit.apply(shortage) : shortage);
        return this;
    }

    Draft cautions(Caution... all) {
        return steps(steps -> steps.cautions(List.of(all)));
    }
}
