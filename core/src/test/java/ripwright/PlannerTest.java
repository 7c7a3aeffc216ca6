package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.saw.Labor;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobBuilder;
import ripwright.testing.JobSize;
import ripwright.testing.OddJobs;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

class PlannerTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(150);

    /** On one thread with few recuts, so that many do not take long; {@code -Dripwright.drawnJobs=1000} plans more. */
    @Test
    void every_plan_of_a_drawn_job_replays() {
        Options brief = Options.defaults().withMostRecuts(60);
        Seeds.each(Integer.getInteger("ripwright.drawnJobs", 250), (random, size) -> {
            Job job = onOneThread(RandomJobs.growing(random, size / 2));
            assertThat(Replay.faults(job, Planner.plan(job, brief))).isEmpty();
        });
    }

    private static Job onOneThread(Job job) {
        return job.withLimits(new Limits(Optional.empty(), OptionalLong.of(1), OptionalInt.of(1)));
    }

    /**
     * A third strip beside the two rails makes the edging too, from one board but with a setting of its own: 6 minutes and
     * two rips. A lath that is ripped already costs 3.33 more.
     */
    @Test
    void where_time_costs_something_fewer_settings_beat_less_wood() {
        JobBuilder bench = new JobBuilder("settings")
                .stack(
                        JobBuilder.maple("board", "6", "40"),
                        JobBuilder.maple("lath", "1 1/2", "40").ripped(true))
                .parts(JobBuilder.part("rail", 2, "40", "2"), JobBuilder.part("edging", 1, "40", "1 1/2"));
        Plan unpaid = Planner.plan(bench.build(), SHORT_SEARCH);
        BigDecimal hour = new BigDecimal("60");
        Plan paid = Planner.plan(
                bench.labor(new Labor(hour, new BigDecimal("6"), new BigDecimal("1.5"), BigDecimal.ONE))
                        .build(),
                SHORT_SEARCH);

        assertThat(unpaid.cost().net()).isEqualByComparingTo("13.33");
        assertThat(unpaid.settings()).hasSize(2);
        assertThat(paid.settings()).hasSize(1);
        assertThat(paid.cost().stock()).isEqualByComparingTo("16.67");
        assertThat(paid.cost().labor()).isEqualByComparingTo("9"); // one setting and two rips
        assertThat(paid.status()).isEqualTo(Plan.Status.COMPLETE);
    }

    @Test
    void the_same_seed_gives_the_same_plan() {
        Job job = RandomJobs.random(new SplittableRandom(5), new JobSize(20, 8), Features.ALL);
        assertThat(Planner.plan(job, SHORT_SEARCH)).isEqualTo(Planner.plan(job, SHORT_SEARCH));
    }

    /** No time is given and no recuts are counted: the floor and the proof take part, and no clock ends them. */
    @Test
    void without_a_limit_the_same_seed_gives_the_same_plan_too() {
        Job job = RandomJobs.random(new SplittableRandom(7), new JobSize(8, 4), Features.of(Feature.SALVAGE));
        assertThat(job.limits().seconds()).isEmpty();
        Plan plan = Planner.plan(job);
        assertThat(plan.cost().proven()).isFalse(); // so the proof was ended
        assertThat(Planner.plan(job)).isEqualTo(plan);
    }

    @Test
    void a_cancelled_planning_gives_the_best_plan_so_far() {
        Job job = RandomJobs.random(new SplittableRandom(6), new JobSize(40, 12), Features.NONE);
        AtomicInteger asked = new AtomicInteger();
        Plan plan = Planner.plan(job, Options.defaults().withCancellation(() -> asked.incrementAndGet() > 40));
        assertThat(Replay.faults(job, plan)).isEmpty();
        assertThat(plan.boards()).isNotEmpty();
    }

    @Test
    void why_the_search_went_no_further_is_told_once_and_what_the_listener_throws_breaks_no_plan() {
        assertThat(ending("60", Options.defaults().withCancellation(() -> true)))
                .isEqualTo(Ending.STOPPED);
        assertThat(ending("60", Options.defaults().withMostRecuts(1))).isEqualTo(Ending.STOPPED);
        assertThat(ending("0.3", Options.defaults())).isEqualTo(Ending.TIME_OVER);
        Job small = new JobBuilder("One shelf")
                .stack(JobBuilder.maple("M1", "6", "40"))
                .parts(JobBuilder.part("shelf", 1, "30", "5"))
                .build();
        assertThat(ending(small, Options.defaults())).isEqualTo(Ending.PROVEN);
    }

    /** A minute would be left; the plan comes with the flag set, and nobody computes any more. */
    @Test
    void an_interrupted_thread_gets_the_best_plan_so_far_and_is_still_interrupted() {
        for (int threads = 1; threads <= 3; threads++) {
            Set<Thread> before = Thread.getAllStackTraces().keySet();
            Job job = OddJobs.within(
                    RandomJobs.random(new SplittableRandom(6), new JobSize(60, 12), Features.NONE), "60", threads);
            List<Ending> told = new ArrayList<>();
            Plan plan = Planner.plan(job, Options.defaults().withListener(new ProgressListener() {
                @Override
                public void progress(Progress progress) {
                    Thread.currentThread().interrupt();
                }

                @Override
                public void ended(Ending ending) {
                    told.add(ending);
                }
            }));
            assertThat(Thread.interrupted()).isTrue();
            assertThat(told).containsExactly(Ending.STOPPED);
            assertThat(Replay.faults(job, plan)).isEmpty();
            assertThat(plan.boards()).isNotEmpty();
            Set<Thread> left = new HashSet<>(Thread.getAllStackTraces().keySet());
            left.removeAll(before);
            assertThat(left)
                    .filteredOn(thread -> thread.getName().startsWith("ripwright"))
                    .isEmpty();
        }
    }

    @Test
    void an_error_that_a_listener_throws_breaks_no_plan() {
        Job job = RandomJobs.random(new SplittableRandom(7), new JobSize(12, 5), Features.NONE);
        Plan plan = Planner.plan(job, SHORT_SEARCH.withListener(progress -> {
            throw new StackOverflowError("the listener is broken");
        }));
        assertThat(Replay.faults(job, plan)).isEmpty();
    }

    /** What labor costs was reckoned in coins that were measured by the stack, settings and rips alone. */
    @Test
    void crosscuts_may_cost_any_number_of_times_what_the_wood_does() {
        BigDecimal zero = BigDecimal.ZERO;
        Job job = new JobBuilder("almost free")
                .price(JobBuilder.MAPLE, new BigDecimal("0.0000001"))
                .stack(JobBuilder.maple("board", "6", "40"))
                .parts(JobBuilder.part("rail", 2, "30", "2"), JobBuilder.part("too long", 1, "50", "2"))
                .labor(new Labor(new BigDecimal("90"), zero, zero, new BigDecimal("2")))
                .build();
        Plan plan = Planner.plan(job);
        assertThat(plan.cost().net()).isEqualByComparingTo("3"); // both rails of one section: a single crosscut
        assertThat(plan.cost().bound()).isBetween(BigDecimal.ZERO, plan.cost().net());
    }

    private static Ending ending(String seconds, Options options) {
        Job drawn = RandomJobs.random(new SplittableRandom(6), new JobSize(90, 12), Features.NONE);
        Job job = new JobBuilder("Drawn")
                .stack(drawn.stack())
                .parts(drawn.parts())
                .limits(new BigDecimal(seconds), 1)
                .build();
        return ending(job, options);
    }

    private static Ending ending(Job job, Options options) {
        List<Ending> told = new ArrayList<>();
        Plan unused = Planner.plan(job, options.withListener(new ProgressListener() {
            @Override
            public void progress(Progress progress) {}

            @Override
            public void ended(Ending ending) {
                told.add(ending);
                throw new IllegalStateException("the listener is broken");
            }
        }));
        assertThat(told).hasSize(1);
        return told.get(0);
    }

    @Test
    void progress_is_told_and_what_a_listener_throws_breaks_no_plan() {
        Job job = RandomJobs.random(new SplittableRandom(7), new JobSize(12, 5), Features.NONE);
        List<Progress> told = new ArrayList<>();
        Plan plan = Planner.plan(job, SHORT_SEARCH.withListener(progress -> {
            told.add(progress);
            throw new IllegalStateException("the listener is broken");
        }));
        assertThat(Replay.faults(job, plan)).isEmpty();
        assertThat(told).isNotEmpty();
        assertThat(told.get(told.size() - 1).partsWanted()).isEqualTo(12);
    }
}
