package ripwright.shared;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.Options;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.PrintedBound;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.search.Incumbent;
import ripwright.internal.sequence.Sequencer;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.replay.Replay;

/**
 * Takes the first job out of a plan for several: its blanks stay where they are, and the sections and strips that only
 * others need are not cut, so that they stay wood for them. A strip of another job that lies before one of the first job's
 * own is still ripped, and goes to the rack as it is.
 */
final class FirstJobOnly {
    private static final int MOST_QUESTIONS = 20_000; // of the bound, where no time is given

    private final Job job;
    private final Plan joint;
    private final Options options;
    private final Map<String, Integer> places = new HashMap<>(); // of boards

    FirstJobOnly(Job job, Plan joint, Options options) {
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
            Plan plan = new Sequencer(job, layouts, bound(layouts)).plan();
            return Replay.faults(job, plan).isEmpty() ? Optional.of(plan) : Optional.empty();
        } catch (NoTestWoodException e) {
            return Optional.empty();
        }
    }

    private Money bound(List<Layout> layouts) {
        JobNumbers numbers = new JobNumbers(job);
        @Nullable PricedLayout[] priced = new @Nullable PricedLayout[numbers.boards()];
        for (Layout layout : layouts) priced[layout.board()] = numbers.priced(layout);
        Incumbent made = Incumbent.of(numbers, priced);
        BooleanSupplier stop = stop();
        BooleanSupplier budget = new WorkBudget(stop, MOST_QUESTIONS);
        boolean all = made.blanks() == Arrays.stream(numbers.wanted()).sum();
        LowerBound bound = all
                ? LowerBound.ofWholeBill(numbers, budget, stop, raised -> {})
                : LowerBound.ofFeet(numbers, made.feet(), budget, stop);
        return new PrintedBound(job).of(bound.value());
    }

    /** At the end of the job's time, counted from now on, or when told to. */
    private BooleanSupplier stop() {
        long begun = System.nanoTime();
        double most = job.limits().seconds().map(BigDecimal::doubleValue).orElse(Double.POSITIVE_INFINITY);
        Thread planning = Thread.currentThread();
        return () -> options.cancellation().getAsBoolean()
                || planning.isInterrupted()
                || (System.nanoTime() - begun) / 1e9 > most;
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
