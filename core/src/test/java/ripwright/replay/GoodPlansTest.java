package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.MM;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
import ripwright.stock.EndTrim;

class GoodPlansTest {
    static Stream<Sample> samples() {
        return Stream.of(
                BenchRails.sample(),
                HallBench.sample(),
                ShortShelves.sample(),
                DrawerBox.sample(),
                BesideStrip.sample(),
                TaperedLeg.sample(),
                Blocks.three(),
                Thirds.sample(),
                ManyBoards.sample());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_plan_made_by_hand_holds(Sample sample) {
        assertThat(sample.faults()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void it_still_holds_when_read_back_from_a_file_with_six_decimals(Sample sample) {
        Plan readBack = new SixDecimals(sample.job().units()).of(sample.plan());
        assertThat(new Sample(sample.job(), readBack).faults()).isEmpty();
    }

    private static void holds(Sample sample, Consumer<Draft> edit) {
        Draft draft = new Draft(sample.plan());
        edit.accept(draft);
        assertThat(draft.plan()).isNotEqualTo(sample.plan());
        assertThat(new Sample(sample.job(), draft.plan()).faults()).isEmpty();
    }

    @Test
    void a_bare_strip_that_is_kept_may_come_with_its_rip_or_with_a_trim() {
        Step trim = MM.steps().trim("S5", "O1").list().get(0);
        holds(ShortShelves.sample(), d -> d.makes(10, "S4", "S5").insertStep(11, trim));
    }

    @Test
    void a_whole_leftover_that_is_a_test_blank_need_not_be_made() {
        holds(ShortShelves.sample(), d -> d.makes(1, "oak-1/1", "oak-1/2"));
    }

    @Test
    void straightening_a_crooked_test_blank_may_be_a_step() {
        Step straighten = IN.steps().straighten("T3").list().get(0);
        holds(HallBench.sample(), d -> d.insertStep(7, straighten));
    }

    @Test
    void a_test_blank_off_a_tapered_piece_is_as_wide_as_its_own_narrow_end_or_its_pieces() {
        holds(
                HallBench.sample(),
                d -> d.testBlank(
                        "T4",
                        t -> new TestBlank(
                                t.id(),
                                t.from(),
                                t.source(),
                                IN.length("7.36875"),
                                t.length(),
                                t.thickness(),
                                t.species(),
                                t.proves())));
    }

    @Test
    void waste_may_be_the_rest_of_the_printed_figures() {
        holds(BenchRails.sample(), d -> d.tally("4.6250", "2.5488", "1.8110", "0.2652", "0.5511", "19.50"));
    }

    @Test
    void an_offcut_may_name_the_price_of_its_board() {
        holds(BenchRails.sample(), d -> d.offcut("O1", o -> o.price(new BigDecimal("6.0"))));
    }

    @Test
    void a_hidden_part_may_lie_on_a_defect_that_blocks_show() {
        Defect knot = new Defect(
                IN.length("10"), IN.length("11"), IN.length("5"), IN.length("6"), "knot", Defect.Blocks.SHOW);
        Sample rails = BenchRails.sample();
        assertThat(new Sample(Jobs.board(rails.job(), "m1", b -> b.defects(List.of(knot))), rails.plan()).faults())
                .isEmpty();
    }

    @Test
    void a_blank_may_touch_a_defect() {
        Defect knot = new Defect(
                IN.length("22 1/2"),
                IN.length("22 5/8"),
                IN.length("0"),
                IN.length("2 1/4"),
                "knot",
                Defect.Blocks.ALL);
        Sample rails = BenchRails.sample();
        assertThat(new Sample(Jobs.board(rails.job(), "m1", b -> b.defects(List.of(knot))), rails.plan()).faults())
                .isEmpty();
    }

    @Test
    void nothing_at_all_is_a_plan_when_nothing_can_be_made() {
        Sample shelves = ShortShelves.sample();
        holds(shelves, d -> {
            d.removeBoard("oak-1")
                    .settings(settings -> List.of())
                    .removeTestBlank("T1")
                    .removeOffcut("O1")
                    .cost("0", "0", "0", "0", "0", "0", true)
                    .tally("0", "0", "0", "0", "0", "0")
                    .shortages(shortages -> List.of(
                            ShortShelves.shortage("shelf", 5, "3", List.of("ash"), "20", "598", "90"),
                            ShortShelves.shortage("tray", 2, "1", List.of(), "20", "468", "60"),
                            ShortShelves.shortage("post", 2, "2", List.of("oak"), "60", "600", "60")));
            for (int n = 14; n > 0; n--) d.removeStep(n);
        });
    }

    /** Every length of a plan as a file has it. */
    private record SixDecimals(Unit unit) {
        private Length of(Length length) {
            return Length.of(unit.number(length), unit);
        }

        private Plan of(Plan p) {
            return new Plan(
                    p.job(),
                    p.units(),
                    p.status(),
                    p.cost(),
                    p.tally(),
                    p.boards().stream()
                            .map(cut -> new CutBoard(
                                    cut.board(),
                                    cut.sections().stream().map(this::of).toList()))
                            .toList(),
                    p.settings().stream()
                            .map(s -> new Setting(s.id(), of(s.width()), s.test()))
                            .toList(),
                    p.testBlanks().stream()
                            .map(t -> new TestBlank(
                                    t.id(),
                                    t.from(),
                                    t.source(),
                                    of(t.width()),
                                    of(t.length()),
                                    of(t.thickness()),
                                    t.species(),
                                    t.proves()))
                            .toList(),
                    p.steps().stream()
                            .map(s -> new Step(
                                    s.n(),
                                    s.saw(),
                                    s.does(),
                                    s.setting(),
                                    s.stop().map(this::of),
                                    s.piece(),
                                    s.makes(),
                                    s.spare().map(this::of)))
                            .toList(),
                    p.offcuts().stream()
                            .map(o -> new Offcut(o.from(), of(o.piece())))
                            .toList(),
                    p.shortages(),
                    p.cautions());
        }

        private Section of(Section s) {
            return new Section(
                    s.id(),
                    of(s.from()),
                    of(s.to()),
                    s.referenceEdge(),
                    of(s.edgeLoss()),
                    s.strips().stream().map(this::of).toList());
        }

        private Strip of(Strip s) {
            return new Strip(
                    s.id(),
                    of(s.offset()),
                    of(s.width()),
                    s.setting(),
                    s.blanks().stream()
                            .map(b -> new Blank(b.id(), b.part(), of(b.from()), of(b.length())))
                            .toList());
        }

        private Board of(Board b) {
            return new Board(
                    b.id(),
                    b.species(),
                    of(b.thickness()),
                    of(b.millsTo()),
                    of(b.width()),
                    of(b.widthAtFarEnd()),
                    of(b.length()),
                    of(b.crook()),
                    b.straightEdges(),
                    of(b.edgeLoss()),
                    new EndTrim(of(b.endTrim().near()), of(b.endTrim().far())),
                    b.squareEnds(),
                    b.defects().stream()
                            .map(d -> new Defect(
                                    of(d.from()), of(d.to()), of(d.left()), of(d.right()), d.kind(), d.blocks()))
                            .toList(),
                    b.price(),
                    b.ripped(),
                    b.testOnly(),
                    b.history());
        }
    }
}
