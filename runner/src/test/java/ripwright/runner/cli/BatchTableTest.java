package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ripwright.json.Plans;

class BatchTableTest {
    private static JobFile file(String name) {
        return JobFile.of(Path.of(name));
    }

    @Test
    @Tag("locale")
    void the_columns_line_up() {
        List<Result> results = List.of(
                Result.of(
                        file("lockers.job.json"),
                        Result.Ending.STANDS,
                        Figures.of(Plans.cabinet()),
                        Duration.ofSeconds(1)),
                Result.without(file("far/bench.json"), Result.Ending.FAULT, "x", Duration.ZERO),
                Result.of(file("a"), Result.Ending.CUT_SHORT, Figures.of(Plans.cabinet()), Duration.ofSeconds(1)),
                Result.notBegun(file("b")));
        assertThat(new BatchTable(results).text()).isEqualTo("""
                job         parts   cost  at least      gap   yield
                lockers    2 of 2  14.37     10.80  24.85 %  25.0 %  complete, planned before
                far/bench                                            a fault of Ripwright's
                a          2 of 2  14.37     10.80  24.85 %  25.0 %  interrupted, best plan so far
                b                                                    interrupted, not begun
                4 jobs: 1 complete, 1 fault, 2 interrupted; 1 of them planned before. Cost of all plans: 28.74.
                """);
    }

    @Test
    void the_processors_are_shared_out_and_none_twice() {
        assertThat(Share.of(2, 1_000, java.util.OptionalInt.empty())).isEqualTo(new Share(2, 1));
        assertThat(Share.of(2, 1, java.util.OptionalInt.empty())).isEqualTo(new Share(1, 2));
        assertThat(Share.of(8, 3, java.util.OptionalInt.empty())).isEqualTo(new Share(3, 2));
        assertThat(Share.of(2, 9, java.util.OptionalInt.of(5))).isEqualTo(new Share(5, 1));
        assertThat(Share.of(4, 9, java.util.OptionalInt.of(1))).isEqualTo(new Share(1, 4));
    }
}
