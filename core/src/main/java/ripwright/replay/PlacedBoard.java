package ripwright.replay;

import java.util.List;
import ripwright.stock.Board;

/**
 * A consumed board and its sections.
 *
 * @param frame the board
 * @param sections its sections, as the plan lists them
 */
record PlacedBoard(Frame frame, List<PlacedSection> sections) {
    String id() {
        return board().id();
    }

    Board board() {
        return frame.board();
    }

    /** Whether it is cut for nothing but test wood. */
    boolean openedForTestWood() {
        return sections.isEmpty();
    }

    /** Its sections along it; its own two raw ends need no cut. */
    Line line(long kerf) {
        return new Line(
                0, frame.length(), sections.stream().map(PlacedSection::span).toList(), kerf);
    }
}
