package ripwright.json;

import java.util.List;
import ripwright.measure.Unit;
import ripwright.stock.Board;

/**
 * What a rack file holds.
 *
 * @param units what its lengths are written in
 * @param offcuts what lies on the rack, in the order of the file
 */
public record Rack(Unit units, List<Board> offcuts) {
    /** Keeps a copy of the list. */
    public Rack {
        offcuts = List.copyOf(offcuts);
    }
}
