package ripwright.internal.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.ScaledMoney;
import ripwright.internal.pricing.PricingProblem;
import ripwright.internal.recreate.RuinAndRecreate;
import ripwright.internal.sequence.Sequencer;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.saw.Labor;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.CpSatOptimum;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobBuilder;
import ripwright.testing.JobSize;
import ripwright.testing.LayoutCheck;
import ripwright.testing.LayoutCost;
import ripwright.testing.Optimum;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;
import ripwright.testing.Slivers;

public class LowerBoundTest {
    private static final Money TEN_THOUSANDTH = Money.of(new BigDecimal("0.0001"));

    /** A job as it grows with {@code size}, without test rips: {@link LayoutCost} leaves them out. */
    private static Job untested(SplittableRandom random, int size) {
        return JobBuilder.like(RandomJobs.growing(random, size))
                .testRip(TestRip.NONE)
                .build();
    }

    /** The floor under every plan that makes as much finished wood as those layouts do. */
    private static LowerBound under(Job job, List<Layout> layouts) {
        JobNumbers numbers = new JobNumbers(job);
        LayoutCheck check = new LayoutCheck(job, layouts);
        if (check.complete()) return LowerBound.ofWholeBill(numbers, () -> false);
        int[] made = check.made();
        long feet = IntStream.range(0, made.length)
                .mapToLong(p -> made[p] * numbers.feet(p))
                .sum();
        return LowerBound.ofFeet(numbers, feet, () -> false);
    }

    @Test
    void no_plan_made_by_hand_costs_less() {
        Seeds.each(150, LowerBoundTest::untested, job -> {
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            assertThat(under(job, layouts).value()).isLessThanOrEqualTo(new LayoutCost(job, layouts).net());
        });
    }

    @Test
    void no_plan_cut_by_chance_costs_less() {
        Seeds.each(100, 65, (random, size) -> {
            boolean any = false;
            Job job = untested(random, size);
            JobNumbers numbers = new JobNumbers(job);
            RuinAndRecreate recut = new RuinAndRecreate(numbers);
            for (int n = 0; n < 3; n++) {
                List<Layout> layouts = cutByChance(numbers, recut, random);
                if (!new LayoutCheck(job, layouts).faults().isEmpty()) continue; // a group torn apart
                assertThat(under(job, layouts).value()).isLessThanOrEqualTo(new LayoutCost(job, layouts).net());
                any |= !layouts.isEmpty();
            }
            return any;
        });
    }

    private static List<Layout> cutByChance(JobNumbers numbers, RuinAndRecreate recut, SplittableRandom random) {
        List<Integer> boards = new ArrayList<>();
        for (int b = 0; b < numbers.boards(); b++) boards.add(random.nextInt(b + 1), b);
        List<Layout> layouts = new ArrayList<>();
        for (@Nullable PricedLayout cut : recut.cut(boards, numbers.wanted(), random))
            if (cut != null) layouts.add(cut.layout());
        return layouts;
    }

    @Test
    void the_floor_lies_under_the_optimum() {
        Seeds.each(25, (random, size) -> {
            Features features = Features.some(random).without(Feature.TRIES, Feature.OFF_GRID);
            Job job = RandomJobs.random(random, JobSize.tiny(random), features, 8);
            Optimum optimum = CpSatOptimum.stock(job);
            Money net = new LayoutCost(job, optimum.layouts()).net();
            assertThat(under(job, optimum.layouts()).value()).isLessThanOrEqualTo(net);
        });
    }

    /** Every feature that the reference takes together with offcuts and labor, each on in about half of the jobs. */
    @Test
    void the_floor_lies_under_the_net_optimum_whatever_is_on() {
        Set<Feature> beyond = EnumSet.of(
                Feature.DEFECTS, Feature.TAPER, Feature.CROOK, Feature.TRIES, Feature.OFF_GRID, Feature.MILLIMETERS);
        Feature[] some = EnumSet.complementOf(EnumSet.copyOf(beyond)).toArray(Feature[]::new);
        Set<Feature> seen = EnumSet.noneOf(Feature.class);
        Seeds.each(24, (random, size) -> {
            Features features = Features.some(random, some);
            if (random.nextInt(3) > 0) features = features.without(Feature.SHORT_STOCK);
            Job job = RandomJobs.random(random, JobSize.tiny(random), features, 8);
            for (Feature feature : some) if (features.has(feature)) seen.add(feature);
            Optimum optimum = CpSatOptimum.net(job);
            assertThat(under(job, optimum.layouts()).value())
                    .isLessThanOrEqualTo(optimum.cost().plus(TEN_THOUSANDTH));
        });
        assertThat(seen).containsExactlyInAnyOrder(some);
    }

