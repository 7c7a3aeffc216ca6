package ripwright.replay;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
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
import ripwright.plan.Shortage.Buy;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/** Makes nonsense of a plan, reproducibly: any field may become any value its type allows. */
final class Scramble {
    private static final List<String> NUMBERS = List.of(
            "0", "-1", "0.001", "1E+2000000000", "1E-2000000000", "-99999999999999999999999999999999999999999999.99");

    private final Random random;
    private final int mildness; // one field of so many is altered
    private final List<String> ids = new ArrayList<>(List.of("", " ", "?", "#", "a\u0000b"));

    Scramble(long seed, Plan plan) {
        random = new Random(seed);
        mildness = 3 + random.nextInt(100);
        for (CutBoard board : plan.boards()) {
            ids.add(board.board());
            for (Section section : board.sections()) {
                ids.add(section.id());
                section.strips().forEach(strip -> {
                    ids.add(strip.id());
                    strip.blanks().forEach(blank -> Collections.addAll(ids, blank.id(), blank.part()));
                });
            }
        }
        plan.settings().forEach(setting -> ids.add(setting.id()));
        plan.testBlanks().forEach(blank -> ids.add(blank.id()));
        plan.offcuts().forEach(offcut -> ids.add(offcut.id()));
    }

    private <T> T maybe(T value, Supplier<T> other) {
        return random.nextInt(mildness) == 0 ? other.get() : value;
    }

    private <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private String id(String id) {
        return maybe(id, () -> any(ids));
    }

    private Length length(Length length) {
        return maybe(
                length,
                () -> any(List.of(
                        Length.ZERO,
                        new Length(1),
                        new Length(Math.max(0, length.nanometers() - 3_175_000)),
                        Length.inches("1/8"),
                        Length.inches("12"),
                        Length.LONGEST)));
    }

    /** Never zero, for what refuses it. */
    private Length positive(Length length) {
        return length(length).max(new Length(1));
    }

    private BigDecimal number(BigDecimal number) {
        return maybe(number, () -> new BigDecimal(any(NUMBERS)));
    }

    private int count(int count) {
        return maybe(count, () -> any(List.of(0, 1, -1, Integer.MAX_VALUE, Integer.MIN_VALUE, count + 1)));
    }

    private <T> List<T> list(List<T> list, UnaryOperator<T> each) {
        List<T> altered = new ArrayList<>();
        for (T value : list) altered.add(each.apply(value));
        if (!altered.isEmpty()) {
            if (random.nextInt(mildness) == 0) altered.remove(random.nextInt(altered.size()));
            if (random.nextInt(mildness) == 0 && !altered.isEmpty()) altered.add(any(altered));
            if (random.nextInt(mildness) == 0) Collections.shuffle(altered, random);
            if (random.nextInt(10 * mildness) == 0) altered.clear();
        }
        return altered;
    }

    private <T> Optional<T> optional(Optional<T> value, UnaryOperator<T> each, Supplier<T> some) {
        if (random.nextInt(mildness) == 0) return value.isPresent() ? Optional.empty() : Optional.of(some.get());
        return value.map(each);
    }

    Plan of(Plan p) {
        return new Plan(
                id(p.job()),
                maybe(p.units(), () -> any(List.of(Unit.values()))),
                maybe(p.status(), () -> any(List.of(Plan.Status.values()))),
                of(p.cost()),
                of(p.tally()),
                list(p.boards(), cut -> new CutBoard(id(cut.board()), list(cut.sections(), this::of))),
                list(p.settings(), this::of),
                list(p.testBlanks(), this::of),
                list(p.steps(), this::of),
                list(p.offcuts(), offcut -> new Offcut(id(offcut.from()), of(offcut.piece()))),
                list(p.shortages(), s -> new Shortage(id(s.part()), count(s.count()), of(s.buy()))),
                list(p.cautions(), c -> new Caution(list(c.steps(), this::count), id(c.text()))));
    }

    private Cost of(Cost c) {
        return new Cost(
                number(c.stock()),
                number(c.salvage()),
                number(c.labor()),
                number(c.net()),
                number(c.bound()),
                number(c.gap()),
                maybe(c.proven(), () -> !c.proven()));
    }

    private Tally of(Tally t) {
        return new Tally(
                number(t.consumed()),
                number(t.parts()),
                number(t.offcuts()),
                number(t.waste()),
                number(t.yield()),
                number(t.minutes()));
    }

    private Section of(Section s) {
        return new Section(
                id(s.id()),
                length(s.from()),
                length(s.to()),
                maybe(s.referenceEdge(), () -> any(List.of(Edge.values()))),
                length(s.edgeLoss()),
                list(s.strips(), this::of));
    }

    private Strip of(Strip s) {
        return new Strip(
                id(s.id()),
                length(s.offset()),
                length(s.width()),
                optional(s.setting(), this::id, () -> any(ids)),
                list(s.blanks(), b -> new Blank(id(b.id()), id(b.part()), length(b.from()), length(b.length()))));
    }

    private Setting of(Setting s) {
        return new Setting(
                id(s.id()),
                length(s.width()),
                optional(
                        s.test(),
                        test -> new Setting.Test(id(test.blank()), source(test.source())),
                        () -> new Setting.Test(any(ids), TestBlank.Source.RACK)));
    }

    private TestBlank.Source source(TestBlank.Source source) {
        return maybe(source, () -> any(List.of(TestBlank.Source.values())));
    }

    private TestBlank of(TestBlank t) {
        return new TestBlank(
                id(t.id()),
                id(t.from()),
                source(t.source()),
                length(t.width()),
                length(t.length()),
                length(t.thickness()),
                maybe(t.species(), () -> new Species("elm")),
                list(t.proves(), this::id));
    }

    private Step of(Step s) {
        return new Step(
                count(s.n()),
                optional(s.saw(), saw -> saw, () -> Step.Saw.RIP),
                maybe(s.does(), () -> any(List.of(Step.Does.values()))),
                optional(s.setting(), this::id, () -> any(ids)),
                optional(s.stop(), this::length, () -> Length.inches("12")),
                id(s.piece()),
                list(s.makes(), this::id),
                optional(s.spare(), this::length, () -> Length.LONGEST));
    }

    private Board of(Board b) {
        return b.toBuilder()
                .length(positive(b.length()).max(b.length()))
                .width(
                        positive(b.width()).max(b.width()),
                        positive(b.widthAtFarEnd()).max(b.widthAtFarEnd()))
                .endTrim(length(b.endTrim().near()), length(b.endTrim().far()))
                .build();
    }

    private Buy of(Buy b) {
        return new Buy(
                number(b.boardFeet()),
                list(b.species(), species -> species),
                length(b.thickness()),
                length(b.shortest()),
                length(b.narrowest()));
    }
}
