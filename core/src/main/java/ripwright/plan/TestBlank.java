package ripwright.plan;

import java.util.List;
import ripwright.measure.Length;
import ripwright.stock.Species;

/**
 * A short expendable piece that proves rip settings.
 *
 * @param id unique in the plan
 * @param from the id of the piece it is cut from: a board, a section (the wood beside its last strip) or a strip
 * @param source where it comes from
 * @param width as cut, that of the piece
 * @param length along the grain
 * @param thickness as ripped: milled before, where its board is rough
 * @param species its wood
 * @param proves the ids of the settings it is ripped at, widest first
 */
public record TestBlank(
        String id,
        String from,
        Source source,
        Length width,
        Length length,
        Length thickness,
        Species species,
        List<String> proves) {
    /** Where a test blank comes from, best first. */
    public enum Source {
        /** A rack offcut no part comes from, or the rest of one. */
        RACK,
        /** A leftover too small for the rack. */
        WASTE,
        /** Wood that would have been kept, or a board opened for it. */
        FRESH
    }

    /** Keeps a copy of the list. */
    public TestBlank {
        proves = List.copyOf(proves);
    }
}
