package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.lines;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.offcut;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Unit;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Setting;
import ripwright.stock.Board;
import ripwright.testing.JobBuilder;

/** Small plans, checked by hand. */
public class SequencerTest {
    @Test
    void a_board_is_broken_down_ripped_widest_first_and_crosscut_longest_first() {
        assertThat(lines(planned(RailsAndSlats.shop(), RailsAndSlats.layout())))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1, m-1/A",
                        "2 rip m-1/1 at F1 -> S1",
                        "3 check S1 at F1",
                        "4 rip m-1/1 at F1 -> S2",
                        "5 rip m-1/1 at F2 -> S3",
                        "6 blank S1 at stop 20 -> B1, B2",
                        "7 blank S2 at stop 20 -> B3, m-1/B",
                        "8 blank S3 at stop 12 -> B4, B5");
    }

    @Test
    void offcuts_are_listed_as_the_rack_will_have_them() {
        List<Offcut> offcuts =
                planned(RailsAndSlats.shop(), RailsAndSlats.layout()).offcuts();

        assertThat(offcuts).extracting(Offcut::from).containsExactly("m-1", "S2");
        Board rest = offcuts.get(0).piece();
        assertThat(rest.length()).isEqualTo(in("19.75"));
        assertThat(rest.width()).isEqualTo(in("6.5"));
        assertThat(rest.endTrim().near()).isEqualTo(Length.ZERO);
        assertThat(rest.endTrim().far()).isEqualTo(in("1"));
        assertThat(rest.price()).hasValueSatisfying(price -> assertThat(price).isEqualByComparingTo("1"));
        assertThat(rest.history()).hasValueSatisfying(history -> {
            assertThat(history.mark()).contains("m-1/A");
            assertThat(history.job()).contains("bench");
            assertThat(history.board()).contains("m-1");
            assertThat(history.since()).isEmpty();
        });
        assertThat(offcuts.get(1).piece().length()).isEqualTo(in("20"));
        assertThat(offcuts.get(1).piece().endTrim().near()).isEqualTo(Length.ZERO);
    }

    @Test
    void ids_of_boards_are_given_to_nothing_else() {
        Plan plan = planned(
                RailsAndSlats.shop().stack(maple("m-1/1", "3", "14"), maple("m-1/A", "3", "14")),
                RailsAndSlats.layout());

        assertThat(plan.boards().get(0).sections())
                .extracting(section -> section.id())
                .containsExactly("m-1/2");
        assertThat(plan.offcuts()).extracting(Offcut::id).containsExactly("m-1/B", "m-1/C");
    }

    @Test
    void where_boards_are_named_like_strips_strips_are_named_otherwise() {
        Plan plan = planned(
                RailsAndSlats.shop().stack(maple("s12", "3", "14"), maple("B2", "3", "14"), maple("F1", "3", "14")),
                RailsAndSlats.layout());

        assertThat(lines(plan))
                .startsWith("1 breakdown m-1 -> m-1/1, m-1/A", "2 rip m-1/1 at FENCE1 -> ST1")
                .contains("6 blank ST1 at stop 20 -> BL1, BL2");
    }

    @Test
    void one_of_several_like_boards_leaves_offcuts_the_rack_may_take_in() {
        JobBuilder shop = bench().stack(maple("m#2", "2", "40")).parts(part("rail", "20", "2"));
        Plan plan = planned(shop, cut(0, section("0", "40", strip("2", blank(0, "0")))));

        assertThat(plan.offcuts()).extracting(Offcut::id).containsExactly("m.2/A");
        assertThat(plan.boards()).extracting(CutBoard::board).containsExactly("m#2");
    }

    @Test
    void a_name_too_long_to_chalk_gets_a_short_mark() {
        String id = "x".repeat(300);
        JobBuilder shop = bench().stack(maple(id, "2", "40")).parts(part("rail", "20", "2"));
        Board piece = planned(shop, cut(0, section("0", "40", strip("2", blank(0, "0")))))
                .offcuts()
                .get(0)
                .piece();

        assertThat(piece.id()).isEqualTo("x".repeat(280) + "/A");
        assertThat(piece.history())
                .hasValueSatisfying(history -> assertThat(history.mark()).contains("K1"));
    }

    @Test
    void a_strip_without_blanks_that_goes_to_the_rack_is_set_aside_last() {
        JobBuilder shop = bench().stack(maple("m-1", "4.125", "40")).parts(part("rail", "20", "2"));
        Plan plan = planned(shop, cut(0, section("0", "40", strip("2", blank(0, "0")), strip("2"))));

        assertThat(lines(plan)).endsWith("5 blank S1 at stop 20 -> B1, m-1/A", "6 trim S2 -> m-1/B");
        assertThat(plan.offcuts()).extracting(Offcut::from).containsExactly("S1", "S2");
    }

    @Test
    void parts_that_are_not_made_are_short() {
        Plan plan = planned(RailsAndSlats.shop().parts(part("top", "50", "12")), RailsAndSlats.layout());

        assertThat(plan.status()).isEqualTo(Plan.Status.SHORT);
        assertThat(plan.shortages()).singleElement().satisfies(one -> {
            assertThat(one.part()).isEqualTo("top");
            assertThat(one.count()).isEqualTo(1);
        });
    }

    @Test
    void nothing_cut_is_a_plan_too() {
        Plan plan = planned(RailsAndSlats.shop());

        assertThat(plan.status()).isEqualTo(Plan.Status.SHORT);
        assertThat(plan.steps()).isEmpty();
        assertThat(plan.cost().net()).isEqualTo("0.00");
        assertThat(plan.cost().gap()).isEqualByComparingTo("0");
        assertThat(plan.cost().proven()).isTrue();
        assertThat(plan.tally().yield()).isEqualByComparingTo("0");
    }

    @Test
    void layouts_in_any_order_give_the_same_plan() {
        Job job = bench().tries(1)
                .stack(maple("a", "4", "40"), maple("b", "4", "40"))
                .rack(offcut("k", "4", "20"))
                .parts(part("rail", "20", "2").count(2))
                .build();
        Layout a = cut(0, section("0", "40", strip("2", blank(0, "0"))));
        Layout b = cut(1, section("0", "40", strip("2", blank(0, "0"))));

        assertThat(new Sequencer(job, List.of(b, a), Money.ZERO).plan())
                .isEqualTo(new Sequencer(job, List.of(a, b), Money.ZERO).plan());
    }

    @Test
    void a_board_cut_twice_is_refused() {
        Sequencer twice = new Sequencer(
                RailsAndSlats.shop().build(), List.of(RailsAndSlats.layout(), RailsAndSlats.layout()), Money.ZERO);

        assertThatThrownBy(twice::plan)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The board in place 0 is cut twice.");
    }

    /** Shelf 0.740 and support 0.750 make a flush rail of 1.490 in, no 1 1/2: an identity, so measure both. */
    @Test
    void k12_a_flush_rail_has_a_setting_of_its_own() {
        String flush = Unit.INCH.exact(in("0.740").plus(in("0.750")));
        Plan plan = planned(
                bench().stack(maple("m", "6", "40")).parts(part("stile", "40", "1.5"), part("rail", "40", flush)),
                cut(0, section("0", "40", strip("1.5", blank(0, "0")), strip("1.49", blank(1, "0")))));

        assertThat(plan.settings()).extracting(Setting::width).containsExactly(in("1.5"), in("1.49"));
    }
}
