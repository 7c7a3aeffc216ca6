package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

class CpSatOptimumTest {
    private static final Feature[] ANY = {
        Feature.DEFECTS,
        Feature.TAPER,
        Feature.EDGES,
        Feature.CROOK,
        Feature.TRIMS,
        Feature.ROUGH,
        Feature.RIPPED,
        Feature.TOGETHER,
        Feature.SPECIES,
        Feature.RACK,
        Feature.SAW_LIMITS,
        Feature.SNEAK_UP,
        Feature.SHOW
    };
    private static final Feature[] CLEAR = {
        Feature.SALVAGE,
        Feature.LABOR,
        Feature.EDGES,
        Feature.TRIMS,
        Feature.ROUGH,
        Feature.RIPPED,
        Feature.TOGETHER,
        Feature.SPECIES,
        Feature.RACK,
        Feature.SAW_LIMITS,
        Feature.SNEAK_UP
    };
    private static final Feature[] CLEAR_AND_WORTHLESS = {
        Feature.LABOR, Feature.TAPER, Feature.EDGES, Feature.CROOK, Feature.TRIMS, Feature.RIPPED, Feature.SAW_LIMITS
    };

    private static final Saw NO_LIMITS = Saw.of(Length.inches("1/8"), Length.inches("1/8"));

    @Test
    void toys_cost_the_stock_of_the_best_of_every_way_to_cut_them() {
        Seeds.each(30, (random, size) -> ToyJobs.toy(random, Features.some(random, ANY), 5, 4), toy -> {
            assertBest(toy, CpSatOptimum.stock(toy), LayoutCost::stock);
        });
    }

    @Test
    void toys_cost_the_net_of_the_best_of_every_way_to_cut_them() {
        Seeds.each(30, (random, size) -> ToyJobs.toy(random, Features.some(random, CLEAR), 5, 3), toy -> {
            assertBest(toy, CpSatOptimum.net(toy), LayoutCost::net);
        });
    }

    @Test
    void toys_whose_offcuts_are_worthless_may_be_crooked_and_tapered_too() {
        Seeds.each(20, (random, size) -> ToyJobs.toy(random, Features.some(random, CLEAR_AND_WORTHLESS), 5, 3), toy -> {
            assertBest(toy, CpSatOptimum.net(toy), LayoutCost::net);
        });
    }

    private static void assertBest(Job toy, Optimum found, Function<LayoutCost, Money> price) {
        Optimum every = new EveryLayout(toy, ToyJobs.TICK, price).best();
        assertThat(found.complete()).isEqualTo(every.complete());
        assertThat(found.made()).isEqualTo(every.made());
        assertThat(found.cost()).isEqualTo(every.cost());
        assertCut(toy, found, price);
    }

    private static void assertCut(Job job, Optimum found, Function<LayoutCost, Money> price) {
        LayoutCheck check = new LayoutCheck(job, found.layouts());
        assertThat(check.faults()).isEmpty();
        assertThat(check.complete()).isEqualTo(found.complete());
        assertThat(price.apply(new LayoutCost(job, found.layouts()))).isEqualTo(found.cost());
    }

    @Test
    void constructed_jobs_cost_what_they_were_built_to() {
        Seeds.each(30, (random, size) -> SmallJobs.constructed(random, Features.some(random, ANY)), drawn -> {
            Optimum found = CpSatOptimum.stock(drawn.job());
            assertThat(found.complete()).isTrue();
            assertThat(found.cost()).isEqualTo(drawn.best());
            assertCut(drawn.job(), found, LayoutCost::stock);
        });
    }

    @Test
    void random_jobs_are_cut_as_told_and_never_cheaper_by_hand() {
        Seeds.each(30, 10, (random, size) -> SmallJobs.random(random, Features.some(random, ANY)), job -> {
            Optimum found = CpSatOptimum.stock(job);
            assertCut(job, found, LayoutCost::stock);
            List<Layout> byHand = FirstFitDecreasing.plan(job);
            if (!new LayoutCheck(job, byHand).complete()) return false;
            assertThat(found.complete()).isTrue();
            assertThat(new LayoutCost(job, byHand).stock()).isGreaterThanOrEqualTo(found.cost());
            return true;
        });
    }

