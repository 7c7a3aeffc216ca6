package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.SequenceInputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.json.tree.TextLimit;
import ripwright.plan.Plan;

class JobLinesTest {
    @TempDir
    private Path folder;

    private static Plan plan(Job job, Options options) {
        return switch (job.name()) {
            case "Short" -> Plans.strange();
            case "Faulty" -> throw new IllegalStateException("A strip came out wider than its section.");
            default -> Plans.cabinet();
        };
    }

    private static String line(String name) {
        return JobText.CABINET.replace("Cabinet", name).replace("\n", " ") + "\n";
    }

    private Shop shop(String given) {
        return new Shop(folder, JobLinesTest::plan, false, given);
    }

    @Test
    @Tag("locale")
    void every_line_is_answered_by_a_line_in_the_same_order() {
        Shop shop = shop(line("A") + "\r\n" + "{ \"format\": 1 }\n" + line("Short")
                + line("B").strip());
        assertThat(shop.run("plan", "-")).isEqualTo(2);
        assertThat(shop.out().lines())
                .satisfiesExactly(
                        a -> assertThat(a)
                                .startsWith("{ \"line\": 1, \"job\": \"Cabinet\", \"outcome\": \"complete\","
                                        + " \"exitCode\": 0, \"parts\": 2, \"wanted\": 2, \"net\": 14.37,")
                                .contains("\"plan\": { \"format\": 1, \"job\": \"Cabinet\", \"units\": \"in\"")
                                .endsWith("} }"),
                        bad -> assertThat(bad)
                                .startsWith("{ \"line\": 3, \"outcome\": \"bad input\", \"exitCode\": 2, \"mistakes\":"
                                        + " [{ \"file\": \"line 3\", \"path\": \"$.units\", \"line\": 1, \"column\": 1,"
                                        + " \"what\": \"missing."),
                        isShort ->
                                assertThat(isShort).startsWith("{ \"line\": 4,").contains("\"outcome\": \"short\""),
                        b -> assertThat(b).startsWith("{ \"line\": 5,"));
        assertThat(shop.err()).isEqualTo("4 jobs: 2 complete, 1 short, 1 bad input.\n");
        assertThat(shop.files()).isEmpty();
    }

    @Test
    void what_goes_out_is_plain_ascii_whatever_the_names_are() {
        Shop shop = shop(line("Short"));
        assertThat(shop.run("plan", "-")).isEqualTo(1);
        assertThat(shop.out()).matches("\\p{ASCII}+");
    }

    @Test
    void a_fault_of_ours_stops_no_other_line() {
        Shop shop = shop(line("Faulty") + line("A"));
        assertThat(shop.run("plan", "-")).isEqualTo(3);
        assertThat(shop.out().lines())
                .satisfiesExactly(
                        faulty -> assertThat(faulty)
                                .isEqualTo(
                                        "{ \"line\": 1, \"outcome\": \"fault\", \"exitCode\": 3, \"reason\":"
                                                + " \"java.lang.IllegalStateException: A strip came out wider than its section.\" }"),
                        a -> assertThat(a).startsWith("{ \"line\": 2, \"job\""));
        assertThat(shop.err()).startsWith("line 1:\nThis is a fault of Ripwright's, not yours.");
    }

    @Test
    @Timeout(60)
    void a_line_that_is_ready_first_waits_for_those_before_it() {
        CountDownLatch second = new CountDownLatch(1);
        String given = line("Slow") + line("Quick");
        Shop shop = new Shop(
                folder,
                (job, options) -> {
                    try {
                        if (job.name().equals("Slow")) second.await();
                        else second.countDown();
                    } catch (InterruptedException e) {
                        throw new IllegalStateException(e);
                    }
                    return Plans.cabinet();
                },
                false,
                given);
        assertThat(shop.run("plan", "-", "--at-once", "2")).isZero();
        assertThat(shop.out().lines().map(line -> line.substring(0, 11)))
                .containsExactly("{ \"line\": 1", "{ \"line\": 2");
    }

    @Test
    void nothing_given_is_no_job_and_no_mistake() {
        Shop shop = shop("");
        assertThat(shop.run("plan", "-")).isZero();
        assertThat(shop.out()).isEmpty();
        assertThat(shop.err()).isEqualTo("0 jobs.\n");
    }

