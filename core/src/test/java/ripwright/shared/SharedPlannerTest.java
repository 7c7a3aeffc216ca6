package ripwright.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ripwright.testing.JobBuilder.maple;
import static ripwright.testing.JobBuilder.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.testing.JobBuilder;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

public class SharedPlannerTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(100);
    private static final Keep KEEP = new Keep(Length.inches("12"), Length.inches("2"));

    /** A board costs 8 a board foot; its offcuts are worth half of that. */
    private static JobBuilder job(String name) {
        return new JobBuilder(name).offcuts(KEEP, new BigDecimal("0.5"));
    }

    private static List<Job> cut(List<SharedPlan.Turn> turns) {
        return turns.stream().map(SharedPlan.Turn::job).toList();
    }

    private static Set<String> boards(SharedPlan.Turn turn) {
        Set<String> boards = new HashSet<>();
        for (CutBoard board : turn.plan().boards()) boards.add(board.board());
        return boards;
    }

    private static void replays(SharedPlan plans) {
        for (SharedPlan.Turn turn : plans.turns())
            assertThat(Replay.faults(turn.job(), turn.plan())).isEmpty();
    }

    @Test
    void the_next_job_is_cut_from_what_the_first_leaves_and_the_costs_add_up() {
        Job shelf = job("Shelf")
                .stack(maple("M1", "6", "96"))
                .parts(part("board", 1, "40", "6"))
                .build();
        Job bench = job("Bench")
                .stack(maple("M1", "6", "96"), maple("M2", "6", "96"))
                .parts(part("seat", 1, "40", "6"))
                .build();
        SharedPlan plans = SharedPlanner.inTurn(List.of(shelf, bench), SHORT_SEARCH);
        replays(plans);
        assertThat(cut(plans.turns())).extracting(Job::name).containsExactly("Shelf", "Bench");
        // 4 board feet cost 32.00; 55 7/8 in of them go to the rack for 9.3125 and come back, 15 3/4 in stay for 2.625
        assertThat(plans.turns())
                .extracting(turn -> turn.plan().cost().net())
                .containsExactly(money("22.69"), money("6.68"));
        assertThat(plans.net()).isEqualTo(money("29.37"));
        assertThat(plans.fresh()).isEqualByComparingTo("3");
        assertThat(plans.complete()).isTrue();
    }

    private static BigDecimal money(String amount) {
        return new BigDecimal(amount);
    }

    /** The first job alone would take the cheaper board, which is too short for both. */
    @Test
    void together_the_first_job_takes_the_board_that_serves_both() {
        Board.Builder[] stack = {maple("long", "6", "96"), maple("short", "6", "81")};
        Job shelf = new JobBuilder("Shelf")
                .stack(stack)
                .parts(part("board", 1, "40", "6"))
                .build();
        Job bench = new JobBuilder("Bench")
                .stack(stack)
                .parts(part("seat", 1, "50", "6"))
                .build();
        SharedPlan inTurn = SharedPlanner.inTurn(List.of(shelf, bench), SHORT_SEARCH);
        SharedPlan together = SharedPlanner.together(List.of(shelf, bench), SHORT_SEARCH);
        replays(inTurn);
        replays(together);
        assertThat(inTurn.net()).isEqualTo(money("59.00")); // 27 + 32
        assertThat(together.net()).isEqualTo(money("32.00"));
    }

    @Test
    void in_turn_keeps_the_order_and_a_job_that_finds_no_board_is_told() {
        Job greedy = job("Greedy")
                .stack(maple("M1", "6", "40"))
                .parts(part("board", 1, "40", "6"))
                .build();
        Job late = job("Late")
                .stack(maple("M1", "6", "40"))
                .parts(part("board", 1, "20", "6"))
                .build();
        SharedPlan plans = SharedPlanner.inTurn(List.of(greedy, late), SHORT_SEARCH);
        assertThat(cut(plans.turns())).extracting(Job::name).containsExactly("Greedy");
        assertThat(plans.leftOut()).containsExactly(late);
        assertThat(plans.complete()).isFalse();
    }

    @Test
    void copies_that_are_left_are_numbered_anew_as_their_entry_will_stand_for_them() {
        Board.Builder[] laths = {
            maple("lath#1", "2", "40"), maple("lath#2", "2", "40"), maple("lath#3", "2", "40"), maple("M1", "3", "30")
        };
        Job first =
                job("First").stack(laths).parts(part("edging", 1, "40", "2")).build();
        Job second =
                job("Second").stack(laths).parts(part("edging", 1, "40", "2")).build();
        Job third =
                job("Third").stack(laths).parts(part("edging", 1, "40", "2")).build();
        SharedPlan plans = SharedPlanner.inTurn(List.of(first, second, third), SHORT_SEARCH);
        replays(plans);
        assertThat(cut(plans.turns()))
                .extracting(job -> job.stack().stream().map(Board::id).toList())
                .containsExactly(
                        List.of("lath#1", "lath#2", "lath#3", "M1"),
                        List.of("lath#1", "lath#2", "M1"),
                        List.of("lath", "M1"));
    }

    @Test
    void jobs_that_do_not_agree_are_refused_with_all_that_differs() {
        Job one = job("One")
                .stack(maple("M1", "6", "96"), maple("lath", "2", "40"))
                .parts(part("a", 1, "40", "6"))
                .build();
        Job other = new JobBuilder("Other")
                .kerfs("3/32", "1/8")
                .price("maple", money("9.5"))
                .stack(maple("M1", "6", "95"), maple("lath#1", "2", "40"))
                .parts(part("a", 1, "40", "6").boards(Set.of("M1")))
                .build();
        assertThatThrownBy(() -> SharedPlanner.together(List.of(one, other, one), SHORT_SEARCH))
                .isInstanceOfSatisfying(
                        DisagreeingJobsException.class,
                        e -> assertThat(e.disagreements())
                                .containsExactlyInAnyOrder(
                                        "Two jobs are called \"One\"; rename one.",
                                        "\"One\" and \"Other\" do not agree on the saws.",
                                        "\"One\" and \"Other\" do not agree on salvage.",
                                        "\"One\" and \"Other\" do not agree on the price of maple: 8 and 9.5.",
                                        "The board \"M1\" is not the same in \"One\" and \"Other\". Give it one measure, or two ids.",
                                        "There is one board \"lath\" in \"One\" and there are several in \"Other\". Give both the"
                                                + " same count, or two ids.",
                                        "The part \"a\" of \"Other\" comes from certain boards only; plan that job alone."));
    }

    @Test
    void equal_saws_and_prices_agree_however_they_are_written() {
        Saw saw = Saw.of(Length.inches("0.125"), Length.inches("1/8"));
        Board board = maple("M1", "6", "96").price(money("8.40")).build();
        Job one =
                job("One").stack(List.of(board)).parts(part("a", 1, "40", "6")).build();
        Job other = job("Other")
                .saw(saw)
                .price("maple", money("8.00"))
                .stack(List.of(board.toBuilder().price(money("8.4")).build()))
                .parts(part("a", 1, "40", "6"))
                .build();
        assertThat(SharedPlanner.inTurn(List.of(one, other), SHORT_SEARCH).complete())
                .isTrue();
    }

    /** One drawn job, its bill dealt out to two. */
    @Test
    void whatever_the_jobs_are_their_plans_replay_and_no_board_is_cut_twice() {
        Seeds.each(25, (random, size) -> {
            Job drawn = RandomJobs.growing(random, 2 + size / 3);
            List<Part> parts = drawn.parts();
            int half = Math.max(1, parts.size() / 2);
            List<Job> jobs = new ArrayList<>(List.of(with(drawn, "one", parts.subList(0, half))));
            if (parts.size() > 1) jobs.add(with(drawn, "two", parts.subList(half, parts.size())));
            SharedPlan inTurn = SharedPlanner.inTurn(jobs, SHORT_SEARCH);
            SharedPlan together = SharedPlanner.together(jobs, SHORT_SEARCH);
            for (SharedPlan plans : List.of(inTurn, together)) {
                replays(plans);
                Set<String> cut = new HashSet<>();
                int all = 0;
                for (SharedPlan.Turn turn : plans.turns()) {
                    cut.addAll(boards(turn));
                    all += boards(turn).size();
                }
                assertThat(cut).hasSize(all);
            }
            assertThat(together.made()).isGreaterThanOrEqualTo(inTurn.made());
            if (together.made().compareTo(inTurn.made()) == 0)
                assertThat(together.net()).isLessThanOrEqualTo(inTurn.net());
        });
    }

    private static Job with(Job job, String name, List<Part> parts) {
        return JobBuilder.like(job, name, job.rack(), parts).build();
    }

    @Test
    void interrupted_it_gives_whole_plans() {
        Job shelf = job("Shelf")
                .stack(maple("M1", "6", "96"))
                .parts(part("board", 1, "40", "6"))
                .build();
        Job bench = job("Bench")
                .stack(maple("M2", "6", "96"))
                .parts(part("seat", 1, "40", "6"))
                .build();
        SharedPlan plans = SharedPlanner.together(List.of(shelf, bench), SHORT_SEARCH.withCancellation(() -> true));
        replays(plans);
        assertThat(plans.turns()).hasSize(2);
        assertThat(plans.turns())
                .extracting(turn -> turn.plan().status())
                .isNotNull()
                .hasOnlyElementsOfType(Plan.Status.class);
    }
}
