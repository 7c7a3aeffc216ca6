package ripwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.simplelong.SimpleLongScore;
import ripwright.internal.firstfit.FirstFitDecreasing;

/** Which board every copy of every part comes from. */
@PlanningSolution
@SuppressWarnings("UnusedVariable") // the search reads its facts by reflection
public final class PlainPlan {
    @PlanningEntityCollectionProperty
    private List<PlainCopy> copies = List.of();

    @ValueRangeProvider(id = "boards")
    private List<Integer> boards = List.of();

    @ProblemFactProperty
    private @Nullable PlainBench bench;

    @PlanningScore
    private @Nullable SimpleLongScore score;

    /** For the search, which fills it in. */
    public PlainPlan() {}

    PlainPlan(PlainBench bench) {
        this.bench = bench;
        boards = IntStream.range(0, bench.boards()).boxed().toList();
        copies = new ArrayList<>();
        for (int part : FirstFitDecreasing.widestFirst(bench.job()))
            copies.add(new PlainCopy(
                    copies.size(),
                    part,
                    bench.job().parts().get(part).together().orElse("")));
    }

    List<PlainCopy> copies() {
        return copies;
    }
}