    @Test
    void a_crooked_board_gives_in_two_sections_what_it_does_not_give_in_one() {
        Board.Builder board = JobBuilder.maple("a", "8", "60").edges(0, Length.inches("1/8"), Length.inches("1"));
        Optimum best = CpSatOptimum.stock(job(board, JobBuilder.part("panel", 2, "29", "7")));
        // 8 - 1/8 less (58 1/8 / 60) squared is 6.94; less (29 / 60) squared it is 7.64.
        assertThat(best.complete()).isTrue();
        assertThat(best.layouts().get(0).sections()).hasSize(2);
    }

    @Test
    void more_of_an_edge_is_given_up_to_pass_bad_wood() {
        Board.Builder board = JobBuilder.maple("a", "8", "30")
                .defects(List.of(knot("10", "20", "0", "1"), knot("12", "18", "7", "8")));
        Optimum best = CpSatOptimum.stock(job(board, JobBuilder.part("rail", 1, "30", "6")));
        assertThat(best.complete()).isTrue();
        assertThat(best.layouts().get(0).sections().get(0).edgeLoss()).isEqualTo(25_400_000);
    }

    @Test
    void an_empty_strip_no_narrower_than_the_next_passes_bad_wood() {
        Defect band = knot("0", "30", "4", "5 1/2");
        Part.Builder[] parts = {JobBuilder.part("wide", 1, "30", "4"), JobBuilder.part("slat", 1, "30", "2")};
        // 4, a kerf, 2 empty, a kerf, 2 come to 8 1/4.
        Optimum fits =
                CpSatOptimum.stock(job(JobBuilder.maple("a", "8 1/4", "30").defects(List.of(band)), parts));
        assertThat(fits.complete()).isTrue();
        assertThat(fits.layouts().get(0).sections().get(0).strips()).hasSize(3);
        Optimum not =
                CpSatOptimum.stock(job(JobBuilder.maple("a", "8 1/8", "30").defects(List.of(band)), parts));
        assertThat(not.complete()).isFalse();
        assertThat(not.made().value()).isEqualTo(BigFraction.of(30 * 4 * 3, 4 * 144));
    }

    @Test
    void empty_strips_between_equal_ones_are_as_wide_as_those() {
        Defect band = knot("0", "30", "2", "5");
        Part.Builder slats = JobBuilder.part("slat", 2, "30", "2");
        // Four strips of 2 and three kerfs come to 8 3/8, though the second slat would be clear of the band at 5.
        assertMade(JobBuilder.maple("a", "8 3/8", "30").defects(List.of(band)), NO_LIMITS, true, slats);
        assertMade(JobBuilder.maple("a", "8 1/4", "30").defects(List.of(band)), NO_LIMITS, false, slats);
    }

    @Test
    void an_empty_strip_is_no_narrower_than_the_saw_rips() {
        Defect band = knot("0", "30", "4", "5 1/2");
        Saw saw = limits(Optional.empty(), Optional.empty(), Optional.of("2 1/2"), Optional.empty());
        Part.Builder[] parts = {JobBuilder.part("wide", 1, "30", "4"), JobBuilder.part("slat", 1, "30", "2")};
        assertMade(JobBuilder.maple("a", "8 3/4", "30").defects(List.of(band)), saw, true, parts);
        assertMade(JobBuilder.maple("a", "8 5/8", "30").defects(List.of(band)), saw, false, parts);
    }

    @Test
    void a_section_rides_on_its_right_edge_where_the_wide_strip_must_lie_there() {
        Defect stain = new Defect(
                Length.ZERO, Length.inches("30"), Length.ZERO, Length.inches("2"), "stain", Defect.Blocks.SHOW);
        Optimum best = CpSatOptimum.stock(job(
                JobBuilder.maple("a", "6 1/8", "30").defects(List.of(stain)),
                JobBuilder.part("door", 1, "30", "4").face(Part.Face.SHOW),
                JobBuilder.part("slat", 1, "30", "2")));
        assertThat(best.complete()).isTrue();
        assertThat(best.layouts().get(0).sections().get(0).referenceEdge()).isEqualTo(Edge.RIGHT);
    }

