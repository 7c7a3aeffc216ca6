package ripwright.internal.replay;

import java.util.List;
import java.util.OptionalLong;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * A strip where it lies on its board; everything in nanometers.
 *
 * @param strip the strip
 * @param section the section it comes off
 */
public record PlacedStrip(Strip strip, PlacedSection section) {
    public String id() {
        return strip.id();
    }

    public Board board() {
        return section.board();
    }

    public long width() {
        return strip.width().nanometers();
    }

    /** Its side nearer the board's left edge. */
    public long left() {
        long near = section.edgeLoss() + strip.offset().nanometers();
        return section.section().referenceEdge() == Edge.LEFT ? near : section.width() - near - width();
    }

    public long right() {
        return left() + width();
    }

    public List<PlacedBlank> blanks() {
        return strip.blanks().stream()
                .map(blank -> new PlacedBlank(blank, this))
                .toList();
    }

    /** Where the first of its blanks starts; empty when it carries none. */
    public OptionalLong firstBlankFrom() {
        return blanks().stream().mapToLong(PlacedBlank::from).min();
    }

    /** Its blanks along it; its own two ends are the section's, and need no cut. */
    public CrosscutLine line(long kerf) {
        return new CrosscutLine(
                section.from(),
                section.to(),
                blanks().stream().map(PlacedBlank::span).toList(),
                kerf);
    }
}
