package ripwright.internal.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ripwright.bill.Part;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/** How all boards of a job are cut: what the search changes and scores. */
@PlanningSolution
@SuppressWarnings("UnusedVariable") // the search reads its facts by reflection
public final class CuttingSolution {
    @PlanningEntityCollectionProperty
    private List<BoardCut> boards = List.of();

    @ProblemFactCollectionProperty
    private List<TogetherGroup> groups = List.of();

    @ProblemFactCollectionProperty
    private List<SettingPrice> settingPrices = List.of();

    @ProblemFactCollectionProperty
    private List<TestWoodPrice> provingPrices = List.of();

    /** The layouts known at the start; moves make all others. */
    @ValueRangeProvider(id = "layouts")
    private List<PricedLayout> layouts = List.of();

    private @Nullable RecreateTables tables;

    @PlanningScore
    private @Nullable HardSoftLongScore score;

    /** For the search, which fills it in. */
    public CuttingSolution() {}

    CuttingSolution(RecreateTables tables, BlankRewards rewards, @Nullable PricedLayout[] layouts) {
        this.tables = tables;
        JobNumbers numbers = tables.numbers();
        boards = new ArrayList<>();
        for (int b = 0; b < layouts.length; b++) boards.add(new BoardCut(b, rewards, layouts[b]));
        groups = groups(numbers.job().parts());
        settingPrices = List.of(new SettingPrice(numbers::settingCost));
        provingPrices = provingPrices(numbers);
        List<PricedLayout> known = new ArrayList<>();
        for (PricedLayout layout : layouts) if (layout != null) known.add(layout);
        this.layouts = known;
    }

    private static List<TestWoodPrice> provingPrices(JobNumbers numbers) {
        if (!numbers.proving().wanted()) return List.of();
        long dearest = 1;
        for (int b = 0; b < numbers.boards(); b++) dearest = Math.max(dearest, numbers.cost(b));
        return List.of(new TestWoodPrice(numbers.proving(), 2 * dearest));
    }

    private static List<TogetherGroup> groups(List<Part> parts) {
        Map<String, Set<Integer>> members = new HashMap<>();
        for (int p = 0; p < parts.size(); p++) {
            int place = p;
            parts.get(p)
                    .together()
                    .ifPresent(group -> members.computeIfAbsent(group, name -> new HashSet<>())
                            .add(place));
        }
        List<TogetherGroup> groups = new ArrayList<>();
        members.forEach((name, places) -> groups.add(new TogetherGroup(name, places)));
        groups.sort((a, b) -> a.group().compareTo(b.group()));
        return groups;
    }

    /** Every board of the job, in its order. */
    public List<BoardCut> boards() {
        return boards;
    }

    RecreateTables tables() {
        if (tables == null) throw new IllegalStateException("A cutting without a workbench.");
        return tables;
    }

    @Nullable
    HardSoftLongScore score() {
        return score;
    }

    /** The layout of every board; null where it stays whole. */
    @Nullable
    PricedLayout[] layouts() {
        @Nullable PricedLayout[] all = new @Nullable PricedLayout[boards.size()];
        for (BoardCut cut : boards) all[cut.board()] = cut.getLayout();
        return all;
    }

    /** How many blanks of each part no board makes. */
    int[] missing() {
        int[] missing = tables().numbers().wanted();
        for (BoardCut cut : boards) {
            PricedLayout layout = cut.getLayout();
            if (layout == null) continue;
            for (int part : layout.made()) missing[part]--;
        }
        return missing;
    }
}
