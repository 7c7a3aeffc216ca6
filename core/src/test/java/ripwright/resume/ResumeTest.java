package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.TestBlank;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;

/**
 * A board 3 3/4 in wide and 50 in long gives a strip of 2 in for two rails and one of 1 1/2 in for two cleats, with 1/8 in to
 * spare. What can go wrong with it.
 */
class ResumeTest {
    private static final Length THICK = in("3/4");
    private static final Job JOB = job(
            List.of(
                    Part.of("rail", in("20"), in("2"), THICK)
                            .count(2)
                            .together("rails")
                            .build(),
                    Part.of("cleat", in("20"), in("1 1/2"), THICK).count(2).build()),
            Board.measured("ash", "ash", THICK, in("3 3/4"), in("50")).build());
    private static final Plan PLAN = planned(JOB);
    private static final String WIDE = strip("2");
    private static final String NARROW = strip("1 1/2");

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    private static Job job(List<Part> parts, Board... stack) {
        return new JobBuilder("Shelf")
                .price("ash", new BigDecimal("6"))
                .salvage(new BigDecimal("0.5"))
                .stack(List.of(stack))
                .parts(parts)
                .build();
    }

    private static Plan planned(Job job) {
        return Planner.plan(job, Options.defaults().withMostRecuts(200));
    }

    private static String strip(String width) {
        return PLAN.boards().get(0).sections().get(0).strips().stream()
                .filter(strip -> strip.width().equals(in(width)))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** All steps up to the one that makes that piece. */
    private static List<Integer> until(String piece) {
        List<Integer> done = new ArrayList<>();
        for (Step step : PLAN.steps()) {
            done.add(step.n());
            if (step.makes().contains(piece)) return done;
        }
        throw new AssertionError(piece);
    }

    private static Report report(List<Integer> done, Change... changes) {
        return new Report("Shelf", done, List.of(changes), Optional.empty());
    }

    private static Resumed resumed(Report report) {
        Resumed resumed =
                new Resume(JOB, PLAN, report).planned(ResumeTest::planned).orElseThrow();
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
        Resumed rest = resume.planned(ResumeTest::planned).orElseThrow();
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
            Resumed next = resume.planned(ResumeTest::planned).orElseThrow();
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
        Resumed rest =
                new Resume(job, plan, report).planned(ResumeTest::planned).orElseThrow();
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
    void all_that_is_wrong_with_a_report_is_told_at_once() {
        int rip = PLAN.steps().stream()
                .filter(step -> step.does() == Does.RIP)
                .findFirst()
                .orElseThrow()
                .n();
        assertThatThrownBy(() ->
                        new Resume(JOB, PLAN, new Report("Bench", List.of(rip, 99, rip), List.of(), Optional.empty())))
                .isInstanceOf(WrongReportException.class)
                .hasMessage(String.join(
                        System.lineSeparator(),
                        "job: \"Bench\" is not the job of the plan, \"Shelf\".",
                        "done[1]: 99 is no step of this plan; its steps are 1 to "
                                + PLAN.steps().size() + ".",
                        "done[2]: step " + rip + " is listed twice; list it once.",
                        "done[0]: step " + rip
                                + " is done to ash/1 after step 1, which is not reported. Report it too, or leave"
                                + " step " + rip + " out."));
    }

    /** A test counts as done on both its blanks. One comes off each offcut; the breakdown of the second is not reported. */
    @Test
    void a_test_whose_second_blank_is_not_there_is_told() {
        Job job = new JobBuilder("Shelf")
                .testRip(new TestRip(in("12"), 2))
                .stack(JobBuilder.maple("ash", "2", "20"))
                .rack(List.of(offcut("t1"), offcut("t2")))
                .parts(JobBuilder.part("rail", 1, "20", "2"))
                .build();
        Plan plan = planned(job);
        Step test = plan.steps().stream()
                .filter(step -> step.does() == Does.TEST)
                .findFirst()
                .orElseThrow();
        String second = plan.testBlanks().stream()
                .map(TestBlank::id)
                .filter(blank -> !blank.equals(test.piece()))
                .findFirst()
                .orElseThrow();
        int maker = plan.steps().stream()
                .filter(step -> step.makes().contains(second))
                .findFirst()
                .orElseThrow()
                .n();
        List<Integer> done = new ArrayList<>();
        for (int n = 1; n <= test.n(); n++) if (n != maker) done.add(n);
        assertThatThrownBy(() -> new Resume(job, plan, report(done)))
                .hasMessage("done[" + (done.size() - 1) + "]: step " + test.n() + " is done to " + test.piece()
                        + " after step " + maker + ", which is not reported. Report it too, or leave step " + test.n()
                        + " out.");
    }

    private static Board offcut(String id) {
        return JobBuilder.maple(id, "3", "12").onRack(History.UNKNOWN).build();
    }

    @Test
    void pieces_that_are_not_there_are_told() {
        String blank = blankOf("rail");
        assertThatThrownBy(() -> new Resume(
                        JOB,
                        PLAN,
                        report(
                                until(WIDE),
                                new Change.Spoiled(blank),
                                new Change.Spoiled("S99"),
                                new Change.Width(WIDE, in("4")),
                                new Change.Wanted("stile", Optional.of(in("4")), Optional.empty()))))
                .hasMessage(String.join(
                        System.lineSeparator(),
                        "changes[0].piece: \"" + blank
                                + "\" is not in hand after the steps reported; report the step that makes it too.",
                        "changes[1].piece: \"S99\" is no piece of this plan.",
                        "changes[2].width: 4 in is more than the 2 in that were cut. Trim it, or leave it out.",
                        "changes[3].part: \"stile\" is no part of the bill."));
    }

    @Test
    void two_sizes_of_one_piece_or_part_are_told() {
        assertThatThrownBy(() -> new Resume(
                        JOB,
                        PLAN,
                        report(
                                until(WIDE),
                                new Change.Width(WIDE, in("1 7/8")),
                                new Change.Extent(WIDE, in("49")),
                                new Change.Width(WIDE, in("1 3/4")),
                                new Change.Extent(WIDE, in("48")),
                                new Change.Wanted("cleat", Optional.of(in("19")), Optional.empty()),
                                new Change.Wanted("cleat", Optional.empty(), Optional.of(in("1"))),
                                new Change.Wanted("cleat", Optional.of(in("18")), Optional.empty()))))
                .hasMessage(String.join(
                        System.lineSeparator(),
                        "changes[2].width: changes[0] says the width of \"" + WIDE
                                + "\" already; say it once, as it is now.",
                        "changes[3].length: changes[1] says the length of \"" + WIDE
                                + "\" already; say it once, as it is now.",
                        "changes[6].part: changes[4] says already how large \"cleat\" must be; say it once, as it is"
                                + " now."));
    }

    @Test
    void of_very_many_mistakes_the_message_holds_the_first() {
        List<Integer> often = Collections.nCopies(1_000_000, 1);
        assertThatThrownBy(() -> new Resume(JOB, PLAN, report(often))).satisfies(refused -> {
            assertThat(((WrongReportException) refused).problems()).hasSize(999_999);
            assertThat(String.valueOf(refused.getMessage()).lines())
                    .hasSize(101)
                    .startsWith("done[1]: step 1 is listed twice; list it once.")
                    .endsWith("and 999899 more");
        });
    }

    private static String blankOf(String part) {
        return PLAN.boards().get(0).sections().get(0).strips().stream()
                .flatMap(strip -> strip.blanks().stream())
                .filter(blank -> blank.part().equals(part))
                .findFirst()
                .orElseThrow()
                .id();
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