    @Test
    void a_blank_too_short_to_crosscut_does_not_lie_before_another() {
        Board.Builder board = JobBuilder.maple("a", "3", "36").defects(List.of(knot("10", "12", "0", "3")));
        Part.Builder[] parts = {JobBuilder.part("block", 1, "9", "3"), JobBuilder.part("rail", 1, "24", "3")};
        // In two sections of 12 and more the rail has no room behind the kerf.
        Saw long12 = limits(Optional.empty(), Optional.of("12"), Optional.empty(), Optional.empty());
        Saw short10 = limits(Optional.empty(), Optional.of("12"), Optional.empty(), Optional.of("10"));
        assertMade(board, long12, true, parts);
        assertMade(board, short10, false, parts);
    }

    @Test
    void a_section_is_as_long_as_the_saw_allows_and_no_longer() {
        Board.Builder board = JobBuilder.maple("a", "4", "40");
        Part.Builder part = JobBuilder.part("rail", 1, "20", "4");
        assertMade(board, limits(Optional.of("20"), Optional.empty(), Optional.empty(), Optional.empty()), true, part);
        assertMade(
                board,
                limits(Optional.of("19 7/8"), Optional.empty(), Optional.empty(), Optional.empty()),
                false,
                part);
        assertMade(board, limits(Optional.empty(), Optional.of("40"), Optional.empty(), Optional.empty()), true, part);
        assertMade(
                board,
                limits(Optional.empty(), Optional.of("40 1/8"), Optional.empty(), Optional.empty()),
                false,
                part);
    }

    private static void assertMade(Board.Builder board, Saw saw, boolean complete, Part.Builder... parts) {
        Job job = new JobBuilder("job")
                .stack(board)
                .saw(saw)
                .testRip(new TestRip(Length.inches("60"), 0))
                .parts(parts)
                .build();
        Optimum best = CpSatOptimum.stock(job);
        assertThat(best.complete()).isEqualTo(complete);
        assertCut(job, best, LayoutCost::stock);
    }

    private static Saw limits(
            Optional<String> longestRip,
            Optional<String> shortestRip,
            Optional<String> narrowestRip,
            Optional<String> shortestCrosscut) {
        return new Saw(
                NO_LIMITS.ripKerf(),
                NO_LIMITS.crosscutKerf(),
                longestRip.map(Length::inches),
                shortestRip.map(Length::inches),
                narrowestRip.map(Length::inches),
                shortestCrosscut.map(Length::inches));
    }

    @Test
    void a_short_job_makes_the_most_finished_wood() {
        Optimum best = CpSatOptimum.stock(job(
                JobBuilder.maple("a", "5", "30"),
                JobBuilder.part("long", 1, "30", "4"),
                JobBuilder.part("short", 2, "14", "5")));
        assertThat(best.complete()).isFalse();
        assertThat(best.made().value()).isEqualTo(BigFraction.of(2 * 14 * 5 * 3, 4 * 144));
    }

    @Test
    void a_group_is_bought_one_board_where_two_would_be_cheaper() {
        Part.Builder doors = JobBuilder.part("door", 2, "30", "5");
        JobBuilder job = new JobBuilder("doors")
                .stack(
                        JobBuilder.maple("a", "5", "30"),
                        JobBuilder.maple("b", "5", "30"),
                        JobBuilder.maple("c", "10 1/8", "30"));
        assertThat(CpSatOptimum.stock(job.parts(doors).build()).cost().value()).isEqualTo(BigFraction.of(300, 18));
        Job grouped = new JobBuilder("doors")
                .stack(job.build().stack())
                .parts(doors.together("doors"))
                .build();
        assertThat(CpSatOptimum.stock(grouped).cost().value()).isEqualTo(BigFraction.of(2_430, 144));
    }

