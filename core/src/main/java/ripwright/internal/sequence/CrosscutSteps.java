package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import ripwright.bill.Part;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.SectionCut;
import ripwright.internal.pieces.StripCut;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.plan.Blank;

/**
 * The crosscuts: blanks stop by stop from the longest, then those of fitted parts, one at a time in the order of the
 * bill, then what is trimmed of strips that carry no blank.
 */
public final class CrosscutSteps {
    private final Job job;
    private final CutPieces cutting;
    private final TestPlan tests;
    private final ListedOffcuts offcuts;
    private final StepList steps;
    private final Map<String, Integer> toCut = new HashMap<>();

    CrosscutSteps(Job job, CutPieces cutting, TestPlan tests, ListedOffcuts offcuts, StepList steps) {
        this.job = job;
        this.cutting = cutting;
        this.tests = tests;
        this.offcuts = offcuts;
        this.steps = steps;
    }

    private record FittedBlank(SectionCut section, StripCut strip, int blank) {}

    void write() {
        SortedMap<Length, Map<StripCut, List<String>>> stops = new TreeMap<>(Comparator.reverseOrder());
        List<FittedBlank> fitted = new ArrayList<>();
        List<StripCut> bare = new ArrayList<>();
        for (SectionCut section : cutting.sections())
            for (StripCut strip : section.strips()) {
                List<Blank> blanks = strip.strip().blanks();
                toCut.put(strip.id(), blanks.size());
                if (blanks.isEmpty()) bare.add(strip);
                for (int i = 0; i < blanks.size(); i++)
                    if (strip.fitted(i)) fitted.add(new FittedBlank(section, strip, i));
                    else
                        stops.computeIfAbsent(blanks.get(i).length(), stop -> new LinkedHashMap<>())
                                .computeIfAbsent(strip, key -> new ArrayList<>())
                                .add(blanks.get(i).id());
            }
        if (job.breakdown().leavesOver()) square();
        stops.forEach((stop, strips) ->
                strips.forEach((strip, blanks) -> steps.atStop(stop, strip.id(), withOffcuts(strip, blanks))));
        fitOneByOne(fitted);
        for (StripCut strip : bare)
            if (!offcuts.of(strip.id()).isEmpty()) steps.trim(strip.id(), offcuts.of(strip.id()));
    }

    /** Every strip whose first blank does not start at the strip's end. */
    private void square() {
        for (SectionCut section : cutting.sections())
            for (StripCut strip : section.strips())
                if (!strip.strip().blanks().isEmpty()
                        && !OnePlace.are(
                                strip.strip().blanks().get(0).from().nanometers(),
                                section.section().from().nanometers())) steps.square(strip.id());
    }

    private void fitOneByOne(List<FittedBlank> fitted) {
        Map<Part, Integer> place = new HashMap<>();
        for (Part part : job.parts()) place.put(part, place.size());
        fitted.sort(Comparator.comparing(
                one -> place.getOrDefault(one.strip().parts().get(one.blank()), 0)));
        Map<StripCut, Set<Integer>> toCome = new HashMap<>();
        for (FittedBlank one : fitted)
            toCome.computeIfAbsent(one.strip(), key -> new TreeSet<>()).add(one.blank());
        for (FittedBlank one : fitted) {
            Set<Integer> later = toCome.getOrDefault(one.strip(), Set.of());
            later.remove(one.blank());
            String id = one.strip().strip().blanks().get(one.blank()).id();
            steps.fitted(
                    one.strip().id(),
                    withOffcuts(one.strip(), List.of(id)),
                    new SpareWood(job, tests, one.section(), one.strip(), one.blank(), later).length());
        }
    }

    /** The last blanks of a strip free its offcuts. */
    private List<String> withOffcuts(StripCut strip, List<String> blanks) {
        int left = toCut.merge(strip.id(), -blanks.size(), Integer::sum);
        if (left > 0) return blanks;
        List<String> makes = new ArrayList<>(blanks);
        makes.addAll(offcuts.of(strip.id()));
        return makes;
    }
}
