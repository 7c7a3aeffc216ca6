package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.RackReader;
import ripwright.json.tree.WrongInputException;
import ripwright.runner.rack.ShopFolder;

/** The process is killed at every instant at which a file is written, moved or deleted, and the next one looks what is there. */
class PowerCutIT {
    private static final int NEVER = 1_000;

    @TempDir
    private Path folder;

    private ShopFolder open;
    private ShopFolder settled;

    @BeforeEach
    void books() throws IOException, WrongInputException, InterruptedException {
        open = ShopFolder.planned(folder.resolve("open"), ShopFolder.RACK, ShopFolder.JOB);
        settled = open.copy(folder.resolve("settled"));
        assertThat(run(NEVER, "settle", settled)).isZero();
        assertThat(settled.books()).containsKeys("rack.book.json", "coats.left.json");
    }

    private static int run(int instants, String command, ShopFolder shop) throws IOException, InterruptedException {
        List<String> line = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xmx64m",
                "-cp",
                System.getProperty("java.class.path"),
                CutOff.class.getName(),
                Integer.toString(instants),
                command,
                shop.plan().toString(),
                "--rack",
                shop.rack().toString());
        return new ProcessBuilder(line)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    /** Kills it at every instant there is; each time the next run, of the same command, ends with {@code after}. */
    private void killedEverywhere(String command, ShopFolder from, Map<String, String> after)
            throws IOException, WrongInputException, InterruptedException {
        Map<String, String> old = open.books();
        Map<String, String> now = settled.books();
        int instants = 0;
        while (true) {
            ShopFolder shop = from.copy(folder.resolve(command + instants));
            int end = run(instants, command, shop);
            Map<String, String> left = shop.books();
            assertThat(left.get("rack.json")).isIn(old.get("rack.json"), now.get("rack.json"));
            assertThat(left.getOrDefault("rack.book.json", "none")).isIn("none", now.get("rack.book.json"));
            RackReader.read(shop.rack());
            if (end == 0) break;
            assertThat(end).isEqualTo(CutOff.KILLED);
            finish(command, shop);
            assertThat(shop.books()).isEqualTo(after);
            assertThat(shop.leftovers()).isEmpty();
            instants++;
        }
        assertThat(instants).isGreaterThan(15);
    }

    private void finish(String command, ShopFolder shop) {
        List<String> line = command.equals("settle")
                ? List.of(command, shop.plan().toString(), "--rack", shop.rack().toString(), "--day", "2026-10-01")
                : List.of(command, shop.plan().toString(), "--rack", shop.rack().toString());
        new Shop(folder, (job, options) -> {
                    throw new AssertionError("planned");
                })
                .run(line.toArray(String[]::new));
    }

    @Test
    void killed_while_it_settles_it_leaves_the_old_or_the_new_rack()
            throws IOException, WrongInputException, InterruptedException {
        killedEverywhere("settle", open, settled.books());
    }

    @Test
    void killed_while_it_takes_back_it_leaves_the_old_or_the_new_rack()
            throws IOException, WrongInputException, InterruptedException {
        killedEverywhere("unsettle", settled, open.books());
    }
}
