package ripwright.internal.replay.leftovers;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;

/**
 * Where the test blanks of a plan lie on their boards. The plan names the piece a test blank is cut from, not the place;
 * this is the place that explains the offcuts it lists.
 */
public final class TestBlankPlaces {
    private final Map<String, Place> places = new LinkedHashMap<>();

    /** Of that plan, which holds for that job. */
    public TestBlankPlaces(Job job, Plan plan) {
        ReplayIndex pieces = new ReplayIndex(job, plan);
        for (Remains remains : new WhatIsLeft(pieces, new Findings(job.units())).all())
            for (Remains.Taken taken : remains.taken()) places.put(taken.blank().id(), place(taken));
    }

    /**
     * A stretch of a board along the grain, from its marked end.
     *
     * @param from where it starts
     * @param to where it ends
     */
    public record Place(Length from, Length to) {}

    private static Place place(Remains.Taken taken) {
        CrosscutLine.Span along = taken.cut().along();
        return new Place(new Length(along.from()), new Length(along.to()));
    }

    /** Of the test blank with that id; empty when its piece has no room for it. */
    public Optional<Place> of(String testBlank) {
        return Optional.ofNullable(places.get(testBlank));
    }
}
