package ripwright.plan;

import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;

/**
 * A section's product at one rip, or a ripped board.
 *
 * @param id unique in the plan
 * @param offset from the reference edge, once straightened, to the side of the strip that is nearer
 * @param width across
 * @param setting the id of its rip setting; empty for a ripped board
 * @param blanks its blanks, by where they start; perhaps none
 */
public record Strip(String id, Length offset, Length width, Optional<String> setting, List<Blank> blanks) {
    /** Keeps a copy of the list. */
    public Strip {
        blanks = List.copyOf(blanks);
    }
}
