package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.offcut;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Caution;
import ripwright.plan.Plan;
import ripwright.saw.Saw;
import ripwright.stock.Edge;

public class CautionsTest {
    @Test
    void the_first_defers_to_manual_rules_and_practice() {
        Plan plan = planned(
                bench().stack(maple("m", "8", "30")).parts(part("a", "30", "8")),
                cut(0, section("0", "30", strip("8", blank(0, "0")))));

        assertThat(plan.cautions())
                .extracting(Caution::text)
                .containsExactly(
                        "The saws' manuals, local rules and licensed practice go before this plan and all cautions"
                                + " below.",
                        "Every rip: flat face down, a straight edge to the fence, guard and splitter on, the strip that"
                                + " is wanted between fence and blade.",
                        "Every crosscut: at the miter gauge or the stop, never against the rip fence; hands 6 in from"
                                + " the blade; no cutoff between stop and blade; wait until the blade stands before"
                                + " clearing.");
        assertThat(plan.cautions())
                .allSatisfy(caution -> assertThat(caution.steps()).isEmpty());
    }

    @Test
    void nothing_to_cut_needs_no_caution() {
        assertThat(planned(bench().stack(maple("m", "8", "30")).parts(part("a", "30", "8")))
                        .cautions())
                .isEmpty();
    }

    @Test
    void a_push_stick_is_for_under_six_inches_and_a_push_block_for_under_two() {
        Plan plan = planned(
                bench().tries(1)
                        .stack(maple("m", "18", "30"))
                        .rack(offcut("k", "7", "12"))
                        .parts(
                                part("a", "30", "6"),
                                part("b", "30", "5.8"),
                                part("c", "30", "2"),
                                part("d", "30", "1.8")),
                cut(
                        0,
                        section(
                                "0",
                                "30",
                                strip("6", blank(0, "0")),
                                strip("5.8", blank(1, "0")),
                                strip("2", blank(2, "0")),
                                strip("1.8", blank(3, "0")))));

        // 3 and 4 test and rip 6 in, 5 and 6 rip 5.8, 7 and 8 rip 2, 9 and 10 rip 1.8
        assertThat(steps(plan, "Fence under 6 in: feed with a push stick.")).containsExactly(5, 6, 7, 8);
        assertThat(steps(plan, "Fence under 2 in: feed with a push block, no hand between fence and blade."))
                .containsExactly(9, 10);
    }

    @Test
    void in_millimeters_the_limits_are_those_of_sources_in_millimeters() {
        Plan plan = planned(
                bench().units(Unit.MILLIMETER)
                        .stack(maple("m", "5.95", "30")) // 151 mm
                        .parts(part("a", "30", "5.95")),
                cut(0, section("0", "30", strip("5.95", blank(0, "0")))));

        assertThat(plan.cautions()).extracting(Caution::text).noneMatch(text -> text.startsWith("Fence"));
        assertThat(plan.cautions()).extracting(Caution::text).anyMatch(text -> text.contains("hands 150 mm from"));
    }

    @Test
    void long_pieces_want_support_and_short_ones_a_block() {
        Plan plan = planned(
                bench().stack(maple("m", "8", "49")).parts(part("a", "37", "8"), part("b", "11", "8")),
                cut(
                        0,
                        section("0", "37", strip("8", blank(0, "0"))),
                        section("38", "49", Edge.LEFT, "0", strip("8", blank(1, "38")))));

        assertThat(steps(plan, "The piece is over 36 in long: have out-feed support in place."))
                .containsExactly(2);
        assertThat(steps(
                        plan,
                        "The piece is under 12 in long, short for a rip: use a push block or a sled, and only if the"
                                + " saw's manual allows it."))
                .containsExactly(4);
    }

    @Test
    void an_edge_that_is_not_straight_does_not_ride_the_fence_bare() {
        Plan plan = planned(
                bench().stack(maple("m", "8", "30").edges(0, in("0.25"), Length.ZERO))
                        .parts(part("a", "30", "7")),
                cut(0, section("0", "30", Edge.LEFT, "0.25", strip("7", blank(0, "0")))));

        assertThat(steps(
                        plan,
                        "The edge is not straight yet: carry the piece along the fence on a straight board or sled, not"
                                + " on its bare edge."))
                .containsExactly(2);
    }

    @Test
    void a_short_section_is_short_for_the_planer() {
        Plan plan = planned(
                bench().stack(maple("m", "8", "30").rough(in("1.25"), in("1"))).parts(part("a", "11", "8")),
                cut(0, section("0", "11", strip("8", blank(0, "0")))));

        assertThat(steps(
                        plan,
                        "The piece is under 12 in long, shorter than many planers take: see the planer's manual."))
                .containsExactly(2);
    }

    @Test
    void parts_smaller_than_the_saws_limits_are_cut_with_a_caution() {
        Saw saw = new Saw(
                in("0.125"),
                in("0.125"),
                Optional.empty(),
                Optional.empty(),
                Optional.of(in("1")),
                Optional.of(in("4")));
        Plan plan = planned(
                bench().saw(saw).stack(maple("m", "8", "30")).parts(part("a", "20", "7"), part("b", "3", "0.75")),
                cut(0, section("0", "30", strip("7", blank(0, "0")), strip("0.75", blank(1, "0")))));

        assertThat(steps(plan, "A strip narrower than the saw's limit of 1 in, as its part is"))
                .containsExactly(3);
        assertThat(steps(plan, "A blank shorter than the saw's limit of 4 in, as its part is"))
                .containsExactly(5);
        assertThat(steps(plan, "A blank under 6 in: clamp it or hold it down with a stick, hands stay clear."))
                .containsExactly(5);
    }

    @Test
    void a_part_longer_than_any_rip_is_made_from_no_board() {
        Saw saw = new Saw(
                in("0.125"), in("0.125"), Optional.of(in("40")), Optional.empty(), Optional.empty(), Optional.empty());
        Plan plan = planned(bench().saw(saw)
                .stack(maple("m", "8", "60"))
                .parts(part("post", "50", "4").sneakUp(in("0.125"))));

        assertThat(plan.cautions())
                .extracting(Caution::text)
                .containsExactly(
                        "No board makes \"post\" here: its blank of 50 1/8 in is longer than the longest rip of 40 in.");
    }

    /** The steps of the one caution that starts so. */
    private static List<Integer> steps(Plan plan, String text) {
        List<Caution> found = plan.cautions().stream()
                .filter(caution -> caution.text().startsWith(text))
                .toList();
        assertThat(found).as(text).hasSize(1);
        return found.get(0).steps();
    }
}
