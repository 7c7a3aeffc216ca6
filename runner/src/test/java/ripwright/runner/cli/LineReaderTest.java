package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.runner.cli.LineReader.Line;
import ripwright.runner.cli.LineReader.Read;

class LineReaderTest {
    private static final int MOST = 100_000; // more than is read at a time

    private static List<Line> lines(InputStream in) throws IOException {
        LineReader reader = new LineReader(in, MOST);
        List<Line> lines = new ArrayList<>();
        for (Optional<Line> line = reader.next(); line.isPresent(); line = reader.next()) lines.add(line.get());
        return lines;
    }

    private static List<Line> lines(String given) throws IOException {
        return lines(new ByteArrayInputStream(given.getBytes(StandardCharsets.UTF_8)));
    }

    private static String text(Line line) {
        return new String(line.bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void lines_are_what_line_feeds_end_and_the_last_one_needs_none() throws IOException {
        assertThat(lines("a\n\nb\rc\r\n\u0000d"))
                .extracting(LineReaderTest::text)
                .containsExactly("a", "", "b\rc\r", "\u0000d");
        assertThat(lines("a\n")).extracting(LineReaderTest::text).containsExactly("a");
        assertThat(lines("")).isEmpty();
    }

    @Test
    void a_line_may_have_the_most_and_not_one_byte_more() throws IOException {
        String most = "x".repeat(MOST);
        assertThat(lines(most + "\n" + most + "y\n" + "z"))
                .extracting(Line::number, LineReaderTest::text, Line::read)
                .containsExactly(tuple(1L, most, Read.WHOLE), tuple(2L, "", Read.TOO_LONG), tuple(3L, "z", Read.WHOLE));
    }

    @Test
    void a_line_of_many_pieces_is_whole_wherever_they_were_torn() throws IOException {
        String line = "0123456789".repeat(9_000);
        InputStream trickle = new ByteArrayInputStream((line + "\nend").getBytes(StandardCharsets.UTF_8)) {
            @Override
            public synchronized int read(byte[] into, int at, int length) {
                return super.read(into, at, Math.min(length, 7));
            }
        };
        assertThat(lines(trickle)).extracting(LineReaderTest::text).containsExactly(line, "end");
    }

    @Test
    void what_is_too_long_is_no_blank_line_although_nothing_of_it_is_held() throws IOException {
        List<Line> lines = lines(" ".repeat(MOST + 1) + "\n \t\r\n");
        assertThat(lines).extracting(Line::blank).containsExactly(false, true);
        assertThat(lines.get(0).bytes()).isEmpty();
    }

    @Test
    void the_end_is_asked_for_once_as_a_terminal_would_wait_for_more() throws IOException {
        int[] asked = {0};
        InputStream terminal = new InputStream() {
            @Override
            public int read() {
                throw new AssertionError("byte by byte");
            }

            @Override
            public int read(byte[] into, int at, int length) {
                if (asked[0]++ > 0) return -1;
                into[at] = 'a';
                return 1;
            }
        };
        assertThat(lines(terminal)).hasSize(1);
        assertThat(asked[0]).isEqualTo(2);
    }
}
