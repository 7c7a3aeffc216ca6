package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ripwright.resume.Shelf.JOB;
import static ripwright.resume.Shelf.NARROW;
import static ripwright.resume.Shelf.PLAN;
import static ripwright.resume.Shelf.WIDE;
import static ripwright.resume.Shelf.blankOf;
import static ripwright.resume.Shelf.until;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** What is ticked inside a step is reported by piece. */
class MadePiecesTest {
    private static Report report(List<Integer> done, String... made) {
        return new Report("Shelf", done, List.of(made), List.of(), Optional.empty());
    }

    private static Resumed resumed(Report report) {
        Resumed resumed = new Resume(JOB, PLAN, report).planned(Shelf::planned).orElseThrow();
        assertThat(ChainReplay.faults(JOB, PLAN, report, resumed)).isEmpty();
        return resumed;
    }

    private static Step maker(String piece) {
        return PLAN.steps().stream()
                .filter(step -> step.makes().contains(piece))
                .findFirst()
                .orElseThrow();
    }

    private static List<Integer> before(String piece) {
        List<Integer> done = new ArrayList<>(until(piece));
        done.remove(Integer.valueOf(maker(piece).n()));
        return done;
    }

    @Test
    void a_blank_that_is_there_before_its_step_is_done_is_made() {
        String rail = blankOf("rail");
        Report report = report(before(rail), rail);
        assertThat(maker(rail).makes().size()).isGreaterThan(1);
        assertThat(new Resume(JOB, PLAN, report).made()).containsExactly(Map.entry("rail", 1));
        assertThat(resumed(report).plan().shortages()).isEmpty();
    }

    /** The rip, its setting, and a crosscut at break-down where one was due. */
    @Test
    void a_strip_that_is_there_counts_as_ripped_at_its_setting() {
        Resume whole = new Resume(JOB, PLAN, report(until(WIDE)));
        Resume byPiece = new Resume(JOB, PLAN, report(before(WIDE), WIDE));
        assertThat(byPiece.spent()).isEqualTo(whole.spent());
        assertThat(byPiece.pieces()).isEqualTo(whole.pieces());
    }

    @Test
    void all_that_is_wrong_with_pieces_reported_is_told_at_once() {
        String rail = blankOf("rail");
        List<Integer> done = List.of(1, maker(NARROW).n());
        int wide = maker(WIDE).n();
        int narrow = maker(NARROW).n();
        assertThatThrownBy(() -> new Resume(JOB, PLAN, report(done, NARROW, "S99", rail, rail, "ash")))
                .isInstanceOf(WrongReportException.class)
                .hasMessage(String.join(
                        System.lineSeparator(),
                        "made[0]: \"" + NARROW + "\" is made by step " + narrow
                                + ", which is done already; leave it out.",
                        "made[1]: \"S99\" is no piece of this plan.",
                        "made[3]: \"" + rail + "\" is listed twice; list it once.",
                        "made[4]: \"ash\" is made by no step of this plan; leave it out.",
                        "done[1]: step " + narrow + " is done to ash/1 after step " + wide
                                + ", which is not reported. Report it too, or leave step " + narrow + " out.",
                        "made[2]: \"" + rail + "\" comes from " + WIDE + ", which is not reported. Add \"" + WIDE
                                + "\" to made, or " + wide + " to done, or leave \"" + rail + "\" out."));
    }

    @Test
    void a_strip_needs_those_before_it_in_its_section() {
        int wide = maker(WIDE).n();
        assertThatThrownBy(() -> new Resume(JOB, PLAN, report(List.of(1), NARROW)))
                .hasMessage("made[0]: \"" + NARROW + "\" comes from ash/1 after " + WIDE
                        + ", which is not reported. Add \"" + WIDE + "\" to made, or " + wide + " to done, or leave \""
                        + NARROW + "\" out.");
        assertThat(resumed(report(List.of(1), WIDE, NARROW)).plan().shortages()).isEmpty();
    }

    @Test
    void a_change_may_name_a_piece_reported() {
        String rail = blankOf("rail");
        Report report =
                new Report("Shelf", before(rail), List.of(rail), List.of(new Change.Spoiled(rail)), Optional.empty());
        assertThat(new Resume(JOB, PLAN, report).made()).isEmpty();
    }

    @Test
    void a_strip_left_long_is_squared_before_a_blank_of_it_is_there() {
        Job job = JOB.toBuilder().breakdown(new Breakdown(Length.inches("1/2"))).build();
        Plan plan = Shelf.planned(job);
        Step square = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.SQUARE)
                .findFirst()
                .orElseThrow();
        String blank = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.BLANK && step.piece().equals(square.piece()))
                .findFirst()
                .orElseThrow()
                .makes()
                .get(0);
        List<Integer> done = new ArrayList<>();
        for (Step step : plan.steps()) if (step.does() != Step.Does.BLANK && step.n() != square.n()) done.add(step.n());
        assertThatThrownBy(() -> new Resume(job, plan, report(done, blank)))
                .hasMessage("made[0]: \"" + blank + "\" comes from " + square.piece() + " after step " + square.n()
                        + ", which is not reported. Add " + square.n() + " to done, or leave \"" + blank + "\" out.");
    }

    /** Half of the pieces of the step underway are there, of ten plans or more, left long. */
    @Test
    void reports_taken_in_the_middle_of_a_step_are_resumed_and_nothing_good_is_cut_again() {
        Seeds.each(16, 10, (random, size) -> {
            Job job = RandomJobs.growing(random, size).toBuilder()
                    .breakdown(new Breakdown(Length.inches("1/2")))
                    .build();
            Plan plan = Shelf.planned(job);
            List<Step> open = plan.steps().stream()
                    .filter(step -> step.makes().size() > 1)
                    .toList();
            if (open.isEmpty()) return false;
            Step underway = open.get(random.nextInt(open.size()));
            List<Integer> done = new ArrayList<>();
            for (Step step : plan.steps()) if (step.n() < underway.n()) done.add(step.n());
            List<String> made = underway.makes().subList(0, (underway.makes().size() + 1) / 2);
            Report report = new Report(job.name(), done, made, List.of(), Optional.empty());
            Resume resume = new Resume(job, plan, report);
            Set<String> there = new HashSet<>();
            for (SizeNow piece : resume.pieces()) there.add(piece.planned().name());
            assertThat(there).containsAll(made);
            Optional<Resumed> rest = resume.planned(Shelf::planned);
            if (rest.isEmpty()) return false;
            assertThat(ChainReplay.faults(job, plan, report, rest.get())).isEmpty();
            assertThat(shorts(rest.get().plan())).isEqualTo(shorts(plan));
            return true;
        });
    }

    private static Map<String, Integer> shorts(Plan plan) {
        Map<String, Integer> shorts = new TreeMap<>();
        plan.shortages().forEach(shortage -> shorts.put(shortage.part(), shortage.count()));
        return shorts;
    }
}
