package ripwright.json;

import ripwright.json.tree.JsonOut;
import ripwright.plan.Cost;
import ripwright.plan.Tally;

/** Writes what a plan costs and what becomes of its wood, as every file has it: money to the cent, board feet to four decimals. */
public final class FiguresOut {
    private final JsonOut json;

    /** Into that object. */
    public FiguresOut(JsonOut json) {
        this.json = json;
    }

    /** The field {@code cost}. */
    public void cost(Cost cost) {
        json.object("cost", () -> {
            json.number("stock", cost.stock());
            json.number("salvage", cost.salvage());
            json.number("labor", cost.labor());
            json.number("net", cost.net());
            json.number("bound", cost.bound());
            json.number("gap", cost.gap());
            json.flag("proven", cost.proven());
        });
    }

    /** The field {@code boardFeet}. */
    public void boardFeet(Tally tally) {
        json.object("boardFeet", () -> {
            json.number("consumed", tally.consumed());
            json.number("parts", tally.parts());
            json.number("offcuts", tally.offcuts());
            json.number("waste", tally.waste());
        });
    }
}
