package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.runner.RunnerJar;

/**
 * Good lines with bad ones between them, in a heap of 128 MB: every line is answered, in order, and no bad one costs a good
 * one its plan. {@code -Dripwright.lines=1000} makes it as many good lines.
 */
class HostileLinesIT {
    private static final int GOOD = Integer.getInteger("ripwright.lines", 20);
    private static final int MEGABYTE = 1 << 20;

    @TempDir
    private static Path folder;

    private static List<String> answers = List.of();
    private static int exit;

    /** Lines that cannot be planned, each made when it is needed. */
    private static final List<Supplier<String>> HOSTILE = List.of(
            () -> job().replace("\"format\"", "\"note\": \"" + "x".repeat(50 * MEGABYTE) + "\", \"format\""),
            () -> withParts("0,".repeat(1_500_000)),
            () -> withParts("{\"a\":{}},".repeat(500_000)),
            () -> withParts("{\"nme\":1},".repeat(100_000)),
            () -> job().replaceFirst("\\{", "{" + fields(400_000)),
            () -> job().replaceFirst("\\{", "{" + "\"a\":0,".repeat(300_000)),
            () -> "[".repeat(1_000_000),
            () -> "{\"a\":".repeat(1_000_000),
            () -> job().replace("\"salvage\": 0.4", "\"salvage\": 1e999999999"),
            () -> job().replace("\"salvage\": 0.4", "\"salvage\": 0." + "3".repeat(1_000_000)),
            () -> job().replace("part 1", "\u20ac".repeat(MEGABYTE)),
            () -> job().replace("1/8", "1 ".repeat(MEGABYTE)),
            () -> "\0".repeat(MEGABYTE),
            () -> "\r".repeat(3 * MEGABYTE) + "x",
            () -> job().replace("\"stack\"", "\uFEFF\"stack\""), // a byte-order mark where no file begins
            () -> job().replace("part 1", "\\ud800")); // half of a character

    private static String job() {
        return ManyJobs.job(1);
    }

    private static String withParts(String more) {
        return job().replaceFirst("\"parts\": \\[", "\"parts\": [" + more);
    }

    private static String fields(int count) {
        StringBuilder fields = new StringBuilder();
        for (int i = 0; i < count; i++) fields.append("\"k").append(i).append("\":0,");
        return fields.toString();
    }

    @BeforeAll
    static void planThemAll() throws IOException, InterruptedException {
        Path lines = folder.resolve("jobs.jsonl");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(lines))) {
            for (int i = 0; i < GOOD; i++) {
                String hostile = HOSTILE.get(i % HOSTILE.size()).get();
                out.write(hostile.getBytes(i % 7 == 3 ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8));
                out.write('\n');
                if (i % 2 == 0) out.write(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}); // files put end to end
                out.write(ManyJobs.job(i + 1).getBytes(StandardCharsets.UTF_8));
                if (i < GOOD - 1) out.write('\n'); // and no line break at the end of the last one
            }
        }
        exit = new RunnerJar(folder)
                .start(List.of("-Xmx128m"), ProcessBuilder.Redirect.from(lines.toFile()), "plan", "-")
                .waitFor();
        answers = Files.readAllLines(folder.resolve("out"));
    }

    private static Stream<String> answers(int first) {
        return IntStream.iterate(first, i -> i < answers.size(), i -> i + 2).mapToObj(answers::get);
    }

    @Test
    void every_line_is_answered_in_order() {
        assertThat(answers).hasSize(2 * GOOD);
        for (int i = 0; i < answers.size(); i++) assertThat(answers.get(i)).startsWith("{ \"line\": " + (i + 1) + ", ");
    }

    @Test
    void every_good_line_is_planned() {
        assertThat(answers(1))
                .allSatisfy(answer -> assertThat(answer)
                        .containsAnyOf(
                                "\"outcome\": \"complete\", \"exitCode\": 0,",
                                "\"outcome\": \"short\", \"exitCode\": 1,")
                        .contains("\"plan\": { "));
    }

    @Test
    void every_bad_line_is_told_what_is_wrong_in_few_words() {
        assertThat(exit).isEqualTo(2);
        assertThat(answers(0))
                .allSatisfy(answer -> assertThat(answer)
                        .contains("\"outcome\": \"bad input\", \"exitCode\": 2, \"mistakes\": [{ \"file\": \"line ")
                        .hasSizeLessThan(300_000));
    }

    @Test
    void fifty_megabytes_are_told_the_limit() {
        assertThat(answers.get(0))
                .isEqualTo(
                        "{ \"line\": 1, \"outcome\": \"bad input\", \"exitCode\": 2, \"mistakes\": [{ \"file\": \"line 1\","
                                + " \"path\": \"$\", \"what\": \"the line is over 6 MB, the most that is read where Java may use 128 MB."
                                + " Let it use more, as in java -Xmx2g.\" }] }");
    }
}
