package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class PiecesTest {
    @Test
    void text_is_whole_although_the_heap_was_full_in_the_middle_of_it() {
        StringWriter written = new StringWriter();
        int[] asked = {0};
        PrintWriter out = new PrintWriter(written) {
            @Override
            public void write(String text, int at, int length) {
                if (++asked[0] == 2) throw new OutOfMemoryError("Java heap space");
                super.write(text, at, length);
            }
        };
        String text = "0123456789".repeat(3_000);
        new Pieces(out).write(text);
        assertThat(written).hasToString(text);
        assertThat(asked[0]).isGreaterThan(3);
    }
}
