package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.replay.Replay;
import ripwright.stock.Defect;
import ripwright.testing.JobBuilder;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

public class TidyingTest {
    private static final Part.Builder RAIL = part("rail", "10", "2").count(9).fitted(true);
    private static final Part.Builder SLAT = part("slat", "20", "2").count(9);
    private static final Part.Builder LATH = part("lath", "11", "2").count(9);

    @Test
    void free_wood_comes_to_lie_beside_the_fitted_blank() {
        JobBuilder shop = bench().stack(maple("m", "2", "40")).parts(RAIL, SLAT);
        Layout layout = cut(0, section("0", "40", strip("2", blank(0, "0"), blank(1, "10.125"))));

        assertThat(spares(planned(shop, layout))).containsExactly(Length.ZERO);
        assertThat(spares(planned(shop, tidied(shop, layout)))).containsExactly(in("9.875"));
    }

    @Test
    void fitted_blanks_share_what_would_be_waste_and_lie_without_gaps() {
        JobBuilder shop = bench().stack(maple("m", "2", "40")).parts(RAIL);
        Layout layout = cut(0, section("0", "40", strip("2", blank(0, "0"), blank(0, "10.125"), blank(0, "30"))));

        Layout tidied = tidied(shop, layout).get(0);
        assertThat(tidied.sections().get(0).strips().get(0).blanks())
                .containsExactly(blank(0, "0"), blank(0, "10.125"), blank(0, "20.25"));
        assertThat(spares(planned(shop, tidied))).containsExactly(in("9.75"), in("9.75"), in("9.75"));
    }

    @Test
    void an_offcut_is_not_cut_short_for_that() {
        JobBuilder shop = bench().stack(maple("m", "2", "40")).parts(RAIL);
        Layout layout = cut(0, section("0", "40", strip("2", blank(0, "0"), blank(0, "10.125"))));

        assertThat(tidied(shop, layout)).containsExactly(layout);
    }

    @Test
    void a_fitted_blank_moves_to_the_strip_that_has_wood_to_spare() {
        Part.Builder stub = part("stub", "9", "2").count(9);
        JobBuilder shop = bench().stack(maple("m", "4.125", "30.125")).parts(RAIL, SLAT, stub);
        Layout layout = cut(
                0,
                section(
                        "0",
                        "30.125",
                        strip("2", blank(1, "0"), blank(0, "20.125")),
                        strip("2", blank(2, "0"), blank(2, "9.125"))));

        assertThat(spares(planned(shop, layout))).containsExactly(Length.ZERO);
        assertThat(spares(planned(shop, tidied(shop, layout)))).containsExactly(in("11"));
    }

    @Test
    void blanks_of_one_group_come_side_by_side() {
        Part.Builder door = part("door", "20", "2").count(2).together("doors");
        JobBuilder shop = bench().stack(maple("m", "6.25", "40.125")).parts(door, SLAT);
        Layout layout = cut(
                0,
                section(
                        "0",
                        "40.125",
                        strip("2", blank(0, "0"), blank(1, "20.125")),
                        strip("2", blank(1, "0"), blank(1, "20.125")),
                        strip("2", blank(1, "0"), blank(0, "20.125"))));

        List<Layout.Strip> strips =
                tidied(shop, layout).get(0).sections().get(0).strips();
        assertThat(strips).contains(strip("2", blank(0, "0"), blank(0, "20.125")));
    }

    @Test
    void hidden_parts_go_into_wood_with_defects() {
        Defect knot = new Defect(in("0"), in("1"), in("3"), in("4"), "knot", Defect.Blocks.SHOW);
        Part.Builder front = part("front", "20", "2").count(2).face(Part.Face.SHOW);
        JobBuilder shop = bench().stack(
                        maple("clear", "4", "20"), maple("knotty", "4", "20").defects(List.of(knot)))
                .parts(front, SLAT);

        assertThat(tidied(
                        shop,
                        cut(0, section("0", "20", strip("2", blank(1, "0")))),
                        cut(1, section("0", "20", strip("2", blank(0, "0"))))))
                .containsExactly(
                        cut(0, section("0", "20", strip("2", blank(0, "0")))),
                        cut(1, section("0", "20", strip("2", blank(1, "0")))));
    }

    @Test
    void what_is_left_becomes_one_long_piece() {
        JobBuilder shop = bench().stack(maple("m", "4.125", "31.25")).parts(LATH, SLAT);
        Layout layout =
                cut(0, section("0", "31.25", strip("2", blank(1, "0")), strip("2", blank(0, "0"), blank(0, "11.125"))));

        assertThat(planned(shop, layout).offcuts()).isEmpty();
        Plan plan = planned(shop, tidied(shop, layout));
        assertThat(plan.offcuts()).hasSize(1);
        assertThat(plan.offcuts().get(0).piece().length()).isEqualTo(in("20.125"));
    }

    @Test
    void drawn_jobs_cost_no_more_and_some_spare_more() {
        Seeds.each(300, 2, RandomJobs::growing, job -> {
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            Optional<Plan> before = plan(job, layouts);
            Optional<Plan> after = plan(job, new Tidying(job, layouts).layouts());
            if (before.isEmpty() || after.isEmpty() || job.testRip().tries() > 0) return false;
            assertThat(Replay.faults(job, after.get())).isEmpty();
            assertThat(after.get().cost().net())
                    .isLessThanOrEqualTo(before.get().cost().net());
            return spare(after.get()) > spare(before.get());
        });
    }

    private static List<Layout> tidied(JobBuilder shop, Layout... layouts) {
        return new Tidying(shop.build(), List.of(layouts)).layouts();
    }

    private static List<Length> spares(Plan plan) {
        return plan.steps().stream()
                .map(Step::spare)
                .flatMap(Optional::stream)
                .sorted()
                .toList();
    }

    private static long spare(Plan plan) {
        return spares(plan).stream().mapToLong(Length::nanometers).sum();
    }

    private static Optional<Plan> plan(Job job, List<Layout> layouts) {
        try {
            return Optional.of(new Sequencer(job, layouts, Money.ZERO).plan());
        } catch (NoTestWoodException e) {
            return Optional.empty();
        }
    }
}
