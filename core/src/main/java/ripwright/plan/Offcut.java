package ripwright.plan;

import ripwright.stock.Board;

/**
 * A leftover that goes to the rack.
 *
 * @param from the id of the piece it is what is left of: a board, a section or a strip
 * @param piece the offcut as the rack will have it, in its own frame; its id is unique in the plan
 */
public record Offcut(String from, Board piece) {
    /** Its id. */
    public String id() {
        return piece.id();
    }
}
