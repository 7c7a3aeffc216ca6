package ripwright.settle;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;

/**
 * A job is begun: A1, A2#1 and the offcut R1 are opened; A2#2, A3 and R2 are whole. In hand are a section S1, which fits the
 * rail that is left, a piece K1 worth keeping, one that is not, and a test blank.
 */
class ResumedSettlingTest {
    private static final Board S1 =
            board("S1", "3", "24").price(BigDecimal.ZERO).build();
    private static final Board SLIVER =
            board("A1.1", "1", "6").price(BigDecimal.ZERO).build();
    private static final Board K1 =
            board("K1", "3 1/2", "20").onRack(inHand("R1")).build();
    private static final Board TEST_BLANK = board("T1", "3", "14")
            .defects(List.of(new Defect(
                    Length.ZERO,
                    Length.inches("14"),
                    Length.ZERO,
                    Length.inches("3"),
                    "test blank",
                    Defect.Blocks.ALL)))
            .onRack(inHand("A1"))
            .build();
    private static final Board R1 = board("R1", "5", "40").onRack(onRack()).build();
    private static final Board R2 = board("R2", "5", "12").onRack(onRack()).build();
    private static final Board OTHER = board("Z9", "5", "15").onRack(onRack()).build();
    private static final List<Board> STACK = List.of(
            board("A1", "6", "72").build(),
            board("A2#1", "5", "60").build(),
            board("A2#2", "5", "60").build(),
            board("A3", "7", "80").build());

    private static Board.Builder board(String id, String width, String length) {
        return Board.measured(id, "ash", Length.inches("3/4"), Length.inches(width), Length.inches(length));
    }

    private static History inHand(String board) {
        return new History(Optional.empty(), Optional.empty(), Optional.of("Bench"), Optional.of(board));
    }

    private static History onRack() {
        return new History(Optional.empty(), Optional.of("spring"), Optional.of("Stool"), Optional.of("9"));
    }

    private static Job job(String name, List<Board> stack, List<Board> rack, Part part) {
        return new JobBuilder(name)
                .price("ash", new BigDecimal("6"))
                .salvage(new BigDecimal("0.5"))
                .stack(stack)
                .rack(rack)
                .parts(List.of(part))
                .build();
    }

    private static Settling settling(String length, String width) {
        Part rail = JobBuilder.part("rail", 1, length, width).build();
        Job begun = job("Bench", STACK, List.of(R1, R2), rail);
        List<Board> stack = List.of(S1, SLIVER, board("A2.2", "5", "60").build(), STACK.get(3));
        Job resumed = job("Bench, resumed", stack, List.of(K1, TEST_BLANK, R2), rail);
        Plan plan = Planner.plan(resumed, Options.defaults().withMostRecuts(20));
        assertThat(plan.boards()).hasSize(1);
        Settling settling =
                Settling.resumed(begun, Set.of("A1", "A2#1", "R1", "A3"), resumed, plan, List.of(OTHER, R2, R1));
        assertThat(settling.missing()).isEmpty();
        assertThat(Replay.faults(settling.job(), plan)).isEmpty();
        return settling;
    }

    private static List<String> ids(List<Board> boards) {
        return boards.stream().map(Board::id).toList();
    }

    @Test
    void what_was_opened_before_leaves_with_what_the_rest_takes() {
        Settling settling = settling("23", "3");
        Settlement settlement = settling.settlement(Set.of(), "today");
        assertThat(ids(settlement.cut())).containsExactly("A1", "A2#1");
        assertThat(ids(settling.left())).containsExactly("A2#2", "A3");
        assertThat(settlement.taken()).containsExactly(new Settlement.Taken(2, R1));
        assertThat(ids(settlement.entered())).containsExactly("K1");
        assertThat(settlement.entered().get(0).history())
                .contains(
                        new History(Optional.of("K1"), Optional.of("today"), Optional.of("Bench"), Optional.of("R1")));
        assertThat(ids(settlement.settled(List.of(OTHER, R2, R1)))).containsExactly("Z9", "R2", "K1");
    }

    @Test
    void a_whole_board_that_the_rest_opens_leaves_too() {
        Settling settling = settling("58", "4 1/2");
        Settlement settlement = settling.settlement(Set.of(), "today");
        assertThat(ids(settlement.cut())).containsExactly("A1", "A2#1", "A2#2");
        assertThat(ids(settling.left())).containsExactly("A3");
    }

    @Test
    void an_offcut_that_was_opened_and_is_not_on_the_rack_is_missed() {
        Part rail = JobBuilder.part("rail", 1, "23", "3").build();
        Job begun = job("Bench", STACK, List.of(R1), rail);
        Job resumed = job("Bench, resumed", List.of(S1), List.of(), rail);
        Plan plan = Planner.plan(resumed, Options.defaults().withMostRecuts(20));
        assertThat(Settling.resumed(begun, Set.of("A1", "R1"), resumed, plan, List.of())
                        .missing())
                .containsExactly("R1");
    }
}
