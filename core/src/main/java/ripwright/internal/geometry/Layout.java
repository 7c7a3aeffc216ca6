package ripwright.internal.geometry;

import java.util.List;
import ripwright.stock.Edge;

/**
 * How one board is cut. All positions are in nanometers, along the grain from the board's marked end, raw.
 *
 * @param board the board's place in {@code job.boards()}
 * @param sections its sections, one at least, by where they start; of a ripped board the only one, trim to trim
 */
public record Layout(int board, List<Section> sections) {
    /** Keeps a copy of the list. */
    public Layout {
        sections = List.copyOf(sections);
    }

    /**
     * A length of the board that is ripped.
     *
     * @param from where it starts
     * @param to where it ends
     * @param referenceEdge the edge that rides the fence
     * @param edgeLoss what straightening takes from that edge, in nanometers
     * @param strips its strips, one at least, in the order they come off, widest first; the first lies at the straightened
     *     reference edge, each next one a rip kerf beside the one before
     */
    public record Section(long from, long to, Edge referenceEdge, long edgeLoss, List<Strip> strips) {
        /** Keeps a copy of the list. */
        public Section {
            strips = List.copyOf(strips);
        }
    }

    /**
     * A strip of a section.
     *
     * @param width across, in nanometers
     * @param blanks its blanks, by where they start; perhaps none
     */
    public record Strip(long width, List<Blank> blanks) {
        /** Keeps a copy of the list. */
        public Strip {
            blanks = List.copyOf(blanks);
        }
    }

    /**
     * A blank of a strip.
     *
     * @param part the part's place in {@code job.parts()}
     * @param from where it starts
     */
    public record Blank(int part, long from) {}
}
