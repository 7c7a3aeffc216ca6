package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ripwright.resume.Shelf.JOB;
import static ripwright.resume.Shelf.PLAN;
import static ripwright.resume.Shelf.WIDE;
import static ripwright.resume.Shelf.blankOf;
import static ripwright.resume.Shelf.in;
import static ripwright.resume.Shelf.planned;
import static ripwright.resume.Shelf.report;
import static ripwright.resume.Shelf.until;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.TestBlank;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;

/** What is wrong with a report, and how it is told. */
class WrongReportTest {
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
}
