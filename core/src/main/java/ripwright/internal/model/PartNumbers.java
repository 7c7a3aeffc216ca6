package ripwright.internal.model;

import ripwright.bill.Part;

/** A part in bare numbers. */
public final class PartNumbers {
    public final int index;
    public final long length; // of its blank
    public final long width; // of its blank
    public final int widthIndex; // of its width in JobNumbers.widths
    public final int count;
    public final boolean show;
    final boolean fitted;
    final boolean tested; // whether its width must be proved
    public final int group; // its together group, or -1
    final long feet;
    public final boolean[] fits; // fits[b]: board b is of its wood and thickness, and wide and long enough

    PartNumbers(int index, Part part, int group, long feet, JobNumbers numbers, Restriction restriction) {
        this.index = index;
        length = part.blankLength().nanometers();
        width = part.blankWidth().nanometers();
        count = part.count();
        show = part.face() == Part.Face.SHOW;
        fitted = part.fitted();
        tested = part.tested();
        this.group = group;
        this.feet = feet;
        int w = 0;
        while (numbers.widths[w] != width) w++;
        widthIndex = w;
        fits = new boolean[numbers.boards.length];
        for (BoardNumbers board : numbers.boards) {
            fits[board.index] = fits(part, board) && (board.ripped || !restriction.bars(width));
        }
    }

    private boolean fits(Part part, BoardNumbers board) {
        return !board.stock.testOnly()
                && part.takes(board.stock.species())
                && part.mayComeFrom(board.stock.id())
                && part.thickness().equals(board.stock.millsTo())
                && length <= board.span()
                && (board.ripped ? width == board.widthNear : width <= Math.max(board.widthNear, board.widthFar));
    }
}
