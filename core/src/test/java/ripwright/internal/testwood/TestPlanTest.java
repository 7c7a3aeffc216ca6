package ripwright.internal.testwood;

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
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;

/** Test blanks: where they come from, what they prove, and when they are there. */
public class TestPlanTest {
    /** Strips of 3, 2 1/2 and 2 7/16 in, the last two half a kerf apart, that fill a board 8 3/16 in wide. */
    private static JobBuilder three() {
        return bench().tries(1)
                .stack(maple("m-1", "8.1875", "30"))
                .parts(part("a", "30", "3"), part("b", "30", "2.5"), part("c", "30", "2.4375"));
    }

    private static Layout threeLayout() {
        return cut(
                0,
                section(
                        "0",
                        "30",
                        strip("3", blank(0, "0")),
                        strip("2.5", blank(1, "0")),
                        strip("2.4375", blank(2, "0"))));
    }

    @Test
    void a_blank_is_ripped_narrower_and_a_fresh_one_begun_where_settings_are_closer_than_a_kerf() {
        // The first must be 3 1/8 in wide, the second 2 9/16: only the walnut is left for it.
        Board walnut = Board.measured("w", "walnut", in("1"), in("3"), in("30"))
                .onRack(History.UNKNOWN)
                .build();
        Plan plan = planned(three().rack(offcut("k", "4", "14"), walnut), threeLayout());

        assertThat(blanks(plan)).containsExactly("T1 RACK k 4 in proves F1, F2", "T2 RACK w 3 in proves F3");
        assertThat(lines(plan))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1",
                        "2 breakdown k -> T1",
                        "3 breakdown w -> T2, w/A",
                        "4 test T1 at F1",
                        "5 rip m-1/1 at F1 -> S1",
                        "6 test T1 at F2",
                        "7 rip m-1/1 at F2 -> S2",
                        "8 test T2 at F3",
                        "9 rip m-1/1 at F3 -> S3",
                        "10 blank S1 at stop 30 -> B1",
                        "11 blank S2 at stop 30 -> B2",
                        "12 blank S3 at stop 30 -> B3");
        assertThat(plan.settings())
                .extracting(setting -> setting.test().orElseThrow().blank())
                .containsExactly("T1", "T1", "T2");
        assertThat(plan.offcuts()).singleElement().satisfies(rest -> {
            assertThat(rest.from()).isEqualTo("w");
            assertThat(rest.piece().length()).isEqualTo(in("17.875"));
        });
        // 30 x 8.1875 / 144 and half of 14 x 4 and 30 x 3; back comes half of 17.875 x 3
        assertThat(plan.cost().stock()).isEqualTo("2.21");
        assertThat(plan.cost().salvage()).isEqualTo("0.19");
        // 3 settings x 6, 3 strips and 3 tests x 1.5, 2 crosscuts: each offcut gives less than all of itself
        assertThat(plan.tally().minutes()).isEqualTo("29.00");
        assertThat(plan.boards())
                .extracting(board -> board.board() + " " + board.sections().size())
                .containsExactly("m-1 1", "k 0", "w 0");
    }

    @Test
    void the_cheapest_rack_offcuts_give_the_blanks() {
        // k gives both for half of 30 x 4 / 144 = 0.42; j and i for half of 12 x 8 / 144 = 0.33 each
        Plan plan = planned(
                three().rack(offcut("j", "8", "12"), offcut("i", "8", "12"), offcut("k", "4", "30")), threeLayout());

        assertThat(blanks(plan)).containsExactly("T1 RACK k 4 in proves F1, F2", "T2 RACK k 4 in proves F3");
    }

    @Test
    void the_same_offcut_stands_by_for_every_try() {
        Plan plan = planned(three().tries(2).rack(offcut("k", "4", "48.375")), threeLayout());

        assertThat(blanks(plan))
                .containsExactly(
                        "T1 RACK k 4 in proves F1, F2",
                        "T2 RACK k 4 in proves F1, F2",
                        "T3 RACK k 4 in proves F3",
                        "T4 RACK k 4 in proves F3");
        // four blanks and three kerfs use it up: the fourth costs no cut
        assertThat(plan.tally().minutes()).isEqualTo("30.00");
        assertThat(plan.offcuts()).isEmpty();
    }

    @Test
    void a_rack_offcut_comes_before_waste_though_it_costs() {
        // Beside the strips 3 7/8 in are wasted, as offcuts are kept from 4 in.
        Plan plan = planned(wasteful("20").rack(offcut("k", "4", "20")), wastefulLayout("20"));

        assertThat(blanks(plan)).containsExactly("T1 RACK k 4 in proves F1, F2");
    }

    @Test
    void wood_beside_the_last_strip_is_there_only_after_its_last_rip() {
        // so the widest setting takes fresh wood, and as that blank goes on to the next, nothing else is asked
        Plan plan = planned(wasteful("20"), wastefulLayout("20"));

        assertThat(blanks(plan)).containsExactly("T1 FRESH m-2 9 in proves F1, F2");
        assertThat(lines(plan)).contains("2 breakdown m-2 -> T1, m-2/A");
    }

    @Test
    void waste_is_used_where_it_is_there_in_time() {
        // m-1 gives a strip of 6 and leaves 3 3/4 in beside it. 3 and 2 15/16 are closer than a kerf.
        JobBuilder shop = bench().tries(1)
                .keep("20", "4")
                .stack(maple("m-1", "9.875", "30"), maple("m-2", "6.0625", "30"))
                .rack(offcut("k", "7", "12"))
                .parts(part("top", "30", "6"), part("a", "30", "3"), part("b", "30", "2.9375"));
        Plan plan = planned(
                shop,
                cut(0, section("0", "30", strip("6", blank(0, "0")))),
                cut(1, section("0", "30", strip("3", blank(1, "0")), strip("2.9375", blank(2, "0")))));

        assertThat(blanks(plan)).containsExactly("T1 RACK k 7 in proves F1, F2", "T2 WASTE m-1/1 3 3/4 in proves F3");
        assertThat(lines(plan))
                .containsSubsequence(
                        "5 rip m-1/1 at F1 -> S1", "8 trim m-1/1 -> T2", "9 test T2 at F3", "10 rip m-2/1 at F3 -> S3");
    }

    @Test
    void a_strips_end_is_trimmed_off_for_a_blank_once_the_strip_is_ripped() {
        // The strip of 4 in ends in 14 in of waste, as offcuts are kept from 20 in: 14 - 12 - 1/8 in stay.
        JobBuilder shop = bench().tries(1)
                .keep("20", "2")
                .stack(maple("m-1", "9.6875", "44.125"))
                .rack(offcut("k", "5", "12"))
                .parts(part("top", "30", "4"), part("a", "44.125", "2.75").fitted(true), part("b", "44.125", "2.6875"));
        Plan plan = planned(
                shop,
                cut(
                        0,
                        section(
                                "0",
                                "44.125",
                                strip("4", blank(0, "0")),
                                strip("2.75", blank(1, "0")),
                                strip("2.6875", blank(2, "0")))));

        assertThat(blanks(plan)).containsExactly("T1 RACK k 5 in proves F1, F2", "T2 WASTE S1 4 in proves F3");
        assertThat(lines(plan)).contains("7 trim S1 -> T2", "8 test T2 at F3");
        // 3 settings x 6, 6 rips x 1.5, the top's end and T2's
        assertThat(plan.tally().minutes()).isEqualTo("29.00");
    }

    @Test
    void a_blank_cut_off_a_strip_leaves_a_fitted_part_less_to_spare() {
        JobBuilder shop = bench().tries(1)
                .keep("20", "2")
                .stack(maple("m-1", "9.6875", "44.125"))
                .rack(offcut("k", "5", "12"))
                .parts(part("top", "30", "4").fitted(true), part("a", "44.125", "2.75"), part("b", "44.125", "2.6875"));
        Plan plan = planned(
                shop,
                cut(
                        0,
                        section(
                                "0",
                                "44.125",
                                strip("4", blank(0, "0")),
                                strip("2.75", blank(1, "0")),
                                strip("2.6875", blank(2, "0")))));

        assertThat(lines(plan)).endsWith("12 blank S1 -> B1, spare 2"); // 44 1/8 - 12 - 1/8 - 30
    }

    @Test
    void fresh_wood_is_the_cheapest_of_what_would_be_kept_and_what_would_be_opened() {
        // A blank from what is kept of m-1 loses 12 1/8 x 4 of it; opening m-2 costs all of m-2, which keeps nothing.
        JobBuilder shop = bench().tries(1)
                .stack(maple("m-1", "4", "60"), maple("m-2", "4", "20"))
                .parts(part("a", "20", "2"));
        Plan plan = planned(shop, cut(0, section("0", "20", strip("2", blank(0, "0")))));

        assertThat(blanks(plan)).containsExactly("T1 FRESH m-1 4 in proves F1");
        assertThat(plan.offcuts())
                .filteredOn(offcut -> offcut.from().equals("m-1"))
                .extracting(Offcut::piece)
                .extracting(Board::length)
                .containsExactly(in("27.75")); // 39 7/8 - 12 1/8
    }

    @Test
    void a_raw_end_is_left_behind() {
        Board raw = maple("k", "3", "40")
                .endTrim(in("2"), in("2"))
                .onRack(History.UNKNOWN)
                .build();
        Plan plan = planned(three().parts(part("d", "1", "1")).rack(raw, offcut("j", "4", "12")), threeLayout());

        assertThat(blanks(plan)).contains("T2 RACK k 3 in proves F3");
        assertThat(plan.offcuts())
                .filteredOn(offcut -> offcut.from().equals("k"))
                .singleElement()
                .satisfies(rest -> {
                    assertThat(rest.piece().length()).isEqualTo(in("25.875")); // 40 - 2 - 12 - 1/8
                    assertThat(rest.piece().endTrim().near()).isEqualTo(Length.ZERO);
                    assertThat(rest.piece().endTrim().far()).isEqualTo(in("2"));
                });
    }

    @Test
    void a_tapered_offcut_gives_a_blank_where_it_is_wide_enough() {
        // 4 in wide at one end and 2 at the other: 3 1/8 in are there up to 17 1/2 in from the wide end.
        Board tapered = maple("k", "2", "40")
                .width(in("2"), in("4"))
                .onRack(History.UNKNOWN)
                .build();
        JobBuilder shop =
                bench().tries(1).stack(maple("m-1", "3", "30")).rack(tapered).parts(part("a", "30", "3"));
        Plan plan = planned(shop, cut(0, section("0", "30", strip("3", blank(0, "0")))));

        assertThat(blanks(plan)).containsExactly("T1 RACK k 3.4 in proves F1"); // 4 - 2 x 12 / 40
        assertThat(plan.offcuts())
                .singleElement()
                .satisfies(rest -> assertThat(rest.piece().width()).isEqualTo(in("2")));
    }

    @Test
    void a_rough_blank_without_a_straight_edge_is_milled_and_straightened_first() {
        Board rough = maple("k", "4", "20")
                .rough(in("1.25"), in("1"))
                .edges(0, in("0.25"), Length.ZERO)
                .onRack(History.UNKNOWN)
                .build();
        JobBuilder shop =
                bench().tries(1).stack(maple("m-1", "3", "30")).rack(rough).parts(part("a", "30", "3"));
        Plan plan = planned(shop, cut(0, section("0", "30", strip("3", blank(0, "0")))));

        assertThat(lines(plan))
                .startsWith(
                        "1 breakdown m-1 -> m-1/1",
                        "2 breakdown k -> T1",
                        "3 mill T1",
                        "4 straighten T1",
                        "5 test T1 at F1");
        assertThat(plan.testBlanks()).singleElement().satisfies(blank -> {
            assertThat(blank.thickness()).isEqualTo(in("1"));
            assertThat(blank.width()).isEqualTo(in("4"));
        });
        // setting 6, rip and test 1.5 each, one crosscut; neither milling nor straightening a test blank counts
        assertThat(plan.tally().minutes()).isEqualTo("10.00");
    }

    @Test
    void a_blank_too_narrow_once_it_is_straightened_will_not_do() {
        Board rough = maple("k", "3.25", "20")
                .edges(0, in("0.25"), Length.ZERO)
                .onRack(History.UNKNOWN)
                .build();
        JobBuilder shop =
                bench().tries(1).stack(maple("m-1", "3", "30")).rack(rough).parts(part("a", "30", "3"));

        assertThatThrownBy(() -> planned(shop, cut(0, section("0", "30", strip("3", blank(0, "0"))))))
                .isInstanceOf(NoTestWoodException.class)
                .hasMessage("Nothing is left to prove the rip setting at 3 in on: it takes a test blank 12 in long, at"
                        + " least 3 1/8 in wide and 1 in thick that is there before.");
    }

    @Test
    void an_offcut_a_part_comes_from_is_no_rack_wood() {
        JobBuilder shop = bench().tries(1)
                .stack(maple("m-1", "1", "5"))
                .rack(offcut("k", "4", "40"))
                .parts(part("a", "20", "2"));
        Plan plan = planned(shop, cut(1, section("0", "20", strip("2", blank(0, "0")))));

        assertThat(blanks(plan)).containsExactly("T1 FRESH k 4 in proves F1");
    }

    @Test
    void wood_of_another_thickness_proves_nothing() {
        JobBuilder shop = bench().tries(1)
                .stack(maple("m-1", "4", "20"))
                .rack(maple("k", "0.75", "8", "40").onRack(History.UNKNOWN).build())
                .parts(part("a", "20", "2"));

        assertThatThrownBy(() -> planned(shop, cut(0, section("0", "20", strip("2", blank(0, "0"))))))
                .isInstanceOf(NoTestWoodException.class);
    }

    @Test
    void more_tries_than_all_wood_could_give_are_refused_at_once() {
        assertThatThrownBy(() -> planned(three().tries(2_000_000_000).rack(offcut("k", "4", "40")), threeLayout()))
                .isInstanceOf(NoTestWoodException.class);
    }

    /** Each of many offcuts serves the many tries of the first setting, and none is left for the last: found out soon. */
    @Test
    void wood_that_runs_out_late_is_found_out_soon() {
        JobBuilder shop = three().tries(20);
        for (int i = 0; i < 39; i++) shop.rack(offcut("k" + i, "4", "12"));

        assertThatThrownBy(() -> planned(shop, threeLayout()))
                .isInstanceOf(NoTestWoodException.class)
                .hasMessageContaining("at 2 7/16 in");
    }

    private static JobBuilder wasteful(String length) {
        return bench().tries(1)
                .keep("12", "4")
                .stack(maple("m-1", "9.125", length), maple("m-2", "9", "40"))
                .parts(part("a", length, "3"), part("b", length, "2"));
    }

    private static Layout wastefulLayout(String length) {
        return cut(0, section("0", length, strip("3", blank(0, "0")), strip("2", blank(1, "0"))));
    }

    private static List<String> blanks(Plan plan) {
        return plan.testBlanks().stream().map(TestPlanTest::write).toList();
    }

    private static String write(TestBlank blank) {
        return blank.id() + " " + blank.source() + " " + blank.from() + " " + Unit.INCH.exact(blank.width())
                + " in proves " + String.join(", ", blank.proves());
    }
}
