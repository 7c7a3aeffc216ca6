package ripwright.internal.pieces;

import java.util.List;
import ripwright.plan.Section;
import ripwright.stock.Board;

/**
 * A section as the plan has it.
 *
 * @param board its board
 * @param section the plan's section
 * @param strips its strips, in the order they come off
 * @param straightened whether its reference edge is ripped straight first
 */
public record SectionCut(Board board, Section section, List<StripCut> strips, boolean straightened) {
    public SectionCut {
        strips = List.copyOf(strips);
    }

    public String id() {
        return section.id();
    }

    public long length() {
        return section.to().nanometers() - section.from().nanometers();
    }
}
