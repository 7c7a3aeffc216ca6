package ripwright.internal.replay;

import ripwright.bill.Part;
import ripwright.plan.Blank;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/**
 * A blank where it lies on its board; everything in nanometers.
 *
 * @param blank the blank
 * @param strip the strip it is cut from
 */
public record PlacedBlank(Blank blank, PlacedStrip strip) {
    public String id() {
        return blank.id();
    }

    public Board board() {
        return strip.board();
    }

    public long from() {
        return blank.from().nanometers();
    }

    public long to() {
        return from() + blank.length().nanometers();
    }

    public CrosscutLine.Span span() {
        return new CrosscutLine.Span(from(), to());
    }

    /** Whether it is its whole strip, or the decimals of a plan's file leave that open: then nothing is cut. */
    public boolean asLongAsItsStrip() {
        long close = Tolerance.NANOMETERS + Tolerance.OF_PRINT;
        return Math.abs(from() - strip.section().from()) <= close
                && Math.abs(to() - strip.section().to()) <= close;
    }

    /** Whether {@code defect} bars {@code part} from the wood beside this blank, all along the strip. */
    public boolean barredAcross(Defect defect, Part part) {
        boolean blocks = defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW;
        return blocks
                && Tolerance.less(defect.left().nanometers(), strip.right())
                && Tolerance.more(defect.right().nanometers(), strip.left());
    }

    /** Whether {@code defect}, which bars it, lies under it; touching is allowed. */
    public boolean liesOn(Defect defect) {
        return Tolerance.less(defect.from().nanometers(), to())
                && Tolerance.more(defect.to().nanometers(), from());
    }
}
