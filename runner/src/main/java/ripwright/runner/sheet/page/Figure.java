package ripwright.runner.sheet.page;

import ripwright.runner.sheet.drawing.Drawing;

/**
 * A board's drawing on the sheet.
 *
 * @param number counted from 1
 * @param drawing the drawing
 */
public record Figure(int number, Drawing drawing) {}
