package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.PlanReader;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.replay.Replay;

class ReadmePictureTest {
    private static final Path SAMPLE = Path.of("../samples/mudroom-lockers");

    @Test
    void the_picture_in_the_readme_is_what_is_drawn_today_of_a_plan_that_is_right() throws Exception {
        Job job = JobReader.read(SAMPLE.resolve("mudroom-lockers.job.json"));
        Plan plan = PlanReader.read(SAMPLE.resolve("mudroom-lockers.plan.json"));

        assertThat(Replay.faults(job, plan)).isEmpty();
        String svg = new Picture(
                        job, plan, plan.boards().stream().map(CutBoard::board).toList())
                .svg();
        assertThat(Files.readString(SAMPLE.resolve("mudroom-lockers.boards.svg"))
                        .equals(svg))
                .as("the picture is the one drawn today; `.ci/run picture` makes it anew")
                .isTrue();
        assertThat(Files.readString(Path.of("../README.md")))
                .contains("(samples/mudroom-lockers/mudroom-lockers.boards.svg)");
    }
}
