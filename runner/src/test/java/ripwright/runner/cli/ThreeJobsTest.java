package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.PlanReader;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.BoardFeet;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.stock.Board;

/** The sample of three jobs, one after another. */
class ThreeJobsTest {
    private static final Path SAMPLE = Path.of("../samples/three-jobs");
    private static final List<String> JOBS = List.of("lockers", "bench", "shelf");

    @TempDir
    private Path folder;

    private Shop shop() {
        return new Shop(folder, (job, options) -> Planner.plan(job, options.withMostRecuts(400)));
    }

    private void run(String... arguments) {
        Shop shop = shop();
        assertThat(shop.run(arguments)).as(() -> shop.out() + shop.err()).isZero();
    }

    /** What the plan in that folder takes from the job's stack, as wood is sold. */
    private BoardFeet fresh(String name, Path plans) throws WrongInputException {
        Job job = JobReader.read(folder.resolve(name + ".job.json"));
        Plan plan = PlanReader.read(plans.resolve(name + ".plan.json"));
        assertThat(Replay.faults(job, plan)).isEmpty();
        Set<String> cut = plan.boards().stream().map(CutBoard::board).collect(Collectors.toSet());
        BoardFeet feet = BoardFeet.ZERO;
        for (Board board : job.stack())
            if (cut.contains(board.id())) feet = feet.plus(BoardFeet.counted(board.area(), board.thickness()));
        return feet;
    }

    private static String feet(BoardFeet feet) {
        return feet.value().bigDecimalValue(1, RoundingMode.HALF_UP).toPlainString();
    }

    @Test
    void each_job_lives_on_what_the_one_before_it_left() throws IOException, WrongInputException {
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.toList()) {
                // so many moves fit into 2 s easily, but not on every machine at any time
                String text = Files.readString(file).replace("\"seconds\": 2", "\"seconds\": 6");
                Files.writeString(folder.resolve(String.valueOf(file.getFileName())), text);
            }
        }
        BoardFeet alone = BoardFeet.ZERO;
        BoardFeet inTurn = BoardFeet.ZERO;
        for (String job : JOBS) {
            run("plan", "FOLDER/" + job + ".job.json", "--out", "FOLDER/alone");
            alone = alone.plus(fresh(job, folder.resolve("alone")));
        }
        String rack = Files.readString(folder.resolve("rack.json"));
        for (String job : JOBS) {
            run("plan", "FOLDER/" + job + ".job.json");
            inTurn = inTurn.plus(fresh(job, folder));
            run("settle", "FOLDER/" + job + ".plan.json", "--rack", "FOLDER/rack.json");
        }
        assertThat(Files.readString(SAMPLE.resolve("README.md")))
                .contains("**" + feet(inTurn) + " board feet**", "**" + feet(alone) + "**");
        assertThat(BigDecimal.ONE).isLessThan(alone.minus(inTurn).rounded());

        run("unsettle", "FOLDER/shelf.plan.json", "--rack", "FOLDER/rack.json");
        run("unsettle", "FOLDER/bench.plan.json", "--rack", "FOLDER/rack.json");
        run("unsettle", "FOLDER/lockers.plan.json", "--rack", "FOLDER/rack.json");
        assertThat(folder.resolve("rack.json")).content().isEqualTo(rack);
    }
}