    @Test
    void a_longer_board_is_worth_its_price_where_its_rest_is_kept() {
        JobBuilder job = new JobBuilder("offcut")
                .stack(JobBuilder.maple("a", "4", "40"), JobBuilder.maple("b", "4", "30"))
                .parts(JobBuilder.part("rail", 1, "20", "4"))
                .offcuts(new Keep(Length.inches("12"), Length.inches("2")), BigDecimal.ONE);
        assertThat(CpSatOptimum.stock(job.build()).layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.board()).isEqualTo(1));
        // 40 x 4 less 19 7/8 x 4, at 8 / 144
        Optimum net = CpSatOptimum.net(job.build());
        assertThat(net.layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.board()).isEqualTo(0));
        assertThat(net.cost().value()).isEqualTo(BigFraction.of(161, 36));
    }

    @Test
    void waste_is_left_at_the_end_that_must_be_trimmed_anyway() {
        Job job = new JobBuilder("trim")
                .stack(JobBuilder.maple("a", "4", "40").endTrim(Length.inches("1"), Length.ZERO))
                .parts(JobBuilder.part("rail", 1, "20", "4"))
                .labor(new Labor(new BigDecimal("60"), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ONE))
                .build();
        assertThat(CpSatOptimum.net(job).cost().value())
                .isEqualTo(BigFraction.of(160, 18).add(1)); // one crosscut
    }

    @Test
    void a_full_width_offcut_of_rough_stock_is_worth_its_raw_thickness() {
        Board.Builder board = JobBuilder.maple("a", "4", "40").rough(Length.inches("2"), Length.inches("1 1/2"));
        Job job = new JobBuilder("rough")
                .stack(board)
                .parts(List.of(Part.of("rail", Length.inches("20"), Length.inches("4"), Length.inches("1 1/2"))
                        .build()))
                .offcuts(new Keep(Length.inches("12"), Length.inches("2")), BigDecimal.ONE)
                .build();
        assertThat(CpSatOptimum.net(job).cost().value()).isEqualTo(BigFraction.of(161, 18)); // 20 1/8 x 4 x 2
    }

    @Test
    void dearer_stock_that_is_ripped_already_saves_a_setting() {
        JobBuilder job = new JobBuilder("ripped")
                .stack(
                        JobBuilder.maple("a", "3", "30"),
                        JobBuilder.maple("b", "3", "30").ripped(true).price(new BigDecimal("9")))
                .parts(JobBuilder.part("slat", 1, "30", "3"))
                .labor(new Labor(new BigDecimal("60"), new BigDecimal("6"), BigDecimal.ONE, BigDecimal.ONE));
        assertThat(CpSatOptimum.stock(job.build()).layouts().get(0).board()).isEqualTo(0);
        assertThat(CpSatOptimum.net(job.build()).layouts().get(0).board()).isEqualTo(1);
        assertThat(CpSatOptimum.net(job.build()).cost().value()).isEqualTo(BigFraction.of(90 * 9, 144));
    }

    @Test
    void what_is_beyond_the_model_is_refused() {
        Part.Builder part = JobBuilder.part("part", 1, "10", "2");
        Job fine = job(JobBuilder.maple("a", "3.0001", "30"), part);
        assertThatThrownBy(() -> CpSatOptimum.stock(fine)).hasMessage("A tick of 2540 nm is too fine for a.");
        Length crook = Length.inches("1/2");
        Board.Builder bowed = JobBuilder.maple("a", "3", "30").edges(0, Length.ZERO, crook);
        Job both = job(bowed.width(Length.inches("3"), Length.inches("4")), part);
        assertThatThrownBy(() -> CpSatOptimum.stock(both))
                .hasMessage("Taper and crook together are not on the grid: a.");
        Job knotty = job(JobBuilder.maple("a", "3", "30").defects(List.of(knot("1", "2", "1", "2"))), part);
        assertThatThrownBy(() -> CpSatOptimum.net(knotty)).hasMessage("Defects matter: a.");
        Job worth = new JobBuilder("worth")
                .stack(JobBuilder.maple("a", "3", "30").edges(1, Length.ZERO, crook))
                .parts(part)
                .offcuts(new Keep(Length.inches("12"), Length.inches("2")), BigDecimal.ONE)
                .build();
        assertThatThrownBy(() -> CpSatOptimum.net(worth)).hasMessage("Taper or crook matters: a.");
    }

    private static Job job(Board.Builder board, Part.Builder... parts) {
        return new JobBuilder("job").stack(board).parts(parts).build();
    }

    private static Defect knot(String from, String to, String left, String right) {
        return new Defect(
                Length.inches(from),
                Length.inches(to),
                Length.inches(left),
                Length.inches(right),
                "knot",
                Defect.Blocks.ALL);
    }
}
