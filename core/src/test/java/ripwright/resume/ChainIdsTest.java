package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.resume.Shelf.JOB;
import static ripwright.resume.Shelf.NARROW;
import static ripwright.resume.Shelf.PLAN;
import static ripwright.resume.Shelf.WIDE;
import static ripwright.resume.Shelf.blankOf;
import static ripwright.resume.Shelf.report;
import static ripwright.resume.Shelf.until;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ripwright.internal.meant.PlanRenamed;
import ripwright.internal.meant.PlannedPieces;
import ripwright.plan.Plan;
import ripwright.replay.Fault;

/** Labels printed once stay true. */
class ChainIdsTest {
    private static Resumed resumed(Report report) {
        return new Resume(JOB, PLAN, report).planned(Shelf::planned).orElseThrow();
    }

    private static List<String> blanks(Plan plan) {
        return List.copyOf(new TreeSet<>(plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .map(blank -> blank.id() + " " + blank.part())
                .toList()));
    }

    /** The section is in hand; its strips and their blanks are to be cut where they were to be before. */
    @Test
    void pieces_to_be_cut_in_the_same_place_keep_their_ids() {
        Resumed resumed = resumed(report(List.of(1)));
        assertThat(new PlannedPieces(resumed.job(), resumed.plan()).ids()).contains(WIDE, NARROW);
        assertThat(blanks(resumed.plan())).isEqualTo(blanks(PLAN));
    }

    @Test
    void a_blank_whose_label_lies_beside_it_is_called_so_after_the_next_stop_too() {
        Resumed once = resumed(report(List.of(1)));
        Report nothing = new Report(once.job().name(), List.of(), List.of(), java.util.Optional.empty());
        Resumed twice = new Resume(once.job(), once.plan(), nothing, once.ids())
                .planned(Shelf::planned)
                .orElseThrow();
        assertThat(ChainReplay.faults(once.job(), once.plan(), nothing, twice, once.ids()))
                .isEmpty();
        assertThat(blanks(twice.plan())).isEqualTo(blanks(PLAN));
    }

    @Test
    void strips_in_hand_are_boards_of_that_name_and_what_is_cut_from_them_is_called_otherwise() {
        Resumed resumed = resumed(report(until(NARROW)));
        assertThat(resumed.pieces()).containsKeys(WIDE, NARROW);
        assertThat(new PlannedPieces(resumed.job(), resumed.plan()).ids()).doesNotContain(WIDE, NARROW);
        assertThat(blanks(resumed.plan())).isEqualTo(blanks(PLAN));
    }

    @Test
    void an_id_that_means_another_piece_already_is_a_fault() {
        Report report = report(until(NARROW));
        Resumed resumed = resumed(report);
        String rail = blankOf("rail");
        String cleat = blankOf("cleat");
        Plan swapped = new PlanRenamed(Map.of(rail, cleat, cleat, rail)).of(resumed.plan());
        assertThat(ChainReplay.faults(JOB, PLAN, report, new Resumed(resumed.job(), swapped, resumed.pieces())))
                .extracting(Fault::message)
                .containsExactlyInAnyOrder(
                        cleat + ": it was to be called " + rail + " before. [resume.ids]",
                        rail + ": it was to be called " + cleat + " before. [resume.ids]");
        Plan other = new PlanRenamed(Map.of(rail, "X1")).of(resumed.plan());
        assertThat(ChainReplay.faults(JOB, PLAN, report, new Resumed(resumed.job(), other, resumed.pieces())))
                .extracting(Fault::message)
                .containsExactly("X1: it was to be called " + rail + " before. [resume.ids]");
    }
}
