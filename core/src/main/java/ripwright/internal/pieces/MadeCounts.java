package ripwright.internal.pieces;

import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;

/** How many blanks layouts make of every part. */
public final class MadeCounts {
    private final int[] counts; // counts[p]: blanks made of job.parts().get(p)

    public MadeCounts(Job job, List<Layout> layouts) {
        counts = new int[job.parts().size()];
        for (Layout layout : layouts)
            for (Layout.Section section : layout.sections())
                for (Layout.Strip strip : section.strips())
                    for (Layout.Blank blank : strip.blanks()) counts[blank.part()]++;
    }

    public int[] counts() {
        return counts.clone();
    }
}
