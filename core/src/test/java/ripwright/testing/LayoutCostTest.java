package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Blank;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;

class LayoutCostTest {
    private static final Keep KEEP = new Keep(Length.inches("12"), Length.inches("2"));
    private static final Labor LABOR =
            new Labor(new BigDecimal("60"), new BigDecimal("6"), new BigDecimal("1.5"), BigDecimal.ONE);

    @Test
    void a_board_two_offcuts_two_settings_and_two_crosscuts_add_up_to_the_sum_by_hand() {
        Job job = job(JobBuilder.maple("a", "8", "48"), "0.5");
        List<Layout> layouts =
                List.of(layout(section("0", "24", strip("5", blank(0, "0")), strip("2", blank(1, "0")))));
        LayoutCost cost = new LayoutCost(job, layouts);
        // 8 x 48 / 144 = 2 2/3 board feet at 8. Beside the strips 3/4 in are left: waste.
        assertThat(cost.stock().value()).isEqualTo(BigFraction.of(64, 3));
        // 12 7/8 x 2 behind the short blank and 23 7/8 x 8 behind the section: 216.75 / 144 board feet at 4.
        assertThat(cost.salvage().value()).isEqualTo(BigFraction.of(21_675, 3_600));
        // 2 settings, 2 strips, a cut at 24 in and one behind the short blank: 12 + 3 + 2 minutes at 1 a minute.
        assertThat(cost.labor().value()).isEqualTo(BigFraction.of(17));
        assertThat(cost.net().value()).isEqualTo(BigFraction.of(323_125, 10_000));
    }

    @Test
    void tapered_leftovers_count_by_their_mean_width_less_bad_wood_as_far_as_it_is_there() {
        Board.Builder board = JobBuilder.maple("a", "10", "60")
                .width(Length.inches("10"), Length.inches("8"))
                .defects(List.of(bad("40", "44", "7", "8 1/2"), bad("41", "44", "7 1/2", "8 1/2")));
        Job job = job(board, "1");
        LayoutCost cost = new LayoutCost(job, List.of(layout(section("0", "30", strip("4")))));
        assertThat(cost.stock().value()).isEqualTo(BigFraction.of(60 * 9, 18));
        // The empty strip: 30 x 4. Beside it 5 7/8 to 4 7/8 over 30. Behind 30 1/8: 29 7/8 of 8 239/240 to 8, less 4 x
        // 1 1/2.
        BigFraction area = BigFraction.of(120)
                .add(BigFraction.of(16_125, 100))
                .add(BigFraction.of(974_881, 3_840))
                .subtract(BigFraction.of(6));
        assertThat(cost.salvage().value()).isEqualTo(area.divide(18));
    }

    @Test
    void bad_wood_beyond_a_slanted_edge_is_not_taken_off() {
        Board.Builder board = JobBuilder.maple("a", "10", "60")
                .width(Length.inches("10"), Length.inches("8"))
                .defects(List.of(bad("30 1/8", "60", "8", "8 7/8")));
        LayoutCost cost = new LayoutCost(job(board, "1"), List.of(layout(section("0", "30", strip("4")))));
        // The edge falls from 8 239/240 at 30 1/8 to 8 at 60 and is under 8 7/8 from 33 3/4 on: 3 5/8 of 7/8, 26 1/4 of
        // half of it.
        BigFraction covered = BigFraction.of(29, 8)
                .multiply(BigFraction.of(7, 8))
                .add(BigFraction.of(105, 4).multiply(BigFraction.of(7, 16)));
        BigFraction area = BigFraction.of(120)
                .add(BigFraction.of(16_125, 100))
                .add(BigFraction.of(974_881, 3_840))
                .subtract(covered);
        assertThat(cost.salvage().value()).isEqualTo(area.divide(18));
    }

    @Test
    void a_raw_end_is_neither_long_enough_nor_counted() {
        Board.Builder board = JobBuilder.maple("a", "6", "48").endTrim(Length.inches("2"), Length.inches("1"));
        Job job = job(board, "1");
        Layout layout = layout(section("14 1/8", "34 7/8", strip("5 3/4", blank(0, "14 1/8"))));
        // In front 14 - 2 = 12 long, kept; behind 13 - 1 = 12 long, kept; beside 1/8 after the kerf, waste.
        assertThat(new LayoutCost(job, List.of(layout)).salvage().value()).isEqualTo(BigFraction.of(2 * 12 * 6, 18));
        Layout later = layout(section("14", "35", strip("5 3/4", blank(0, "14"))));
        assertThat(new LayoutCost(job, List.of(later)).salvage().value()).isEqualTo(BigFraction.ZERO);
    }

