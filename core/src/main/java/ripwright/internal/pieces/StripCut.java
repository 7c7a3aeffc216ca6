package ripwright.internal.pieces;

import java.util.List;
import ripwright.bill.Part;
import ripwright.plan.Strip;

/**
 * A strip as the plan has it.
 *
 * @param strip the plan's strip
 * @param parts the parts of its blanks, in their order
 * @param width across, in nanometers
 * @param lastOfSection whether it is the last that comes off its section
 */
public record StripCut(Strip strip, List<Part> parts, long width, boolean lastOfSection) {
    public StripCut {
        parts = List.copyOf(parts);
    }

    public String id() {
        return strip.id();
    }

    /** Whether {@code blank} of its blanks is cut last, one at a time. */
    public boolean fitted(int blank) {
        return parts.get(blank).fitted();
    }
}
