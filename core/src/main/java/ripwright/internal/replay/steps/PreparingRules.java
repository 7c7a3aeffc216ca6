package ripwright.internal.replay.steps;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.Words;
import ripwright.internal.replay.leftovers.Remains;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.plan.Step.Does;
import ripwright.plan.TestBlank;

/** The rules for what comes before ripping: rough wood is milled, then edges that need it are straightened. */
public final class PreparingRules {
    private static final String RULE = "5.steps";

    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final WhatIsLeft left;
    private final Findings findings;

    public PreparingRules(ReplayIndex pieces, StepIndex steps, WhatIsLeft left, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.left = left;
        this.findings = findings;
    }

    public void check() {
        for (PlacedSection section : pieces.sections()) {
            roughSectionsAreMilledFirst(section);
            edgesAreStraightenedBeforeRipping(section);
        }
        for (TestBlank blank : pieces.plan().testBlanks()) roughTestBlanksAreMilledFirst(blank);
        for (Remains remains : left.all()) remains.taken().forEach(this::onlyRoughEdgesAreStraightened);
        allStraighteningComesBeforeTheFirstSetting();
    }

    /** A section of a rough board is milled once, before anything else is done to it or its strips. */
    private void roughSectionsAreMilledFirst(PlacedSection section) {
        List<Integer> mills = steps.all(Does.MILL, section.id());
        int due = section.board().rough() ? 1 : 0;
        times(section.id(), "milled", mills.size(), due);
        if (mills.isEmpty() || due == 0) return;
        OptionalInt use = firstOf(
                steps.first(Does.STRAIGHTEN, section.id()),
                steps.first(Does.RIP, section.id()),
                steps.first(Does.TRIM, section.id()),
                firstCrosscutOfItsStrips(section));
        if (use.isPresent() && use.getAsInt() < mills.get(0))
            findings.add(
                    section.id(),
                    RULE,
                    steps.name(use.getAsInt()) + ", a "
                            + Words.of(steps.step(use.getAsInt()).does()) + ", comes before " + steps.name(mills.get(0))
                            + " mills it.");
    }

    private OptionalInt firstCrosscutOfItsStrips(PlacedSection section) {
        return section.strips().stream()
                .map(strip -> firstOf(
                        steps.first(Does.SQUARE, strip.id()),
                        steps.first(Does.BLANK, strip.id()),
                        steps.first(Does.TRIM, strip.id())))
                .flatMapToInt(OptionalInt::stream)
                .min();
    }

    private static OptionalInt firstOf(OptionalInt... places) {
        return IntStream.range(0, places.length)
                .mapToObj(i -> places[i])
                .flatMapToInt(OptionalInt::stream)
                .min();
    }

    private void times(String piece, String done, int times, int due) {
        if (times != due)
            findings.add(
                    piece, RULE, "it is " + done + " in " + Words.count(times, "step") + "; " + Words.due(due) + ".");
    }

    /** A section whose edge is not straight, or gives up wood, is straightened once, before its first rip. */
    private void edgesAreStraightenedBeforeRipping(PlacedSection section) {
        List<Integer> straightenings = steps.all(Does.STRAIGHTEN, section.id());
        boolean open = section.straightenedOrNot() && straightenings.size() <= 1;
        if (!open) times(section.id(), "straightened", straightenings.size(), section.straightened() ? 1 : 0);
        OptionalInt rip = steps.first(Does.RIP, section.id());
        if (!straightenings.isEmpty() && rip.isPresent() && rip.getAsInt() < straightenings.get(0))
            findings.add(
                    section.id(),
                    RULE,
                    steps.name(rip.getAsInt()) + " rips it before " + steps.name(straightenings.get(0))
                            + " straightens it.");
    }

    private void allStraighteningComesBeforeTheFirstSetting() {
        int firstSetting = IntStream.range(0, steps.size())
                .filter(i -> steps.step(i).does() == Does.TEST || steps.step(i).does() == Does.RIP)
                .findFirst()
                .orElse(steps.size());
        for (int i = firstSetting + 1; i < steps.size(); i++)
            if (steps.step(i).does() == Does.STRAIGHTEN)
                findings.add(
                        steps.step(i).piece(),
                        RULE,
                        steps.name(i) + " straightens it after " + steps.name(firstSetting)
                                + ", where the first setting begins; all straightening comes before.");
    }

    /** A test blank cut from a rough board is milled before it is tested; other test blanks are milled already. */
    private void roughTestBlanksAreMilledFirst(TestBlank blank) {
        boolean rough =
                pieces.board(blank.from()).map(board -> board.board().rough()).orElse(false);
        List<Integer> mills = steps.all(Does.MILL, blank.id());
        times(blank.id(), "milled", mills.size(), rough ? 1 : 0);
        if (mills.isEmpty() || !rough) return;
        OptionalInt test = blank.proves().stream()
                .flatMap(setting -> steps.testsOf(setting).stream())
                .mapToInt(Integer::intValue)
                .min();
        if (test.isPresent() && test.getAsInt() < mills.get(0))
            findings.add(
                    blank.id(),
                    RULE,
                    steps.name(test.getAsInt()) + " tests what it proves before " + steps.name(mills.get(0))
                            + " mills it.");
    }

    /** A test blank without a straight edge is straightened first; that may be a step, and is not counted. */
    private void onlyRoughEdgesAreStraightened(Remains.Taken taken) {
        int times = steps.all(Does.STRAIGHTEN, taken.blank().id()).size();
        if (taken.from().straightEdges() > 0) times(taken.blank().id(), "straightened", times, 0);
        else if (times > 1) times(taken.blank().id(), "straightened", times, 1);
    }
}
