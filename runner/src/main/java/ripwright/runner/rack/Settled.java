package ripwright.runner.rack;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ripwright.json.Booked;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

/**
 * A plan that is booked now.
 *
 * @param plan the plan
 * @param entry what was booked
 * @param called what the sheet calls each of the offcuts that entered
 * @param left the file with the boards left
 * @param rack the rack's file
 * @param finished whether a run before had booked it already and was cut off before it was done with it
 */
public record Settled(Plan plan, Booked entry, List<String> called, Path left, Path rack, boolean finished) {
    /** Keeps a copy of the list. */
    public Settled {
        called = List.copyOf(called);
    }

    static Settled finished(PlanFile plan, Booked entry, Path rack) throws IOException {
        List<String> called = new ArrayList<>();
        for (Offcut offcut : plan.plan().offcuts()) called.add(Settlement.mark(offcut.piece()));
        List<Board> entered = entry.settlement().entered();
        for (Board kept : entered.subList(called.size(), entered.size())) called.add(Settlement.mark(kept));
        return new Settled(plan.plan(), entry, called, plan.left(), rack, true);
    }
}
