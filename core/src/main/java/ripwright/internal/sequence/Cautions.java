package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import ripwright.bill.Part;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Caution;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;

/**
 * What to mind at the saws, few enough to be read. The first defers to those who know the saw; each other names the
 * steps it is about, or is about all.
 *
 * @see "Push stick under 150 mm, push block under 50 mm: a European table-saw manual's safety text; push stick under
 *     6 in wide or 12 in long: an American one, p. 21. Nothing under 12 in long: M. Adams, The 12 inch and 3 inch rules
 *     (2009). Out-feed support over 3 ft, hands 6 in clear, no crosscut against the fence, no cutoff trapped at the
 *     stop: saw manuals, a wood shop's rules, a magazine's miter-saw columns (2007-2008). A straight edge to the fence:
 *     an open woodworking textbook. Planers take about 12 in: a magazine. All shop practice, none of it a standard."
 */
public final class Cautions {
    private final Job job;
    private final PieceSizes sizes;
    private final List<Step> steps;
    private final List<Shortage> shortages;
    private final List<Caution> cautions = new ArrayList<>();

    Cautions(Job job, CutPieces cutting, TestPlan tests, List<Step> steps, List<Shortage> shortages) {
        this.job = job;
        this.sizes = new PieceSizes(cutting, tests);
        this.steps = steps;
        this.shortages = shortages;
        always();
        rips();
        milling();
        crosscuts();
        limits();
        outOfReach();
    }

    List<Caution> all() {
        return List.copyOf(cautions);
    }

    private void always() {
        if (steps.isEmpty()) return;
        say("The saws' manuals, local rules and licensed practice go before this plan and all cautions below.");
        if (steps.stream().anyMatch(Cautions::atRipSaw))
            say(
                    "Every rip: flat face down, a straight edge to the fence, guard and splitter on, the strip that is wanted"
                            + " between fence and blade.");
        say("Every crosscut: at the miter gauge or the stop, never against the rip fence; hands " + write(sixInches())
                + " from the blade; no cutoff between stop and blade; wait until the blade stands before clearing.");
    }

    private void rips() {
        about(
                step -> step.does() == Does.STRAIGHTEN,
                "The edge is not straight yet: carry the piece along the fence on a straight board or sled, not on its"
                        + " bare edge.");
        Length two = limit("2", "50");
        about(step -> fence(step, two, sixInches()), "Fence under " + write(sixInches()) + ": feed with a push stick.");
        about(
                step -> fence(step, Length.ZERO, two),
                "Fence under " + write(two) + ": feed with a push block, no hand between fence and blade.");
        about(
                step -> atRipSaw(step) && shorterThanAFoot(step),
                "The piece is under " + write(foot())
                        + " long, short for a rip: use a push block or a sled, and only if"
                        + " the saw's manual allows it.");
        Length threeFeet = limit("36", "900");
        about(
                step -> atRipSaw(step)
                        && sizes.length(step)
                                .filter(length -> length.exceeds(threeFeet))
                                .isPresent(),
                "The piece is over " + write(threeFeet) + " long: have out-feed support in place.");
    }

    private void milling() {
        about(
                step -> step.does() == Does.MILL && shorterThanAFoot(step),
                "The piece is under " + write(foot())
                        + " long, shorter than many planers take: see the planer's manual.");
    }

    private void crosscuts() {
        about(
                step -> step.does() == Does.BLANK && sizes.blanks(step).anyMatch(sixInches()::exceeds),
                "A blank under " + write(sixInches()) + ": clamp it or hold it down with a stick, hands stay clear.");
    }

    /** Only parts that are as small themselves are ever cut under the saws' limits. */
    private void limits() {
        job.saw()
                .narrowestRip()
                .ifPresent(narrowest -> about(
                        step -> step.does() == Does.RIP && sizes.strips(step).anyMatch(narrowest::exceeds),
                        "A strip narrower than the saw's limit of " + write(narrowest)
                                + ", as its part is: it comes last off its section; if the saw's manual does not allow it, rip"
                                + " it another way."));
        job.saw()
                .shortestCrosscut()
                .ifPresent(shortest -> about(
                        step -> step.does() == Does.BLANK && sizes.blanks(step).anyMatch(shortest::exceeds),
                        "A blank shorter than the saw's limit of " + write(shortest)
                                + ", as its part is: it comes last off its strip; clamp it, or cut it another way."));
    }

    private void outOfReach() {
        Optional<Length> longest = job.saw().longestRip();
        for (Shortage shortage : shortages)
            for (Part part : job.parts())
                if (part.name().equals(shortage.part())
                        && longest.filter(part.blankLength()::exceeds).isPresent())
                    say("No board makes \"" + part.name() + "\" here: its blank of " + write(part.blankLength())
                            + " is longer than the longest rip of " + write(longest.orElseThrow()) + ".");
    }

    private static boolean atRipSaw(Step step) {
        return step.saw().filter(Step.Saw.RIP::equals).isPresent();
    }

    private boolean fence(Step step, Length from, Length under) {
        return atRipSaw(step)
                && sizes.fence(step)
                        .filter(fence -> !from.exceeds(fence) && under.exceeds(fence))
                        .isPresent();
    }

    private boolean shorterThanAFoot(Step step) {
        return sizes.length(step).filter(foot()::exceeds).isPresent();
    }

    private Length sixInches() {
        return limit("6", "150");
    }

    private Length foot() {
        return limit("12", "300");
    }

    /** As sources in inches and in millimeters have it. */
    private Length limit(String inches, String millimeters) {
        return job.units() == Unit.INCH ? Length.inches(inches) : Length.millimeters(millimeters);
    }

    private String write(Length length) {
        return job.units().exact(length) + " " + job.units().symbol();
    }

    private void say(String text) {
        cautions.add(new Caution(List.of(), text));
    }

    private void about(Predicate<Step> which, String text) {
        List<Integer> numbers = steps.stream().filter(which).map(Step::n).toList();
        if (!numbers.isEmpty()) cautions.add(new Caution(numbers, text));
    }
}
