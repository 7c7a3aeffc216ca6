package ripwright.sequence;

import java.util.List;
import ripwright.job.Job;
import ripwright.pattern.Layout;

/** How many blanks layouts make of every part. */
final class Made {
    private final int[] counts; // counts[p]: blanks made of job.parts().get(p)

    Made(Job job, List<Layout> layouts) {
        counts = new int[job.parts().size()];
        for (Layout layout : layouts)
            for (Layout.Section section : layout.sections())
                for (Layout.Strip strip : section.strips())
                    for (Layout.Blank blank : strip.blanks()) counts[blank.part()]++;
    }

    int[] counts() {
        return counts.clone();
    }
}