    @Test
    void boards_that_are_filled_without_a_rest_are_met() {
        Seeds.each(20, (random, size) -> {
            Features features = Features.of(Feature.TRIMS, Feature.EDGES);
            Constructed job = ConstructedJobs.constructed(random, new JobSize(10 + size, 5), features);
            Money lowerBound = LowerBound.ofWholeBill(new JobNumbers(job.job()), () -> false)
                    .value();
            assertThat(lowerBound).isBetween(job.best().minus(TEN_THOUSANDTH), job.best());
        });
    }

    private static JobBuilder labored(Board.Builder... boards) {
        BigDecimal minute = BigDecimal.ONE;
        return new JobBuilder("labored")
                .labor(new Labor(new BigDecimal("60"), minute, minute, minute))
                .stack(boards);
    }

    private static Board.Builder narrow(String id, long length) {
        return JobBuilder.maple(id, "2", "1").length(new Length(length));
    }

    private static Part.Builder rail(String name, long length) {
        return Part.of(name, new Length(length), Length.inches("2"), JobBuilder.THICKNESS);
    }

    /** The board as one section and that as one strip. */
    private static Layout whole(int board, long length, Layout.Blank... blanks) {
        Layout.Strip strip = new Layout.Strip(Length.inches("2").nanometers(), List.of(blanks));
        return new Layout(board, List.of(new Layout.Section(0, length, Edge.LEFT, 0, List.of(strip))));
    }

    private static void liesUnder(Job job, Layout... layouts) {
        Plan plan = new Sequencer(job, List.of(layouts), Money.ZERO).plan();
        BigDecimal lowerBound =
                LowerBound.ofWholeBill(new JobNumbers(job), () -> false).value().roundedDown();
        assertThat(lowerBound).isLessThanOrEqualTo(plan.cost().net());
    }

    /** What a plan counts as no cut costs nothing in the floor either. */
    @Test
    void no_plan_costs_less_whose_blank_ends_next_to_nothing_before_its_board() {
        long rail = Length.inches("3").nanometers();
        LongStream measured = LongStream.of(6_250, 12_500); // also by the floor, in ticks no longer than these
        LongStream.concat(measured, Slivers.all()).forEach(sliver -> {
            Job job = labored(narrow("a", rail + sliver))
                    .parts(rail("rail", rail))
                    .build();
            liesUnder(job, whole(0, rail + sliver, new Layout.Blank(0, 0)));
            Job ripped = labored(narrow("a", rail + sliver).ripped(true))
                    .parts(rail("rail", rail))
                    .build();
            liesUnder(ripped, whole(0, rail + sliver, new Layout.Blank(0, 0)));
        });
    }

    /** Two blanks fill a board to the nanometer, in a job whose lengths no grid measures. */
    @Test
    void no_plan_costs_less_whose_blanks_fill_their_board_where_sizes_are_rounded() {
        long half = 381_001_000;
        long odd = 300_000_001;
        long kerf = Length.inches("1/8").nanometers();
        Job job = labored(narrow("a", 2 * half + kerf), narrow("b", odd))
                .parts(rail("half", half).count(2), rail("odd", odd))
                .build();
        liesUnder(
                job,
                whole(0, 2 * half + kerf, new Layout.Blank(0, 0), new Layout.Blank(0, half + kerf)),
                whole(1, odd, new Layout.Blank(1, 0)));
    }

    /** The prices alone, asked and summed up once more. */
    @Test
    void the_floor_is_the_sum_of_its_prices() {
        Seeds.each(100, RandomJobs::growing, job -> {
            JobNumbers numbers = new JobNumbers(job);
            LagrangianBound found = LowerBound.ofWholeBill(numbers, () -> false).lagrangianBound();
            ItemTypes types = new ItemTypes(numbers);
            ScaledMoney money = new ScaledMoney(job);
            PricingProblem pricing = new PricingProblem(numbers, types, money);
            pricing.price(found.prices());
            BigInteger sum = BigInteger.valueOf(found.demand().due);
            for (int p = 0; p < numbers.parts(); p++)
                sum = sum.add(BigInteger.valueOf(found.prices()[types.typeOfPart(p)])
                        .multiply(BigInteger.valueOf(numbers.wanted()[p])));
            for (int b = 0; b < numbers.boards(); b++) {
                long gain = pricing.worth(types.typeOfBoard(b)) - money.cost(b);
                if (gain > 0) sum = sum.subtract(BigInteger.valueOf(gain));
            }
            assertThat(BigInteger.valueOf(found.money())).isEqualTo(sum);
        });
    }

