package ripwright.runner.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.replay.Replay;

class WidthTrialTest {
    private static final List<Length> WIDTHS =
            Stream.of("2", "2 1/8", "2 1/4").map(Length::inches).toList();

    private static Job job(String limits) throws WrongInputException, IOException {
        return JobText.cabinet()
                .part(
                        " },\n    { \"name\": \"shelf\", \"count\": 1, \"length\": 12, \"width\": 3, \"thickness\": \"3/4\", "
                                + "\"face\": \"hidden\"")
                .with("\"stack\"", "\"limits\": " + limits + ", \"stack\"")
                .job();
    }

    @Test
    void every_width_is_planned_with_the_named_part_alone_at_that_width() throws Exception {
        Job job = job("{ \"seconds\": 7, \"seed\": 5, \"threads\": 2 }");
        Map<Length, Job> planned = new ConcurrentHashMap<>();
        Comparison comparison = new WidthTrial(job, List.of("door"), (one, options) -> {
                    planned.put(one.parts().get(0).width(), one);
                    return Plans.cabinet();
                })
                .compare(WIDTHS, Options.defaults(), count -> {});
        assertThat(comparison.outcomes()).extracting(Outcome::width).isEqualTo(WIDTHS);
        assertThat(planned).containsOnlyKeys(WIDTHS);
        planned.values().forEach(one -> {
            assertThat(one.parts().get(1)).isEqualTo(job.parts().get(1));
            assertThat(one.stack()).isEqualTo(job.stack());
            assertThat(one.limits().seconds()).isEqualTo(job.limits().seconds());
            assertThat(one.limits().seed()).hasValue(5);
        });
    }

    @Test
    void several_parts_get_the_same_width() throws Exception {
        Queue<Job> planned = new ConcurrentLinkedQueue<>();
        new WidthTrial(job("{}"), List.of("shelf", "door"), (one, options) -> {
                    planned.add(one);
                    return Plans.cabinet();
                })
                .compare(List.of(Length.inches("2")), Options.defaults(), count -> {});
        assertThat(planned.element().parts()).extracting(Part::width).containsOnly(Length.inches("2"));
    }

    @Test
    void the_threads_of_the_job_are_shared_among_the_widths() throws Exception {
        assertThat(threads("{ \"threads\": 2 }", 3)).containsOnly(1);
        assertThat(threads("{ \"threads\": 9 }", 2)).containsOnly(4);
        assertThat(threads("{ \"threads\": 1 }", 3)).containsOnly(1);
        assertThat(threads("{ \"threads\": 4 }", 1)).containsOnly(4);
    }

    private static List<Integer> threads(String limits, int widths) throws Exception {
        Queue<Integer> threads = new ConcurrentLinkedQueue<>();
        new WidthTrial(job(limits), List.of("door"), (one, options) -> {
                    Limits given = one.limits();
                    threads.add(given.threads().orElseThrow());
                    return Plans.cabinet();
                })
                .compare(WIDTHS.subList(0, widths), Options.defaults(), count -> {});
        assertThat(threads).hasSize(widths);
        return List.copyOf(threads);
    }

    @Test
    void widths_not_begun_when_it_is_cancelled_are_left_out() throws Exception {
        Queue<Job> planned = new ConcurrentLinkedQueue<>();
        Comparison comparison = new WidthTrial(job("{ \"threads\": 1 }"), List.of("door"), (one, options) -> {
                    planned.add(one);
                    return Plans.cabinet();
                })
                .compare(WIDTHS, Options.defaults().withCancellation(() -> !planned.isEmpty()), count -> {});
        assertThat(comparison.outcomes()).extracting(Outcome::width).containsExactly(Length.inches("2"));
    }

    @Test
    void a_fault_of_the_planner_comes_out() throws Exception {
        Job job = job("{}");
        WidthTrial trial = new WidthTrial(job, List.of("door"), (one, options) -> {
            throw new IllegalStateException("A strip came out wider than its section.");
        });
        assertThatThrownBy(() -> trial.compare(WIDTHS, Options.defaults(), count -> {}))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("A strip came out wider than its section.");
    }

    @Test
    void every_plan_compared_stands_up_to_replay_at_its_own_width() throws Exception {
        Job job = job("{ \"seconds\": 2, \"seed\": 1 }");
        Comparison comparison =
                new WidthTrial(job, List.of("door"), Planner::plan).compare(WIDTHS, Options.defaults(), count -> {});
        for (Outcome outcome : comparison.outcomes()) {
            List<Part> bill = List.of(
                    job.parts().get(0).ofWidth(outcome.width()), job.parts().get(1));
            assertThat(Replay.faults(job.withParts(bill), outcome.plan())).isEmpty();
            assertThat(outcome.partsMade()).isEqualTo(3);
        }
    }
}
