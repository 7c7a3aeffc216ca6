package ripwright.runner.sheet.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.plan.Offcut;
import ripwright.plan.TestBlank;
import ripwright.runner.sheet.place.Piece.Fate;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.stock.Species;

class LeftoversTest {
    private static final long KERF = 3_000_000;
    private static final Leftovers.Clear NO_RAW_END = new Leftovers.Clear(0, Long.MAX_VALUE, List.of());

    @Test
    void an_offcut_lies_in_the_leftover_of_its_length() {
        assertThat(found(List.of(gap(0, 500), gap(800, 1_200)), 0, NO_RAW_END, 400L))
                .containsExactly(span(Fate.OFFCUT, "O1", 800, 1_200));
    }

    @Test
    void a_test_blank_is_cut_off_so_that_the_rest_is_the_offcut_listed() {
        assertThat(found(List.of(gap(0, 300), gap(800, 1_500)), 1, NO_RAW_END, 397L))
                .containsExactly(span(Fate.TEST_BLANK, "T1", 800, 1_100), span(Fate.OFFCUT, "O1", 1_103, 1_500));
    }

    @Test
    void a_test_blank_is_cut_from_behind_a_raw_end() {
        assertThat(found(List.of(gap(0, 1_500)), 1, new Leftovers.Clear(40_000_000, Long.MAX_VALUE, List.of())))
                .containsExactly(span(Fate.TEST_BLANK, "T1", 40, 340));
    }

    @Test
    void test_blanks_come_from_both_ends_when_the_offcut_fits_nowhere_else() {
        Leftovers leftovers = new Leftovers(
                List.of(gap(0, 1_000)),
                tests(2),
                List.of(offcut("O1", 394)),
                KERF,
                NO_RAW_END,
                (offcut, span) -> span.from() > 0 && span.to() < 1_000_000_000);

        assertThat(leftovers.found())
                .containsExactlyInAnyOrder(
                        span(Fate.TEST_BLANK, "T1", 0, 300),
                        span(Fate.TEST_BLANK, "T2", 700, 1_000),
                        span(Fate.OFFCUT, "O1", 303, 697));
    }

    @Test
    void a_test_blank_as_long_as_its_leftover_needs_no_cut() {
        assertThat(found(List.of(gap(0, 300)), 1, NO_RAW_END)).containsExactly(span(Fate.TEST_BLANK, "T1", 0, 300));
    }

    @Test
    void what_lies_nowhere_is_missing() {
        Leftovers leftovers = leftovers(List.of(gap(0, 250)), 1, NO_RAW_END, 249L);

        assertThat(leftovers.found()).isEmpty();
        assertThat(leftovers.missing()).containsExactly("T1", "O1");
    }

    private static List<Span> found(List<Span> gaps, int tests, Leftovers.Clear clear, Long... offcuts) {
        return leftovers(gaps, tests, clear, offcuts).found();
    }

    private static Leftovers leftovers(List<Span> gaps, int tests, Leftovers.Clear clear, Long... offcuts) {
        return new Leftovers(
                gaps,
                tests(tests),
                IntStream.rangeClosed(1, offcuts.length)
                        .mapToObj(i -> offcut("O" + i, offcuts[i - 1]))
                        .toList(),
                KERF,
                clear,
                (offcut, span) -> true);
    }

    private static Span gap(long from, long to) {
        return span(Fate.WASTE, "board", from, to);
    }

    private static Span span(Fate fate, String id, long from, long to) {
        return new Span(fate, id, from * 1_000_000, to * 1_000_000);
    }

    private static List<TestBlank> tests(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(LeftoversTest::test).toList();
    }

    private static TestBlank test(int number) {
        return new TestBlank(
                "T" + number,
                "board",
                TestBlank.Source.WASTE,
                Length.millimeters("80"),
                Length.millimeters("300"),
                Length.millimeters("20"),
                new Species("ash"),
                List.of());
    }

    private static Offcut offcut(String id, long millimeters) {
        Board piece = Board.measured(
                        id,
                        "ash",
                        Length.millimeters("20"),
                        Length.millimeters("80"),
                        Length.millimeters(Long.toString(millimeters)))
                .onRack(History.UNKNOWN)
                .build();
        return new Offcut("board", piece);
    }
}