    @Test
    void an_offcut_of_a_milled_section_is_thinner_than_a_full_width_one() {
        Board.Builder board = JobBuilder.maple("a", "8", "48").rough(Length.inches("2"), Length.inches("1 1/2"));
        LayoutCost cost =
                new LayoutCost(job(board, "1"), List.of(layout(section("0", "24", strip("4", blank(0, "0"))))));
        // Beside: 3 7/8 x 24 at 1 1/2 in thick; behind 23 7/8 x 8 at 2 in; both times 8 / 144.
        assertThat(cost.salvage().value())
                .isEqualTo(BigFraction.of(31 * 24 * 3, 16)
                        .add(BigFraction.of(191 * 2))
                        .divide(18));
        assertThat(cost.stock().value()).isEqualTo(BigFraction.of(8 * 48 * 2, 18));
    }

    @Test
    void a_rack_offcut_costs_its_salvage_value() {
        Job job = new JobBuilder("rack")
                .rack(List.of(
                        JobBuilder.maple("r", "6", "24").onRack(History.UNKNOWN).build()))
                .parts(JobBuilder.part("part", 1, "24", "6"))
                .offcuts(KEEP, new BigDecimal("0.25"))
                .build();
        LayoutCost cost = new LayoutCost(job, List.of(layout(section("0", "24", strip("6", blank(0, "0"))))));
        assertThat(cost.stock().value()).isEqualTo(BigFraction.of(2));
    }

    @Test
    void neighbors_one_kerf_apart_share_a_cut_and_others_do_not() {
        Job job = job(JobBuilder.maple("a", "5", "80"), "0");
        Layout shared = layout(
                section("0", "24", strip("5", blank(0, "0"))),
                section("24 1/8", "48 1/8", strip("5", blank(0, "24 1/8"))));
        Layout apart =
                layout(section("1", "25", strip("5", blank(0, "1"))), section("26", "50", strip("5", blank(0, "26"))));
        assertThat(new LayoutCost(job, List.of(shared)).labor().value()).isEqualTo(BigFraction.of(6 + 3 + 2));
        assertThat(new LayoutCost(job, List.of(apart)).labor().value()).isEqualTo(BigFraction.of(6 + 3 + 4));
    }

    @Test
    void straightening_is_a_rip_and_a_ripped_board_needs_neither_rip_nor_setting() {
        Job job = new JobBuilder("rips")
                .stack(
                        JobBuilder.maple("a", "6", "24").edges(0, Length.inches("1/4"), Length.ZERO),
                        JobBuilder.maple("b", "5", "24").ripped(true))
                .parts(JobBuilder.part("part", 2, "24", "5"))
                .labor(LABOR)
                .build();
        Section straightened = new Section(0, nm("24"), Edge.LEFT, nm("1/4"), List.of(strip("5", blank(0, "0"))));
        LayoutCost rough = new LayoutCost(job, List.of(new Layout(0, List.of(straightened))));
        LayoutCost ripped =
                new LayoutCost(job, List.of(new Layout(1, List.of(section("0", "24", strip("5", blank(0, "0")))))));
        assertThat(rough.labor().value()).isEqualTo(BigFraction.of(6 + 3));
        assertThat(ripped.labor().value()).isEqualTo(BigFraction.ZERO);
    }

    private static Job job(Board.Builder board, String salvage) {
        return new JobBuilder("cost")
                .stack(board)
                .parts(JobBuilder.part("long", 2, "24", "5"), JobBuilder.part("short", 1, "11", "2"))
                .offcuts(KEEP, new BigDecimal(salvage))
                .labor(LABOR)
                .build();
    }

    private static Defect bad(String from, String to, String left, String right) {
        return new Defect(
                Length.inches(from),
                Length.inches(to),
                Length.inches(left),
                Length.inches(right),
                "knot",
                Defect.Blocks.ALL);
    }

    private static Layout layout(Section... sections) {
        return new Layout(0, List.of(sections));
    }

    private static Section section(String from, String to, Strip... strips) {
        return new Section(nm(from), nm(to), Edge.LEFT, 0, List.of(strips));
    }

    private static Strip strip(String width, Blank... blanks) {
        return new Strip(nm(width), List.of(blanks));
    }

    private static Blank blank(int part, String from) {
        return new Blank(part, nm(from));
    }

    private static long nm(String inches) {
        return Length.inches(inches).nanometers();
    }
}
