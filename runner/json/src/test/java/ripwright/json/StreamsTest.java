package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.replay.Replay;

/** What another program does: a job from a stream, planned, the plan to bytes and back. */
class StreamsTest {
    @Test
    void a_job_read_from_a_stream_is_planned_and_its_plan_comes_back_from_its_bytes() throws Exception {
        Job job = JobReader.read(stream(JobText.CABINET), "order 17", Path.of(""));
        Job again =
                JobReader.read(new ByteArrayInputStream(JobWriter.bytes(job, Optional.empty())), "copy", Path.of(""));
        assertThat(again).isEqualTo(job);
        Plan plan = Planner.plan(job, Options.defaults().withMostRecuts(50));
        Plan back = PlanReader.read(new ByteArrayInputStream(PlanWriter.bytes(plan)), "plan 17");
        assertThat(Replay.faults(job, back)).isEmpty();
    }

    @Test
    void a_rack_and_a_report_come_from_streams_too() throws Exception {
        Rack empty = new Rack(Unit.INCH, List.of());
        assertThat(RackReader.read(new ByteArrayInputStream(RackWriter.bytes(empty)), "rack"))
                .isEqualTo(empty);
        String report = "{\"format\": 1, \"job\": \"Cabinet\", \"done\": [1, 2], \"changes\": []}";
        assertThat(ReportFile.read(stream(report), "report", Unit.INCH).report().done())
                .hasSize(2);
    }

    @Test
    void messages_call_a_stream_by_its_name() {
        assertThatThrownBy(() -> PlanReader.read(stream("{"), "plan 17"))
                .isInstanceOf(WrongInputException.class)
                .hasMessageContaining("plan 17");
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
