package ripwright.runner.sheet.drawing;

import java.math.BigDecimal;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.sheet.drawing.Line.Pen;
import ripwright.runner.sheet.drawing.Shape.Look;
import ripwright.runner.sheet.drawing.Words.Anchor;

/** Draws the key to the board drawings: what each hatch and mark means, and a scale bar. */
public final class Key {
    private static final long COLUMN = 13_100;
    private static final long ROW = 1_900;
    private static final long SWATCH = 2_000;

    private final Unit units;
    private final Scale scale;

    /** A key to drawings at {@code scale}. */
    public Key(Unit units, Scale scale) {
        this.units = units;
        this.scale = scale;
    }

    /** The drawing. */
    public Drawing drawing() {
        Paper paper = new Paper();
        paper.shape(Shape.box(Look.PIECE, swatch(paper, 0, 0, "blank: id and part")));
        hatched(paper, 1, 0, Hatching.OFFCUT, Look.PIECE, "offcut to keep");
        hatched(paper, 2, 0, Hatching.TEST_BLANK, Look.PIECE, "test blank");
        paper.hatch(Hatching.WASTE, swatch(paper, 3, 0, "waste").corners());
        hatched(paper, 0, 1, Hatching.DEFECT, Look.DEFECT, "defect: no part on it");
        hatched(paper, 1, 1, Hatching.SOUND_DEFECT, Look.SOUND_DEFECT, "defect: no show part");
        reference(paper, swatch(paper, 2, 1, "edge to the fence"));
        cut(paper, swatch(paper, 3, 1, "cut, made in step 7"));
        bar(paper);
        return paper.drawing(
                "Key to the drawings",
                "Blanks are plain; offcuts, test blanks, waste and defects are each hatched in their own way.",
                BoardDrawing.WIDTH,
                3 * ROW);
    }

    private static Box swatch(Paper paper, int column, int row, String text) {
        long left = column * COLUMN + 100;
        long top = row * ROW + 200;
        long baseline = top + 950;
        paper.words(new Words(Lettering.LABEL, Anchor.START, left + SWATCH + 500, baseline, text));
        return new Box(left, top, left + SWATCH, top + 1_300);
    }

    private static void hatched(Paper paper, int column, int row, Hatching hatching, Look look, String text) {
        Box box = swatch(paper, column, row, text);
        paper.hatch(hatching, box.corners());
        paper.shape(Shape.box(look, box));
    }

    private static void reference(Paper paper, Box box) {
        long y = box.bottom() - 300;
        paper.line(Pen.REFERENCE, new Spot(box.left(), y), new Spot(box.right(), y));
        paper.shape(Arrows.datum(box.center(), y, true));
    }

    private static void cut(Paper paper, Box box) {
        Box kerf = Box.around(box.center(), box.middle(), 100, box.height());
        paper.shape(Shape.box(Look.KERF, kerf));
        paper.balloon(new Balloon(7, box.center(), box.middle()));
    }

    private void bar(Paper paper) {
        long step = units == Unit.INCH ? 12 * Unit.INCH.nanometers() : 250 * Unit.MILLIMETER.nanometers();
        long y = 2 * ROW + 900;
        for (int i = 0; i < 3; i++) {
            long left = 100 + scale.paper(i * step);
            long right = 100 + scale.paper((i + 1) * step);
            Box box = new Box(left, y - 250, right, y + 50);
            paper.shape(Shape.box(i % 2 == 0 ? Look.BLACK : Look.PIECE, box));
        }
        long end = 100 + scale.paper(3 * step);
        String length = units.nearest(Length.of(BigDecimal.valueOf(3 * step, 6), Unit.MILLIMETER));
        String text = length + " " + units.symbol() + "; scale 1 : " + scale.denominator()
                + " on paper at full size. All boards are drawn to this one scale.";
        paper.words(new Words(Lettering.LABEL, Anchor.START, end + 600, y + 150, text));
    }
}
