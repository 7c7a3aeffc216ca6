package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.replay.Fault;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.testing.JobBuilder;

/**
 * A board 3 3/4 in wide and 50 in long; a strip of 2 in for two rails is ripped off, 1 5/8 in are left beside it for two
 * cleats. Its rest as it is, and spoiled in one thing each.
 */
class MeasureCheckTest {
    private static final Job JOB = new JobBuilder("shelf")
            .stack(JobBuilder.maple("board", "3 3/4", "50"))
            .parts(JobBuilder.part("rail", 2, "24 7/8", "2"), JobBuilder.part("cleat", 2, "24 7/8", "1 1/2"))
            .build();
    private static final Plan PLAN = Planner.plan(JOB, Options.defaults().withMostRecuts(200));
    private static final Section SECTION = PLAN.boards().get(0).sections().get(0);
    private static final String STRIP = SECTION.strips().get(0).id();
    private static final Resume RESUME = ripped();
    private static final Job REST = rest();

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    private static Resume ripped(Change... changes) {
        List<Integer> done = new ArrayList<>();
        for (Step step : PLAN.steps()) {
            done.add(step.n());
            if (step.makes().contains(STRIP)) break;
        }
        return new Resume(JOB, PLAN, new Report("shelf", done, List.of(changes), Optional.empty()));
    }

    private static Job rest() {
        Job[] rest = new Job[1];
        RESUME.planned(left -> {
            rest[0] = left;
            return Planner.plan(left, Options.defaults().withMostRecuts(20));
        });
        return rest[0];
    }

    private static List<String> faults(List<Board> boards) {
        List<Fault> faults = new ArrayList<>();
        List<Board> rack = boards.stream().filter(Board::fromRack).toList();
        List<Board> stack = boards.stream().filter(board -> !board.fromRack()).toList();
        Job rest = JobBuilder.of(REST, stack, rack).price("ash", BigDecimal.ONE).build();
        new MeasureCheck(JOB, RESUME, rest, faults).check();
        return faults.stream().map(Fault::toString).toList();
    }

    /** The strip told otherwise than it is. */
    private static List<String> told(UnaryOperator<Board.Builder> otherwise) {
        List<Board> stack = new ArrayList<>();
        for (Board board : REST.boards())
            stack.add(
                    board.id().equals(STRIP)
                            ? otherwise.apply(board.toBuilder()).build()
                            : board);
        return faults(stack);
    }

    private static String strip(String fault) {
        return STRIP + ": " + fault + " [resume.hand]";
    }

    @Test
    void the_rest_as_it_is_has_no_fault() {
        assertThat(REST.boards()).hasSize(2);
        assertThat(faults(REST.boards())).isEmpty();
    }

    @Test
    void a_piece_told_larger_or_smaller_than_it_is_is_refused() {
        String fault = strip("it is listed in another size than it has.");
        assertThat(told(strip -> strip.length(in("50 1/64")))).containsExactly(fault);
        assertThat(told(strip -> strip.length(in("49 63/64")))).containsExactly(fault);
        assertThat(told(strip -> strip.ripped(false).width(in("2 1/64"), in("2 1/64"))))
                .containsExactly(fault);
        assertThat(told(strip -> strip.ripped(false).width(in("2"), in("1 63/64"))))
                .containsExactly(fault);
    }

    @Test
    void a_piece_told_thicker_or_of_other_wood_is_refused() {
        assertThat(told(strip -> strip.rough(in("1"), JobBuilder.THICKNESS)))
                .containsExactly(strip("it is listed in another thickness than it has."));
        assertThat(told(strip -> Board.measured(STRIP, "ash", JobBuilder.THICKNESS, in("2"), in("50"))
                        .edges(2, Length.ZERO, Length.ZERO)))
                .containsExactly(strip("it is listed as ash."));
    }

    @Test
    void a_piece_that_is_not_listed_or_not_in_hand_is_told() {
        List<Board> stack = new ArrayList<>(REST.boards());
        stack.removeIf(board -> board.id().equals(STRIP));
        assertThat(faults(stack)).containsExactly(strip("it is in hand, and not listed."));
        stack = new ArrayList<>(REST.boards());
        stack.add(JobBuilder.maple("board", "3 3/4", "50").build());
        assertThat(faults(stack)).containsExactly("board: it is not in hand. [resume.hand]");
    }

    /** A rail in the strip, laid back from {@code x} in a section that rides on its left edge. */
    private static List<String> laidBack(Resume resume, String x, String length, String width) {
        List<Fault> faults = new ArrayList<>();
        MeasureCheck check = new MeasureCheck(JOB, resume, REST, faults);
        Blank blank = new Blank("B1", "rail", in(x), in(length));
        Strip strip = new Strip("T1", Length.ZERO, in(width), Optional.empty(), List.of(blank));
        Section section = new Section("N1", Length.ZERO, in("50"), Edge.LEFT, Length.ZERO, List.of(strip));
        SizeNow piece = check.piece(STRIP).orElseThrow();
        check.layBack(piece, section, strip, blank, JOB.parts().get(0));
        return faults.stream().map(Fault::toString).toList();
    }

    @Test
    void a_blank_that_reaches_beyond_its_piece_is_refused() {
        String fault = "B1: it does not lie in " + STRIP + ". [resume.hand]";
        assertThat(laidBack(RESUME, "25 1/8", "24 7/8", "2")).isEmpty();
        assertThat(laidBack(RESUME, "25 9/64", "24 7/8", "2")).containsExactly(fault);
        assertThat(laidBack(RESUME, "25 1/8", "24 7/8", "2 1/64")).containsExactly(fault);
    }

    @Test
    void a_blank_on_a_knot_that_was_found_is_refused_and_beside_it_not() {
        Defect knot = new Defect(in("10"), in("12"), in("1"), in("2"), "knot", Defect.Blocks.ALL);
        Resume knotty = ripped(new Change.Found(STRIP, knot));
        String fault = "B1: in board board it lies on a knot. [resume.hand]";
        assertThat(laidBack(knotty, "0", "10", "2")).isEmpty();
        assertThat(laidBack(knotty, "12", "24 7/8", "2")).isEmpty();
        assertThat(laidBack(knotty, "0", "24 7/8", "1")).isEmpty();
        assertThat(laidBack(knotty, "11 63/64", "24 7/8", "2")).containsExactly(fault);
        assertThat(laidBack(knotty, "0", "10 1/64", "2")).containsExactly(fault);
        assertThat(laidBack(knotty, "0", "24 7/8", "1 1/64")).containsExactly(fault);
    }
}
