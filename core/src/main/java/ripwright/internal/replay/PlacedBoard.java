package ripwright.internal.replay;

import java.util.List;
import ripwright.stock.Board;

/**
 * A consumed board and its sections.
 *
 * @param frame the board
 * @param sections its sections, as the plan lists them
 */
public record PlacedBoard(BoardFrame frame, List<PlacedSection> sections) {
    public String id() {
        return board().id();
    }

    public Board board() {
        return frame.board();
    }

    /** Whether it is cut for nothing but test wood. */
    public boolean openedForTestWood() {
        return sections.isEmpty();
    }

    /** Its sections along it; its own two raw ends need no cut. */
    public CrosscutLine line(long kerf) {
        return new CrosscutLine(
                0, frame.length(), sections.stream().map(PlacedSection::span).toList(), kerf);
    }
}
