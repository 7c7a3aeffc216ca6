package ripwright.runner.sheet.drawing;

/**
 * A point on paper, in hundredths of a typographic point (1/72 in) from the drawing's upper left corner.
 *
 * @param x to the right
 * @param y downwards
 */
public record Spot(long x, long y) {}
