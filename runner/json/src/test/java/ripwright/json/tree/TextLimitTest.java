package ripwright.json.tree;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextLimitTest {
    private static TextLimit limit(int megabytes) {
        return new TextLimit((long) megabytes << 20);
    }

    @Test
    void a_text_may_be_a_twentieth_of_the_heap_in_whole_megabytes_and_64_at_the_most() {
        assertThat(limit(128).bytes()).isEqualTo(6 << 20);
        assertThat(limit(512).bytes()).isEqualTo(25 << 20);
        assertThat(limit(1279).bytes()).isEqualTo(63 << 20);
        assertThat(limit(1280).bytes()).isEqualTo(64 << 20);
        assertThat(limit(1 << 20).bytes()).isEqualTo(64 << 20);
    }

    @Test
    void however_small_the_heap_is_a_megabyte_is_read() {
        assertThat(limit(8).bytes()).isEqualTo(1 << 20);
    }

    @Test
    void the_longest_text_fits_what_is_there_for_reading() {
        TextLimit limit = limit(128);
        assertThat(limit.taken(limit.bytes())).isLessThanOrEqualTo(limit.forReading());
    }

    @Test
    void what_is_too_long_is_told_with_the_limit_and_what_it_comes_from() {
        assertThat(limit(128).over("the line"))
                .isEqualTo("the line is over 6 MB, the most that is read where Java may use 128 MB."
                        + " Let it use more, as in java -Xmx2g.");
        assertThat(limit(4096).over("the file")).isEqualTo("the file is over 64 MB; the largest job has fewer.");
        assertThat(limit(128).overValues())
                .startsWith("over 524,288 values in one file, the most that is read where Java may use 128 MB.");
        assertThat(limit(4096).overValues())
                .isEqualTo("over 4,000,000 values in one file; the largest job or plan has fewer.");
    }
}