    @Test
    void lines_and_files_do_not_mix_and_lines_write_no_files() throws IOException {
        Shop shop = shop(line("A"));
        shop.file("a.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "-", "FOLDER/a.job.json")).isEqualTo(2);
        assertThat(shop.run("plan", "-", "--out", "FOLDER/out")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                - stands alone: give either job files and folders, or - for lines.
                With - the plans go to standard output and nowhere else: leave out all options but --at-once and --verbose.
                """);
    }

    @Test
    void a_line_that_is_too_long_is_answered_as_bad_and_those_after_it_are_planned() {
        TextLimit limit = TextLimit.ofThisHeap();
        Shop shop = shop(line("A") + "x".repeat(limit.bytes() + 1) + "\n" + line("B"));
        assertThat(shop.run("plan", "-")).isEqualTo(2);
        assertThat(shop.out().lines())
                .satisfiesExactly(
                        a -> assertThat(a).startsWith("{ \"line\": 1, \"job\""),
                        bad -> assertThat(bad)
                                .isEqualTo("{ \"line\": 2, \"outcome\": \"bad input\", \"exitCode\": 2, \"mistakes\":"
                                        + " [{ \"file\": \"line 2\", \"path\": \"$\", \"what\": \""
                                        + limit.over("the line")
                                        + "\" }] }"),
                        b -> assertThat(b).startsWith("{ \"line\": 3, \"job\""));
        assertThat(shop.err()).isEqualTo("3 jobs: 2 complete, 1 bad input.\n");
    }

    @Test
    void a_heap_that_is_full_for_one_line_is_full_for_no_other() {
        AtomicInteger tries = new AtomicInteger();
        Shop shop = new Shop(
                folder,
                (job, options) -> {
                    if (!job.name().equals("Large")) return Plans.cabinet();
                    tries.incrementAndGet();
                    throw new OutOfMemoryError("Java heap space");
                },
                false,
                line("A") + line("Large") + line("B"));
        assertThat(shop.run("plan", "-")).isEqualTo(3);
        assertThat(shop.out().lines())
                .satisfiesExactly(
                        a -> assertThat(a).startsWith("{ \"line\": 1, \"job\""),
                        large -> assertThat(large)
                                .startsWith("{ \"line\": 2, \"outcome\": \"fault\", \"exitCode\": 3, \"reason\":"
                                        + " \"not enough memory: Java may use "),
                        b -> assertThat(b).startsWith("{ \"line\": 3, \"job\""));
        assertThat(tries).hasValue(2);
    }

    private int runOn(InputStream in, StringWriter out, StringWriter err) {
        Terminal terminal = new Terminal(in, new PrintWriter(out), new PrintWriter(err), false);
        return new Ripwright(terminal, "1.2.3", JobLinesTest::plan).run("plan", "-");
    }

    /** One good line, and then what {@code more} throws. */
    private static InputStream lineAndThen(Supplier<? extends IOException> more) {
        byte[] line = line("A").getBytes(StandardCharsets.UTF_8);
        return new SequenceInputStream(new ByteArrayInputStream(line), new InputStream() {
            @Override
            public int read() throws IOException {
                throw more.get();
            }

            @Override
            public int read(byte[] into, int at, int length) throws IOException {
                throw more.get();
            }
        });
    }

    @Test
    void the_death_of_the_thread_that_reads_is_not_taken_for_the_end_of_the_lines() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        InputStream deadly = lineAndThen(() -> {
            throw new StackOverflowError("in a library");
        });
        assertThat(runOn(deadly, out, err)).isEqualTo(3);
        assertThat(out.toString().lines()).hasSize(1);
        assertThat(err.toString())
                .startsWith("Reading ended early; lines after those answered may be left.\n")
                .contains("java.lang.StackOverflowError: in a library")
                .endsWith("1 job: 1 complete.\n");
    }

    @Test
    void standard_input_that_cannot_be_read_on_is_told() {
        StringWriter err = new StringWriter();
        assertThat(runOn(lineAndThen(() -> new IOException("Input/output error")), new StringWriter(), err))
                .isEqualTo(2);
        assertThat(err).hasToString("Standard input cannot be read: Input/output error.\n1 job: 1 complete.\n");
    }

    @Test
    @Timeout(60)
    void when_nobody_takes_the_lines_any_more_the_run_ends_although_more_could_come() {
        StringWriter err = new StringWriter();
        PrintWriter closed = new PrintWriter(new Writer() {
            @Override
            public void write(char[] text, int at, int length) throws IOException {
                throw new IOException("Broken pipe");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });
        byte[] line = line("A").getBytes(StandardCharsets.UTF_8);
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                throw new AssertionError("byte by byte");
            }

            @Override
            public int read(byte[] into, int at, int length) {
                System.arraycopy(line, 0, into, at, line.length);
                return line.length;
            }
        };
        Terminal terminal = new Terminal(endless, closed, new PrintWriter(err), false);
        assertThat(new Ripwright(terminal, "1.2.3", JobLinesTest::plan).run("plan", "-"))
                .isEqualTo(2);
        assertThat(err).hasToString("Nobody takes the plans any more: standard output is closed.\n");
    }
}
