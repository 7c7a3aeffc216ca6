package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.replay.Replay;
import ripwright.testing.JobBuilder;

public class FirstStripTest {
    private static final Layout.Strip BARE = strip("2");

    @Test
    void the_one_without_blanks_goes_first() {
        assertThat(checked(section("0", "40", strip("2", blank(0, "0"))), section("41", "81", BARE)))
                .isEqualTo("S2");
    }

    @Test
    void but_not_when_it_is_much_shorter() {
        assertThat(checked(section("0", "40", strip("2", blank(0, "0"))), section("41", "70", BARE)))
                .isEqualTo("S1");
    }

    @Test
    void three_quarters_as_long_is_long_enough() {
        assertThat(checked(section("0", "40", strip("2", blank(0, "0"))), section("41", "71", BARE)))
                .isEqualTo("S2");
    }

    @Test
    void hidden_parts_are_lost_before_ones_that_show() {
        assertThat(checked(
                        section("0", "40", strip("2", blank(1, "0"))),
                        section("41", "75", strip("2", blank(0, "41"), blank(0, "55")))))
                .isEqualTo("S2");
    }

    @Test
    void a_part_that_must_match_others_is_lost_last() {
        assertThat(checked(
                        section("0", "40", strip("2", blank(2, "0"))),
                        section("41", "80", strip("2", blank(1, "41"), blank(1, "55")))))
                .isEqualTo("S2");
    }

    @Test
    void of_two_that_would_be_missed_alike_the_longer_goes_first() {
        assertThat(checked(
                        section("0", "35", strip("2", blank(0, "0"))), section("41", "80", strip("2", blank(0, "41")))))
                .isEqualTo("S2");
    }

    private static String checked(Layout.Section... sections) {
        Plan plan = planned(
                bench().stack(maple("m", "4", "81"))
                        .parts(
                                part("hidden", "10", "2").count(9),
                                part("show", "10", "2").face(Part.Face.SHOW).count(9),
                                part("door", "10", "2").face(Part.Face.SHOW).together("doors")),
                cut(0, sections));
        return plan.steps().stream()
                .filter(step -> step.does() == Step.Does.CHECK)
                .findFirst()
                .orElseThrow()
                .piece();
    }

    /**
     * Why the first strip is measured: an error of 1/64 in shows as 5/64 over five strips side by side, so five at 2 in that
     * come out wide no longer fit the board that five right ones fill.
     *
     * @see "Woodworkers Guild of America, Super-accurate table saw fence setting: five 2 in strips read 10 5/64."
     */
    @Test
    void k9_five_strips_a_sixty_fourth_wide_read_ten_and_five_sixty_fourths() {
        String wide = "2.015625";
        Layout five = cut(
                0,
                section(
                        "0",
                        "40",
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0"))));
        JobBuilder shop = bench().stack(maple("m", "10.578125", "40")) // 10 5/64 and four kerfs
                .parts(part("slat", "40", wide).count(5));
        Plan plan = planned(shop, five);

        assertThat(plan.offcuts()).isEmpty();
        assertThat(plan.tally().waste()).isEqualByComparingTo("0.1389"); // the kerfs alone: 40 x 1/2 / 144
        JobBuilder right = bench().stack(maple("m", "10.5", "40")) // 10 and four kerfs
                .parts(part("slat", "40", wide).count(5));
        Plan refused = new Sequencer(right.build(), List.of(five), Money.ZERO).plan();
        assertThat(Replay.faults(right.build(), refused)).isNotEmpty();
    }
}
