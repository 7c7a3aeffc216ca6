package ripwright.plan;

import java.util.List;
import ripwright.measure.Length;
import ripwright.stock.Edge;

/**
 * A length of a board that is ripped.
 *
 * @param id unique in the plan
 * @param from where it starts, from the board's marked end, raw
 * @param to where it ends, from the board's marked end
 * @param referenceEdge the edge that rides the fence
 * @param edgeLoss what straightening takes from that edge, its kerf included; more than it must where bad wood is passed
 * @param strips its strips, in the order they come off, widest first
 */
public record Section(String id, Length from, Length to, Edge referenceEdge, Length edgeLoss, List<Strip> strips) {
    /** Keeps a copy of the list. */
    public Section {
        strips = List.copyOf(strips);
    }
}
