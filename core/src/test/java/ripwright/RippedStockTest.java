package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.testing.CpSatOptimum;
import ripwright.testing.FewestStrips;
import ripwright.testing.JobBuilder;
import ripwright.testing.Optimum;
import ripwright.testing.RippedJobs;
import ripwright.testing.Seeds;

/** Work in one dimension, through the same door as all other. */
class RippedStockTest {
    private static final Options COUNTED = Options.defaults().withMostRecuts(1_000);

    /** Sizes that nothing measures are counted in coarse ticks: what fits exactly must fit in them too. */
    @Test
    void a_ripped_board_of_exactly_the_parts_width_and_length_is_cut_however_odd_the_other_sizes() {
        Length width = Length.millimeters("69.85");
        Length length = Length.millimeters("1124.1327");
        Board.Builder ripped = Board.measured("ripped", "maple", JobBuilder.THICKNESS, width, length)
                .ripped(true);
        Job job = new JobBuilder("odd")
                .kerfs("0", "1/8")
                .stack(ripped, JobBuilder.maple("other", "8.90039", "30.00001"))
                .parts(
                        Part.of("rail", length, width, JobBuilder.THICKNESS),
                        JobBuilder.part("panel", 1, "18.487", "3.140649"))
                .build();
        assertThat(Planner.plan(job, COUNTED).status()).isEqualTo(Plan.Status.COMPLETE);
    }

    /** Five blanks and four kerfs make up the board to the nanometer; in ticks they come to more than it has. */
    @Test
    void blanks_that_fill_a_board_to_the_nanometer_are_all_cut_from_it() {
        Length width = Length.inches("2");
        Length kerf = Length.inches("1/8");
        long length = 0;
        List<Part> parts = new ArrayList<>();
        for (String each : List.of("211.3337", "300.0001", "413.7779", "377.7771", "290.1113")) {
            Length blank = Length.millimeters(each);
            length += blank.nanometers() + (length == 0 ? 0 : kerf.nanometers());
            parts.add(
                    Part.of("part " + each, blank, width, JobBuilder.THICKNESS).build());
        }
        Board.Builder board = Board.measured("full", "maple", JobBuilder.THICKNESS, width, new Length(length));
        for (boolean ripped : new boolean[] {true, false}) {
            Job job = new JobBuilder("full")
                    .stack(List.of(board.ripped(ripped).build()))
                    .parts(parts)
                    .build();
            assertThat(Planner.plan(job, COUNTED).status()).isEqualTo(Plan.Status.COMPLETE);
        }
    }

    @Test
    void small_work_is_planned_at_the_least_cost_and_proven() {
        Seeds.each(120, 75, (random, size) -> {
            Job job = RippedJobs.random(random, 1 + random.nextInt(Math.min(9, 1 + size)), 1 + random.nextInt(5));
            Optional<Money> least = FewestStrips.cost(job);
            Plan plan = Planner.plan(job, COUNTED);
            assertThat(plan.status() == Plan.Status.COMPLETE).isEqualTo(least.isPresent());
            if (least.isEmpty()) return false;
            assertThat(plan.cost().net()).isEqualTo(least.get().rounded());
            assertThat(plan.cost().bound()).isEqualTo(least.get().rounded());
            return true;
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    void beside_other_boards_and_with_defects_the_stock_cost_is_the_optimum(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Job strips = RippedJobs.random(random, 3 + random.nextInt(4), 2, Length.inches("1/2"));
        Board knotty = strips.stack().get(0);
        Defect knot = new Defect(
                Length.inches("10"), Length.inches("11"), Length.ZERO, Length.inches("1"), "knot", Defect.Blocks.ALL);
        Job job = new JobBuilder("mixed")
                .price("ash", new BigDecimal("6.50"))
                .stack(List.of(
                        knotty.toBuilder().defects(List.of(knot)).build(),
                        strips.stack().get(1)))
                .stack(JobBuilder.maple("wide", "4 1/2", "30"))
                .parts(strips.parts())
                .build();
        Optimum optimum = CpSatOptimum.stock(job);
        Plan plan = Planner.plan(job, COUNTED);
        assertThat(plan.tally().parts()).isEqualTo(optimum.made().rounded());
        assertThat(plan.cost().stock()).isEqualTo(optimum.cost().rounded());
        if (optimum.complete())
            assertThat(plan.cost().bound()).isLessThanOrEqualTo(optimum.cost().rounded());
    }

    /**
     * E. Falkenauer, Journal of Heuristics 2 (1996), t60_00 and u120_08; A. Scholl, R. Klein, C. Juergens, BISON, Computers and
     * Operations Research 24 (1997), N1W1B1R0; G. Waescher, T. Gau, OR Spektrum 18 (1996), TEST0097. The best numbers of
     * stock lengths: BPPLIB, M. Delorme, M. Iori, S. Martello, Optimization Letters 12 (2018).
     */
    @ParameterizedTest
    @CsvSource({
        "t60_00, 1000, 20, 495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366x3 363 361 357 "
                + "355 351 350x2 347 320 315 307 303 299 298x2 292 288 287 283 275x2 274 273x2 272x2 271 269x2 268 263 "
                + "262 261 259 258 255 254 252x3 251",
        "u120_08, 150, 50, 100x3 98x3 97x3 96 95x2 94x2 92x2 91x4 89x3 88x2 87 86 85x3 84 82x2 81x2 80 79x2 "
                + "77 76 75x2 74 73 72 71 70x2 69x3 67x3 65x2 64x2 63 62 61 60x2 59 58x4 57x4 54x2 53 52x3 51x2 49x3 48 "
                + "47 46 45x3 44 43 42 40x2 39x2 38 37x2 36 35 34x2 33x2 32 30 29x3 27 26x2 25 23x2 22 21 20x2",
        "N1W1B1R0, 1000, 18, 395 394x2 391 390 389 388 384 383 382 380 379 376 371 368 365 360x2 354 350 "
                + "346x2 344 342 340 335x2 333 330x2 328 327 317 316 311 310x2 306 300x2 297 296 295 294x2 286 285 278 "
                + "275x2",
        "TEST0097, 10000, 12, 2487x2 2439 2431x2 2419x3 2400x2 2333 2303x2 2232x2 2192 2176x2 2007x2 1817x3 "
                + "1704 1612x3 1557x3 1457x2 1454x3 1304x3 1255x2 1246 1219x3 1148x2 1142 1066x2 1010x5 987x2 969x3 "
                + "948x5 923x3 685x2 679x2 663x3 598 589 548x4 537x3 513x5 385x4 303x2 248x2 106x4 2x19"
    })
    void a_published_instance_takes_the_fewest_stock_lengths_and_is_proven(
            String name, long stock, int fewest, String items) {
        List<long[]> lengths = new ArrayList<>();
        for (String item : items.split("\\s+", -1)) {
            String[] both = item.split("x", -1);
            lengths.add(new long[] {Long.parseLong(both[0]), both.length == 1 ? 1 : Long.parseLong(both[1])});
        }
        Plan plan = Planner.plan(RippedJobs.published(name, stock, lengths, fewest + 3));
        assertThat(plan.status()).isEqualTo(Plan.Status.COMPLETE);
        assertThat(plan.cost().net()).isEqualByComparingTo(BigDecimal.valueOf(fewest));
        assertThat(plan.cost().bound()).isEqualByComparingTo(BigDecimal.valueOf(fewest));
        assertThat(plan.cost().proven()).isTrue();
    }
}
