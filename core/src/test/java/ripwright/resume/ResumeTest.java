package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.resume.Shelf.JOB;
import static ripwright.resume.Shelf.NARROW;
import static ripwright.resume.Shelf.PLAN;
import static ripwright.resume.Shelf.THICK;
import static ripwright.resume.Shelf.WIDE;
import static ripwright.resume.Shelf.blankOf;
import static ripwright.resume.Shelf.in;
import static ripwright.resume.Shelf.job;
import static ripwright.resume.Shelf.planned;
import static ripwright.resume.Shelf.report;
import static ripwright.resume.Shelf.until;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/** What can go wrong with the shelf, and what is made of the rest. */
class ResumeTest {
    private static Resumed resumed(Report report) {
        Resumed resumed = new Resume(JOB, PLAN, report).planned(Shelf::planned).orElseThrow();
        assertThat(ChainReplay.faults(JOB, PLAN, report, resumed)).isEmpty();
        return resumed;
    }

    private static Board board(Resumed resumed, String id) {
        return resumed.job().boards().stream()
                .filter(board -> board.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String shorts(Resumed resumed) {
        StringBuilder shorts = new StringBuilder();
        for (Shortage shortage : resumed.plan().shortages())
            shorts.append(shortage.count()).append(' ').append(shortage.part()).append('\n');
        return shorts.toString();
    }

    @Test
    void a_strip_ripped_narrow_gives_narrower_parts() {
        Resumed resumed =
                resumed(report(until(WIDE), new Change.Width(WIDE, in("1 7/8")), new Change.Spoiled("ash/1")));
        assertThat(resumed.plan().boards()).extracting(cut -> cut.board()).containsExactly(WIDE);
        assertThat(shorts(resumed)).isEqualTo("2 rail\n");
    }

    @Test
    void a_strip_of_the_right_width_is_not_ripped_again() {
        Resumed resumed = resumed(report(until(NARROW)));
        assertThat(board(resumed, WIDE).ripped()).isTrue();
        assertThat(board(resumed, NARROW).ripped()).isTrue();
        assertThat(resumed.plan().settings()).isEmpty();
        assertThat(shorts(resumed)).isEmpty();
    }

    @Test
    void the_rest_of_a_section_can_still_be_ripped() {
        Resumed resumed = resumed(report(until(WIDE)));
        Board rest = board(resumed, "ash/1");
        assertThat(rest.width()).isEqualTo(in("1 5/8")); // 3 3/4 - 2 - 1/8
        assertThat(rest.ripped()).isFalse();
        assertThat(shorts(resumed)).isEmpty();
    }

    @Test
    void a_strip_ripped_wide_took_it_from_the_rest_of_its_section() {
        Resumed resumed = resumed(report(until(WIDE), new Change.Width(WIDE, in("2 1/16"))));
        assertThat(board(resumed, "ash/1").width()).isEqualTo(in("1 9/16"));
        assertThat(board(resumed, WIDE).width()).isEqualTo(in("2 1/16"));
    }

    @Test
    void a_spoiled_blank_of_a_group_whose_board_is_used_up_is_lost() {
        String blank = blankOf("rail");
        Report report = report(until(blank), new Change.Spoiled(blank));
        assertThat(new Resume(JOB, PLAN, report).pieces())
                .filteredOn(SizeNow::made)
                .extracting(SizeNow::id)
                .doesNotContain(blank);
        assertThat(shorts(resumed(report))).isEqualTo("1 rail\n");
        assertThat(new Resume(JOB, PLAN, report).impossible()).containsExactly(Map.entry("rail", 1));
    }

    @Test
    void what_is_left_of_a_spoiled_blank_is_stock() {
        String blank = blankOf("rail");
        Resumed resumed = resumed(report(until(blank), new Change.Spoiled(blank), new Change.Extent(blank, in("15"))));
        assertThat(board(resumed, blank).length()).isEqualTo(in("15"));
    }

    @Test
    void a_knot_is_avoided_where_it_lies_in_the_board() {
        Defect knot = new Defect(in("1"), in("2"), in("1/2"), in("1"), "knot", Defect.Blocks.ALL);
        Resumed resumed = resumed(report(until(NARROW), new Change.Found(NARROW, knot)));
        assertThat(board(resumed, NARROW).defects()).containsExactly(knot);
    }

    @Test
    void parts_that_are_wanted_longer_are_cut_longer_and_those_made_stay() {
        Resumed resumed =
                resumed(report(until(NARROW), new Change.Wanted("cleat", Optional.of(in("24")), Optional.empty())));
        assertThat(resumed.job().parts())
                .filteredOn(part -> part.name().equals("cleat"))
                .extracting(Part::length)
                .containsExactly(in("24"));
        assertThat(shorts(resumed)).isEmpty();
    }

    @Test
    void parts_that_belong_together_stay_on_the_board_they_were_begun_on() {
        Job job = job(
                List.of(Part.of("rail", in("20"), in("2"), THICK)
                        .count(2)
                        .together("rails")
                        .build()),
                Board.measured("ash", "ash", THICK, in("2"), in("42")).build(),
                Board.measured("elm", "ash", THICK, in("8"), in("60")).build());
        Plan plan = planned(job);
        String blank = plan.boards()
                .get(0)
                .sections()
                .get(0)
                .strips()
                .get(0)
                .blanks()
                .get(1)
                .id();
        List<Integer> all = plan.steps().stream().map(Step::n).toList();
        Resume resume = new Resume(job, plan, report(all, new Change.Spoiled(blank)));
        assertThat(plan.boards()).extracting(cut -> cut.board()).containsExactly("ash");
        Resumed rest = resume.planned(Shelf::planned).orElseThrow();
        assertThat(rest.plan().boards()).isEmpty();
        assertThat(shorts(rest)).isEqualTo("1 rail\n");
        assertThat(resume.impossible()).containsExactly(Map.entry("rail", 1));
    }

    @Test
    void what_is_lost_is_short_through_every_later_report() {
        String blank = blankOf("rail");
        Resumed rest = resumed(report(until(blank), new Change.Spoiled(blank)));
        for (int times = 0; times < 3; times++) {
            Report nothing = new Report(rest.job().name(), List.of(), List.of(), Optional.empty());
            Resume resume = new Resume(rest.job(), rest.plan(), nothing);
            Resumed next = resume.planned(Shelf::planned).orElseThrow();
            assertThat(ChainReplay.faults(rest.job(), rest.plan(), nothing, next))
                    .isEmpty();
            assertThat(resume.impossible()).containsExactly(Map.entry("rail", 1));
            assertThat(shorts(next)).isEqualTo("1 rail\n");
            assertThat(next.plan().status()).isEqualTo(Plan.Status.SHORT);
            rest = next;
        }
    }

    /** The tall one no longer comes from the board it was planned on, so neither does the low one that could. */
    @Test
    void a_group_that_no_longer_fits_its_planned_board_is_let_go_as_a_whole() {
        Job job = job(
                List.of(
                        Part.of("tall", in("40"), in("2"), THICK)
                                .together("doors")
                                .build(),
                        Part.of("low", in("20"), in("3"), THICK)
                                .together("doors")
                                .build()),
                Board.measured("ash", "ash", THICK, in("5 1/8"), in("40")).build(),
                Board.measured("elm", "ash", THICK, in("6"), in("60")).build());
        Plan plan = planned(job);
        assertThat(plan.boards()).extracting(cut -> cut.board()).containsExactly("ash");
        String section = plan.boards().get(0).sections().get(0).id();
        Report report = report(List.of(1), new Change.Extent(section, in("39")));
        Resumed rest = new Resume(job, plan, report).planned(Shelf::planned).orElseThrow();
        assertThat(ChainReplay.faults(job, plan, report, rest)).isEmpty();
        assertThat(rest.plan().boards()).extracting(cut -> cut.board()).containsExactly("elm");
        assertThat(shorts(rest)).isEmpty();
    }

    @Test
    void what_is_spent_is_the_boards_opened() {
        Spent spent = new Resume(JOB, PLAN, report(until(WIDE))).spent();
        assertThat(spent.boards()).containsExactly("ash");
        assertThat(spent.stock().rounded()).isEqualByComparingTo("7.81"); // 3.75 x 50 / 144 x 6
    }

    @Test
    void a_chain_with_a_part_too_few_is_refused() {
        Report report = report(until(WIDE));
        Resumed good = resumed(report);
        List<Part> fewer = good.job().parts().stream()
                .map(part -> Part.of(part.name(), part.length(), part.width(), part.thickness())
                        .build())
                .toList();
        Job less = job(
                fewer, Board.measured("oak", "ash", THICK, in("4"), in("50")).build());
        Resumed bad = new Resumed(less, planned(less), Map.of());
        assertThat(ChainReplay.faults(JOB, PLAN, report, bad))
                .extracting(fault -> fault.rule())
                .contains("resume.bill", "resume.hand");
        assertThat(good.pieces()).containsOnlyKeys(WIDE, "ash/1");
    }
}
