package ripwright.internal.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.recreate.RuinAndRecreate;
import ripwright.measure.Length;
import ripwright.stock.Board;

/** What recuts of one job share: its numbers, and for each thread the tables it cuts with. */
public final class RecreateTables {
    private final JobNumbers numbers;
    private final Workers workers;
    private final ThreadLocal<RuinAndRecreate> recut;
    private final ThreadLocal<RuinAndRecreate> shortRecut;
    private final List<List<Integer>> ofThickness = new ArrayList<>(); // places of boards that mill to one thickness
    private final int[] thickness; // thickness[b]: where board b stands in ofThickness

    RecreateTables(JobNumbers numbers, Workers workers) {
        this.numbers = numbers;
        this.workers = workers;
        recut = ThreadLocal.withInitial(() -> new RuinAndRecreate(numbers));
        JobNumbers shortened = numbers.proving().wanted() ? numbers.shortened(1) : numbers;
        shortRecut = ThreadLocal.withInitial(() -> new RuinAndRecreate(shortened));
        List<Board> boards = numbers.job().boards();
        thickness = new int[boards.size()];
        Map<Length, Integer> known = new HashMap<>();
        for (int b = 0; b < thickness.length; b++) {
            int t = known.computeIfAbsent(boards.get(b).millsTo(), key -> {
                ofThickness.add(new ArrayList<>());
                return ofThickness.size() - 1;
            });
            thickness[b] = t;
            ofThickness.get(t).add(b);
        }
    }

    JobNumbers numbers() {
        return numbers;
    }

    /** This thread's own; whoever cuts with it makes room for work that waits. */
    RuinAndRecreate recut() {
        workers.makeRoom();
        return recut.get();
    }

    /** This thread's own for boards that keep wood for a test blank. */
    RuinAndRecreate shortRecut() {
        return shortRecut.get();
    }

    /** All boards that mill to the same thickness as that one, itself included. */
    List<Integer> alike(int board) {
        return ofThickness.get(thickness[board]);
    }
}
