package ripwright.internal.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.labor;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.internal.sequence.RailsAndSlats;
import ripwright.internal.sequence.Sequencer;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;

/** What small plans cost, reckoned by hand. */
public class PlanCostTest {
    @Test
    void a_board_is_paid_whole_and_its_offcuts_without_trim_are_worth_half() {
        // 6.5 x 61 / 144; 18.75 x 6.5 / 144 / 2 and 20 x 2 / 144 / 2
        Plan plan = planned(RailsAndSlats.shop(), RailsAndSlats.layout());

        assertThat(plan.cost().stock()).isEqualTo("2.75");
        assertThat(plan.cost().salvage()).isEqualTo("0.56");
        assertThat(plan.cost().labor()).isEqualTo("0.00");
        assertThat(plan.cost().net()).isEqualTo("2.19");
    }

    @Test
    void wood_is_tallied_by_true_thickness_and_adds_up() {
        Plan plan = planned(RailsAndSlats.shop(), RailsAndSlats.layout());

        assertThat(plan.tally().consumed()).isEqualTo("2.7535"); // 396.5 / 144
        assertThat(plan.tally().parts()).isEqualTo("1.0833"); // 156 / 144
        assertThat(plan.tally().offcuts()).isEqualTo("1.1693"); // (19.75 x 6.5 + 40) / 144
        assertThat(plan.tally().waste()).isEqualTo("0.5009");
        assertThat(plan.tally().yield()).isEqualTo("0.3934"); // 156 / 396.5
    }

    @Test
    void minutes_are_settings_rips_and_crosscuts_and_cost_nothing_without_a_rate() {
        // 2 settings x 6, 3 strips x 1.5, crosscuts: 2 for the section, 1 + 1 + 2 for blanks
        assertThat(planned(RailsAndSlats.shop(), RailsAndSlats.layout()).tally().minutes())
                .isEqualTo("22.50");
    }

    @Test
    void a_rate_turns_minutes_into_labor() {
        Plan plan = planned(RailsAndSlats.shop().labor(labor("40", "5", "2", "0.5")), RailsAndSlats.layout());

        assertThat(plan.tally().minutes()).isEqualTo("19.00"); // 10 + 6 + 3
        assertThat(plan.cost().labor()).isEqualTo("12.67"); // 19 x 40 / 60
        assertThat(plan.cost().net()).isEqualTo("14.86");
    }

    @Test
    void a_floor_is_rounded_down_and_the_gap_up() {
        Plan plan = new Sequencer(
                        RailsAndSlats.shop().build(),
                        List.of(RailsAndSlats.layout()),
                        Money.of(new BigDecimal("2.0999")))
                .plan();

        assertThat(plan.cost().bound()).isEqualTo("2.09");
        assertThat(plan.cost().gap()).isEqualTo("0.0457"); // 0.10 / 2.19 = 0.04566...
        assertThat(plan.cost().proven()).isFalse();
    }

    @Test
    void a_floor_over_the_rounded_cost_proves_it_and_is_not_printed_above() {
        Plan plan = new Sequencer(
                        RailsAndSlats.shop().build(), List.of(RailsAndSlats.layout()), Money.of(new BigDecimal("2.20")))
                .plan();

        assertThat(plan.cost().bound()).isEqualTo("2.19");
        assertThat(plan.cost().gap()).isEqualByComparingTo("0");
        assertThat(plan.cost().proven()).isTrue();
    }

    @Test
    void an_offcut_of_wood_without_any_price_has_none() {
        Board oak = Board.measured("k", "oak", in("1"), in("4"), in("40"))
                .onRack(History.UNKNOWN)
                .build();
        JobBuilder shop = bench().stack(maple("m-1", "1", "5")).rack(oak).parts(part("rail", "20", "4"));
        Plan plan = planned(shop, cut(1, section("0", "20", strip("4", blank(0, "0")))));

        assertThat(plan.offcuts())
                .singleElement()
                .satisfies(rest -> assertThat(rest.piece().price()).isEmpty());
        assertThat(plan.cost().net()).isEqualTo("0.00");
    }
}
