package ripwright.runner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every example in the help, typed into a shell as it stands there, in a folder that has the files it names. */
class HelpExamplesIT {
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin");
    private static final Pattern COMMAND = Pattern.compile("(?m)^ {2}([a-z]+) {2,}\\S");
    private static final Pattern EXAMPLE = Pattern.compile("(?m)^ {2}(java -jar ripwright\\.jar .*)$");

    @TempDir
    private Path folder;

    private Path here = Path.of("");

    /** A folder with all that the examples name: jobs, their plans, a report, lines of jobs. */
    @BeforeEach
    void fill() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
        here = Files.createDirectory(folder.resolve("shop"));
        Files.copy(RunnerJar.FILE, here.resolve("ripwright.jar"));
        said("java -jar ripwright.jar start .");
        String job = quick(here.resolve("shoe-rack.job.json"));
        String small = job.replace("Shoe rack", "Bench").replaceAll("\"count\": \\d+", "\"count\": 1");
        Files.writeString(here.resolve("lockers.job.json"), small.replace("Bench", "Lockers"));
        Files.writeString(here.resolve("bench.job.json"), small);
        Files.writeString(here.resolve("jobs.jsonl"), small.replaceAll("\\s*\\R\\s*", " ") + "\n");
        Files.writeString(
                here.resolve("today.report.json"),
                "{ \"format\": 1, \"job\": \"Lockers\", \"done\": [1], \"changes\": [] }\n");
        Files.copy(
                here.resolve("bench.job.json"),
                Files.createDirectory(here.resolve("jobs")).resolve("bench.job.json"));
        Files.copy(here.resolve("rack.json"), here.resolve("jobs/rack.json"));
        said("java -jar ripwright.jar plan lockers.job.json");
        said("java -jar ripwright.jar plan lockers.job.json --out plans");
    }

    /** Another folder with the same in it, so that no example sees what another one did. */
    private Path copy(int number) throws IOException {
        Path shop = folder.resolve("shop");
        Path copy = folder.resolve("shop" + number);
        try (Stream<Path> files = Files.walk(shop)) {
            for (Path file : (Iterable<Path>) files::iterator)
                if (file.endsWith("ripwright.jar")) Files.createLink(copy.resolve("ripwright.jar"), file);
                else Files.copy(file, copy.resolve(shop.relativize(file).toString()));
        }
        return copy;
    }

    /** The job there, with little time: every example plans it. */
    private static String quick(Path job) throws IOException {
        String quick = Files.readString(job).replace("\"seconds\": 5", "\"seconds\": 1");
        Files.writeString(job, quick);
        return quick;
    }

    private int typed(String line) throws IOException, InterruptedException {
        ProcessBuilder shell = new ProcessBuilder("/bin/sh", "-c", line)
                .directory(here.toFile())
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile());
        shell.environment().merge("PATH", JAVA.toString(), (old, java) -> java + ":" + old);
        return shell.start().waitFor();
    }

    private String out() throws IOException {
        return Files.readString(folder.resolve("out"));
    }

    private String said(String line) throws IOException, InterruptedException {
        assertThat(typed(line)).as(line).isZero();
        return out();
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> all = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) all.add(matcher.group(1));
        return all;
    }

    @Test
    void every_example_in_the_help_runs() throws IOException, InterruptedException {
        String top = said("java -jar ripwright.jar --help");
        List<String> commands = all(COMMAND, top.substring(top.indexOf("Commands:"), top.indexOf("The first five")));
        assertThat(commands).contains("plan", "replay", "trial", "start", "completion");
        Set<String> examples = new LinkedHashSet<>(all(EXAMPLE, top));
        for (String command : commands) {
            String help = said("java -jar ripwright.jar help " + command);
            if (!command.equals("help"))
                assertThat(all(EXAMPLE, help)).as(command).isNotEmpty();
            examples.addAll(all(EXAMPLE, help));
        }
        assertThat(examples).as("a longer line is broken in two").allMatch(example -> example.length() < 99);
        int number = 0;
        for (String example : examples) {
            here = copy(++number);
            if (example.contains(" first-job/")) {
                said("java -jar ripwright.jar start first-job");
                quick(here.resolve("first-job/shoe-rack.job.json"));
            }
            if (example.contains("first-job/shoe-rack.plan.json"))
                said("java -jar ripwright.jar plan first-job/shoe-rack.job.json");
            if (example.contains(" unsettle ")) said(example.replace("unsettle", "settle"));
            assertThat(typed(example))
                    .as(example + "\n" + Files.readString(folder.resolve("err")))
                    .isZero();
        }
    }

    @Test
    void the_completion_script_completes_commands_and_options_in_bash() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
        said("java -jar ripwright.jar completion > completion.sh");
        assertThat(completed("ripwright tr", 1)).containsExactly("trial");
        assertThat(completed("ripwright plan --ta", 2)).containsExactly("--tables");
        assertThat(completed("ripwright trial --wi", 2)).containsExactly("--widths");
    }

    private List<String> completed(String line, int word) throws IOException, InterruptedException {
        String script = "source ./completion.sh; COMP_WORDS=(" + line + "); COMP_CWORD=" + word + "; COMP_LINE='" + line
                + "'; COMP_POINT=" + line.length() + "; _complete_ripwright; printf '%s\\n' \"${COMPREPLY[@]}\"";
        Files.writeString(here.resolve("complete.sh"), script);
        return said("bash complete.sh").lines().map(String::strip).toList();
    }
}
