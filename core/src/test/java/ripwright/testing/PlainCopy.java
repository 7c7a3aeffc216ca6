package ripwright.testing;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** One copy of a part, and the board it comes from: the only decision of {@link PlainOptaPlanner}. */
@PlanningEntity
public final class PlainCopy {
    @PlanningId
    private int number;

    private int part;
    private String group = "";

    @PlanningVariable(valueRangeProviderRefs = "boards", nullable = true)
    private @Nullable Integer board;

    /** For the search, which fills it in. */
    public PlainCopy() {}

    PlainCopy(int number, int part, String group) {
        this.number = number;
        this.part = part;
        this.group = group;
    }

    /** Its part's place in the bill. */
    public int part() {
        return part;
    }

    /** Its together group; empty when it has none. */
    public String group() {
        return group;
    }

    /** The place of its board in {@code job.boards()}; null when it is not made. */
    public @Nullable Integer getBoard() {
        return board;
    }

    /** Takes it from that board. */
    public void setBoard(@Nullable Integer board) {
        this.board = board;
    }

    @Override
    public String toString() {
        return "copy " + number + " of part " + part;
    }
}
