package ripwright.json;

import java.util.List;
import java.util.Locale;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Species;

/**
 * Writes plan files: the same bytes for the same plan, its lengths as numbers of its units with up to six decimals, halves up.
 */
public final class PlanWriter {
    private final Plan plan;
    private final JsonOut json;

    private PlanWriter(Plan plan, JsonOut json) {
        this.plan = plan;
        this.json = json;
    }

    /** The plan as its file holds it, in UTF-8. */
    public static byte[] bytes(Plan plan) {
        return JsonOut.bytes(json -> write(plan, json));
    }

    /** The same fields into an object of a larger text. */
    public static void write(Plan plan, JsonOut json) {
        new PlanWriter(plan, json).write();
    }

    private void write() {
        json.number("format", Format.NUMBER);
        json.text("job", plan.job());
        json.text("units", plan.units().symbol());
        json.text("status", word(plan.status()));
        FiguresOut figures = new FiguresOut(json);
        figures.cost(plan.cost());
        Tally tally = plan.tally();
        json.number("yield", tally.yield());
        json.number("minutes", tally.minutes());
        figures.boardFeet(tally);
        json.list("boards", plan.boards(), this::write);
        json.list("settings", plan.settings(), this::write);
        json.list("testBlanks", plan.testBlanks(), this::write);
        json.list("steps", plan.steps(), this::write);
        json.list("offcuts", plan.offcuts(), offcut -> new OffcutOut(json, plan.units()).write(offcut));
        json.list("short", plan.shortages(), this::write);
        json.list("cautions", plan.cautions(), caution -> {
            if (!caution.steps().isEmpty()) json.numbers("steps", caution.steps());
            json.text("text", caution.text());
        });
    }

    private void write(CutBoard board) {
        json.text("board", board.board());
        json.list("sections", board.sections(), this::write);
    }

    private void write(Section section) {
        json.text("id", section.id());
        length("from", section.from());
        length("to", section.to());
        json.text("referenceEdge", word(section.referenceEdge()));
        length("edgeLoss", section.edgeLoss());
        json.list("strips", section.strips(), this::write);
    }

    private void write(Strip strip) {
        json.text("id", strip.id());
        length("offset", strip.offset());
        length("width", strip.width());
        strip.setting().ifPresent(setting -> json.text("setting", setting));
        json.list("blanks", strip.blanks(), this::write);
    }

    private void write(Blank blank) {
        json.text("id", blank.id());
        json.text("part", blank.part());
        length("from", blank.from());
        length("length", blank.length());
    }

    private void write(Setting setting) {
        json.text("id", setting.id());
        length("width", setting.width());
        setting.test()
                .ifPresent(test -> json.object("test", () -> {
                    json.text("blank", test.blank());
                    json.text("source", word(test.source()));
                }));
    }

    private void write(TestBlank blank) {
        json.text("id", blank.id());
        json.text("from", blank.from());
        json.text("source", word(blank.source()));
        length("width", blank.width());
        length("length", blank.length());
        length("thickness", blank.thickness());
        json.text("species", blank.species().name());
        json.texts("proves", blank.proves());
    }

    private void write(Step step) {
        json.number("n", step.n());
        step.saw().ifPresent(saw -> json.text("saw", word(saw)));
        json.text("does", word(step.does()));
        step.setting().ifPresent(setting -> json.text("setting", setting));
        step.stop().ifPresent(stop -> length("stop", stop));
        json.text("piece", step.piece());
        json.texts("makes", step.makes());
        step.spare().ifPresent(spare -> length("spare", spare));
    }

    private void write(Shortage shortage) {
        json.text("part", shortage.part());
        json.number("count", shortage.count());
        Shortage.Buy buy = shortage.buy();
        json.object("buy", () -> {
            json.number("boardFeet", buy.boardFeet());
            write(buy.species());
            length("thickness", buy.thickness());
            length("shortest", buy.shortest());
            length("narrowest", buy.narrowest());
        });
    }

    private void write(List<Species> species) {
        if (species.isEmpty()) json.text("species", SpeciesKind.ANY.name());
        else if (species.size() == 1) json.text("species", species.get(0).name());
        else json.texts("species", species.stream().map(Species::name).toList());
    }

    private void length(String name, Length length) {
        json.number(name, plan.units().number(length));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