    /** A board foot at 8, cut in two halves without a kerf: the third half needs a second board, but may buy a half of it. */
    @Test
    void boards_may_be_bought_in_part() {
        Job job = new JobBuilder("halves")
                .kerfs("0", "0")
                .stack(JobBuilder.maple("a", "6", "24"), JobBuilder.maple("b", "6", "24"))
                .parts(JobBuilder.part("half", 3, "12", "6"))
                .build();
        LowerBound lowerBound = LowerBound.ofWholeBill(new JobNumbers(job), () -> false);
        assertThat(lowerBound.value().rounded()).isEqualByComparingTo("12");
        assertThat(lowerBound.prices()[0]).isBetween(3_999_999.0, 4_000_001.0);
    }

    @Test
    void a_plan_that_makes_half_the_wood_has_half_the_floor() {
        Job job = new JobBuilder("halves")
                .kerfs("0", "0")
                .stack(JobBuilder.maple("a", "6", "24"))
                .parts(JobBuilder.part("half", 4, "12", "6"))
                .build();
        JobNumbers numbers = new JobNumbers(job);
        LowerBound lowerBound = LowerBound.ofFeet(numbers, 2 * numbers.feet(0), () -> false);
        assertThat(lowerBound.value().rounded()).isEqualByComparingTo("8");
    }

    @Test
    void a_width_that_only_the_saw_can_give_is_set_once() {
        Job job = new JobBuilder("set")
                .kerfs("0", "0")
                .stack(JobBuilder.maple("a", "6", "24"))
                .parts(JobBuilder.part("half", 2, "12", "6"))
                .labor(new ripwright.saw.Labor(
                        new BigDecimal("60"), new BigDecimal("5"), BigDecimal.ZERO, BigDecimal.ZERO))
                .build();
        assertThat(LowerBound.ofWholeBill(new JobNumbers(job), () -> false)
                        .value()
                        .rounded())
                .isEqualByComparingTo("13");
    }

    @Test
    void stopped_at_once_it_still_has_a_floor() {
        Job job = RandomJobs.random(new SplittableRandom(7), new JobSize(30, 10), Features.NONE);
        Money hasty = LowerBound.ofWholeBill(new JobNumbers(job), () -> true).value();
        Money patient = LowerBound.ofWholeBill(new JobNumbers(job), () -> false).value();
        assertThat(hasty.value()).isGreaterThan(BigFraction.ZERO);
        assertThat(hasty).isLessThan(patient);
    }

    /** Wherever it is broken off, in the middle of a pricing too, what it has by then is a floor. */
    @Test
    void broken_off_it_is_no_higher_than_when_it_is_found() {
        AtomicInteger higherThanNothing = new AtomicInteger();
        Seeds.each(60, (random, size) -> {
            JobNumbers numbers = new JobNumbers(RandomJobs.growing(random, size));
            AtomicInteger asked = new AtomicInteger();
            Money found = LowerBound.ofWholeBill(
                            numbers,
                            () -> false,
                            () -> {
                                asked.incrementAndGet();
                                return false;
                            },
                            raised -> {})
                    .value();
            for (int after : new int[] {0, 1, random.nextInt(asked.get() + 1), asked.get() - 1}) {
                AtomicInteger left = new AtomicInteger(after);
                LowerBound lowerBound =
                        LowerBound.ofWholeBill(numbers, () -> false, () -> left.getAndDecrement() <= 0, raised -> {});
                assertThat(lowerBound.value()).isLessThanOrEqualTo(found);
                assertThat(lowerBound.layouts().size()).isLessThanOrEqualTo(asked.get());
                if (lowerBound.value().compareTo(Money.ZERO) > 0) higherThanNothing.incrementAndGet();
            }
        });
        assertThat(higherThanNothing).hasValueGreaterThan(20);
    }

    @Test
    void the_layouts_it_rests_on_can_be_cut() {
        Seeds.each(100, 60, RandomJobs::growing, job -> {
            List<LowerBound.WeightedLayout> layouts =
                    LowerBound.ofWholeBill(new JobNumbers(job), () -> false).layouts();
            for (LowerBound.WeightedLayout found : layouts)
                assertThat(new LayoutCheck(job, List.of(found.layout().layout())).faults())
                        .isEmpty();
            return !layouts.isEmpty();
        });
    }

    @Test
    void no_more_of_a_board_is_taken_than_there_is() {
        Seeds.each(60, 40, (random, size) -> {
            Job job = RandomJobs.random(random, new JobSize(3 + size, 2 + size), Features.NONE);
            JobNumbers numbers = new JobNumbers(job);
            double[] taken = new double[numbers.boards()];
            for (LowerBound.WeightedLayout found :
                    LowerBound.ofWholeBill(numbers, () -> false).layouts())
                taken[found.layout().layout().board()] += found.weight();
            ItemTypes types = new ItemTypes(numbers);
            for (int b = 0; b < taken.length; b++)
                assertThat(taken[b]).isBetween(0.0, types.boardsOf(types.typeOfBoard(b)).length + 0.001);
            return Arrays.stream(taken).anyMatch(weight -> weight > 0.999);
        });
    }
}
