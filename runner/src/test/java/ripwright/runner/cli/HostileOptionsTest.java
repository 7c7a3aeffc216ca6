package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.Planner;
import ripwright.json.tree.WrongInputException;
import ripwright.runner.rack.ShopFolder;

/** Whatever stands on the command line, nothing of it is a fault of ours. */
@Timeout(60)
class HostileOptionsTest {
    private static final List<String> WORDS = List.of(
            "",
            " ",
            "x".repeat(300),
            "x".repeat(5_000),
            "\t",
            "a\nb",
            "\u0007",
            "\u001b[31m",
            "-1",
            "0",
            "0.5",
            "99999999999999999999",
            "1e999999999",
            "3".repeat(100_000),
            "NaN",
            "-Infinity",
            "-",
            "--",
            "-x",
            "--unknown",
            "#",
            "%s%n%d",
            "@FOLDER/coats.job.json",
            "@@",
            "\u00e4",
            "\ud83e\udeb5",
            "\ud800",
            "<b>&\"'",
            "C:\\x",
            ",",
            ", ,",
            "1/0",
            "1 1/2 in, 2 yards",
            "$HOME `id`");

    /** Paths; what is made is made in the folder. */
    private static final List<String> PATHS = List.of(
            "",
            "a\u0000b",
            "FOLDER",
            "FOLDER/none",
            "FOLDER/coats.job.json",
            "FOLDER/coats.plan.json",
            "FOLDER/coats.report.json",
            "FOLDER/rack.json",
            "FOLDER/coats.job.json/none",
            "FOLDER/stack.csv",
            "FOLDER/empty",
            "FOLDER/folder.json",
            "FOLDER/round",
            "FOLDER/pipe",
            "FOLDER/" + "long/".repeat(1_000),
            "FOLDER/" + "x".repeat(300),
            "FOLDER/ ",
            "FOLDER/a\nb\u001b[31m",
            "FOLDER/\u00e4 <b>&\"' \ud83e\udeb5",
            "FOLDER/device");

    @TempDir
    private static Path folder;

    private static ShopFolder shop;
    private static Path pipe; // where the system has some
    private static int copies;

    @BeforeAll
    static void plan() throws IOException, WrongInputException {
        String quick = ShopFolder.JOB.replace("\"salvage\"", "\"limits\": { \"seconds\": 0.02 }, \"salvage\"");
        pipe = folder.resolve("pipe");
        shop = ShopFolder.planned(folder.resolve("shop"), ShopFolder.RACK, quick);
    }

    /** A command with a hole for a value. */
    static Stream<List<String>> commands() {
        return Stream.of(
                        "",
                        "help",
                        "completion",
                        "plan FOLDER/coats.job.json --at-once",
                        "plan - --at-once",
                        "settle FOLDER/coats.plan.json --rack FOLDER/rack.json --day",
                        "trial FOLDER/coats.job.json --widths 2 --part",
                        "trial FOLDER/coats.job.json --part rail --widths")
                .map(command -> List.of(command.split(" ")));
    }

    static Stream<List<String>> commandsWithPaths() {
        return Stream.of(
                        "plan",
                        "plan FOLDER/coats.job.json",
                        "plan FOLDER/coats.job.json --out",
                        "plan FOLDER/coats.job.json --report",
                        "plan FOLDER/coats.job.json --stack",
                        "plan FOLDER/coats.job.json --parts",
                        "plan --together FOLDER/coats.job.json",
                        "replay",
                        "replay FOLDER/coats.job.json",
                        "replay FOLDER/coats.job.json FOLDER/coats.plan.json --stack",
                        "replay FOLDER/coats.job.json FOLDER/coats.plan.json --bill",
                        "resume FOLDER/coats.plan.json",
                        "resume FOLDER/coats.plan.json FOLDER/coats.report.json --job",
                        "resume FOLDER/coats.plan.json FOLDER/coats.report.json --out",
                        "settle --rack FOLDER/rack.json",
                        "settle FOLDER/coats.plan.json --rack",
                        "settle FOLDER/coats.plan.json --rack FOLDER/rack.json --job",
                        "unsettle --rack FOLDER/rack.json",
                        "unsettle FOLDER/coats.plan.json --rack",
                        "trial --part rail --widths 2",
                        "trial FOLDER/coats.job.json --part rail --widths 2 --json --out",
                        "trial FOLDER/coats.job.json --part rail --widths 2 --stack",
                        "start")
                .map(command -> List.of(command.split(" ")));
    }

    /** A copy of the shop with a report, and with files that are none. */
    private static Path copy() throws IOException, InterruptedException {
        Path copy = folder.resolve("copy" + copies++);
        shop.copy(copy);
        Files.writeString(
                copy.resolve("coats.report.json"),
                "{ \"format\": 1, \"job\": \"Coat rack\", \"done\": [], \"changes\": [] }");
        Files.writeString(
                copy.resolve("stack.csv"), "id,species,thickness,width,length,straight edges\nA1,ash,0.75,6,72,2\n");
        Files.writeString(copy.resolve("empty"), "");
        Files.createDirectory(copy.resolve("folder.json"));
        Files.createSymbolicLink(copy.resolve("round"), copy.resolve("round"));
        Files.createSymbolicLink(
                copy.resolve("device"), Path.of("/dev/full")); // a link, as what fails may write over it
        if (Files.notExists(pipe))
            new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
        if (Files.exists(pipe)) Files.createLink(copy.resolve("pipe"), pipe);
        return copy;
    }

    private static void assertThatNoneIsAFaultOfOurs(List<String> command, List<String> values)
            throws IOException, InterruptedException {
        List<String> faults = new ArrayList<>();
        for (String value : values) {
            Shop there = new Shop(copy(), Planner::plan);
            List<String> line = new ArrayList<>(command);
            line.add(value);
            if (command.equals(List.of(""))) line.remove(0);
            int exit = there.run(line.toArray(String[]::new));
            boolean told = exit != 2 || !there.err().isBlank();
            if (exit < 0 || exit > 2 || !told || there.err().contains("\tat "))
                faults.add(shortened(line.toString()) + ": exit " + exit + ", " + shortened(there.err()));
        }
        assertThat(faults).isEmpty();
    }

    private static String shortened(String text) {
        return text.substring(0, Math.min(700, text.length()));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void no_word_is(List<String> command) throws IOException, InterruptedException {
        assertThatNoneIsAFaultOfOurs(command, WORDS);
    }

    @ParameterizedTest
    @MethodSource("commandsWithPaths")
    void no_path_is(List<String> command) throws IOException, InterruptedException {
        assertThatNoneIsAFaultOfOurs(command, PATHS);
    }
}
