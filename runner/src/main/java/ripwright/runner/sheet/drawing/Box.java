package ripwright.runner.sheet.drawing;

import java.util.List;

/**
 * An upright rectangle on paper, in hundredths of a point.
 *
 * @param left its left side
 * @param top its upper side
 * @param right its right side
 * @param bottom its lower side
 */
record Box(long left, long top, long right, long bottom) {
    static Box around(long x, long y, long width, long height) {
        return new Box(x - width / 2, y - height / 2, x - width / 2 + width, y - height / 2 + height);
    }

    long width() {
        return right - left;
    }

    long height() {
        return bottom - top;
    }

    long middle() {
        return (top + bottom) / 2;
    }

    long center() {
        return (left + right) / 2;
    }

    boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    List<Spot> corners() {
        return List.of(new Spot(left, top), new Spot(right, top), new Spot(right, bottom), new Spot(left, bottom));
    }
}
