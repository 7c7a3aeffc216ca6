package ripwright;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Layout;
import ripwright.pattern.PricedLayout;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.replay.Replay;
import ripwright.sequence.NoTestWoodException;
import ripwright.sequence.Sequencer;
import ripwright.solve.Champion;
import ripwright.solve.Workers;

/**
 * Takes the first job out of a plan for several: its blanks stay where they are, and the sections and strips that only
 * others need are not cut, so that they stay wood for them. A strip of another job that lies before one of the first job's
 * own is still ripped, and goes to the rack as it is.
 */
final class FirstOut {
    private final Job job;
    private final Plan joint;
    private final Options options;
    private final Map<String, Integer> places = new HashMap<>(); // of boards

    FirstOut(Job job, Plan joint, Options options) {
        this.job = job;
        this.joint = joint;
        this.options = options;
        for (int i = 0; i < job.boards().size(); i++)
            places.put(job.boards().get(i).id(), i);
    }

    /** Its plan; empty when what is taken out does not stand for itself. */
    Optional<Plan> plan() {
        List<Layout> layouts = new ArrayList<>();
        for (CutBoard board : joint.boards()) {
            List<Layout.Section> sections = sections(board);
            if (!sections.isEmpty()) layouts.add(new Layout(places.getOrDefault(board.board(), 0), sections));
        }
        if (layouts.isEmpty()) return Optional.empty();
        try {
            Plan plan = new Sequencer(job, layouts, floor(layouts)).plan();
            return Replay.faults(job, plan).isEmpty() ? Optional.of(plan) : Optional.empty();
        } catch (NoTestWoodException e) {
            return Optional.empty();
        }
    }

    private Money floor(List<Layout> layouts) {
        JobNumbers numbers = new JobNumbers(job);
        @Nullable PricedLayout[] priced = new @Nullable PricedLayout[numbers.boards()];
        for (Layout layout : layouts) priced[layout.board()] = numbers.priced(layout);
        try (Workers workers = new Workers(1)) {
            Clock clock = new Clock(job, options, workers);
            Money floor = new Underneath(numbers, clock, options, workers).under(Champion.of(numbers, priced));
            clock.end();
            return floor;
        }
    }

    private List<Layout.Section> sections(CutBoard board) {
        List<Layout.Section> sections = new ArrayList<>();
        for (Section section : board.sections()) {
            List<Layout.Strip> strips = strips(section);
            if (!strips.isEmpty())
                sections.add(new Layout.Section(
                        section.from().nanometers(),
                        section.to().nanometers(),
                        section.referenceEdge(),
                        section.edgeLoss().nanometers(),
                        strips));
        }
        return sections;
    }

    /** Up to the last that holds a blank of the first job. */
    private List<Layout.Strip> strips(Section section) {
        List<Layout.Strip> strips = new ArrayList<>();
        int needed = 0;
        for (Strip strip : section.strips()) {
            List<Layout.Blank> blanks = blanks(strip);
            strips.add(new Layout.Strip(strip.width().nanometers(), blanks));
            if (!blanks.isEmpty()) needed = strips.size();
        }
        return needed == 0 ? Collections.emptyList() : strips.subList(0, needed);
    }

    private List<Layout.Blank> blanks(Strip strip) {
        List<Layout.Blank> blanks = new ArrayList<>();
        for (Blank blank : strip.blanks()) {
            OptionalInt part = JointJob.placeInFirst(blank.part());
            if (part.isPresent())
                blanks.add(new Layout.Blank(part.getAsInt(), blank.from().nanometers()));
        }
        return blanks;
    }
}
