package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.sheet.drawing.Line.Pen;
import ripwright.runner.sheet.drawing.Shape.Look;
import ripwright.runner.sheet.drawing.Words.Anchor;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.BoardMap.PlacedSection;
import ripwright.runner.sheet.place.Piece;
import ripwright.runner.sheet.place.SawCut;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/**
 * Draws one board true to scale: its pieces, cuts and defects as they lie, the marked end to the left. Above it stand the
 * break-down cuts with their readings from the marked end; below it the sections, and the labels of what is too small to
 * hold its own.
 */
public final class BoardDrawing {
    /** How wide a drawing is, in hundredths of a point: it fits A4 and Letter. */
    public static final long WIDTH = 52_600;

    /** How wide the drawing of a short board is: two stand side by side. */
    public static final long HALF_WIDTH = 26_000;

    private static final long LEFT = 4_600; // room for the words at the marked end
    private static final long MARGIN = 300;
    private static final long TITLE = 1_000; // the title's baseline

    private final String name;
    private final BoardMap map;
    private final Unit units;
    private final Scale scale;

    /** A drawing of {@code map} at {@code scale}, called {@code name}, its lengths written in {@code units}. */
    public BoardDrawing(String name, BoardMap map, Unit units, Scale scale) {
        this.name = name;
        this.map = map;
        this.units = units;
        this.scale = scale;
    }

    /** The drawing. */
    public Drawing drawing() {
        Paper paper = new Paper();
        TitleLine title = new TitleLine(name, map.board(), units, LEFT);
        long end =
                Math.max(title.right(), LEFT + scale.paper(map.board().length().nanometers()));
        long width = end <= HALF_WIDTH - MARGIN ? HALF_WIDTH : WIDTH;
        long right = width - MARGIN;
        title.draw(paper, right, TITLE);
        Readings readings = new Readings(map, units, new Frame(scale, LEFT, 0));
        Frame frame = new Frame(scale, LEFT, readings.draw(paper, TITLE + 500));
        board(paper, frame);
        Callouts callouts = new Callouts();
        new InsideLabels(map, units, frame, paper, callouts).draw();
        long bottom =
                frame.y(map.board().width().max(map.board().widthAtFarEnd()).nanometers());
        long below = sections(paper, frame, bottom + 700);
        below = callouts.draw(paper, below, right);
        if (!map.unplaced().isEmpty()) below = unplaced(paper, below, right);
        return paper.drawing(
                "Board " + map.board().id(), new Description(map, units).text(), width, Math.max(below, bottom) + 300);
    }

    private String tape(Length length) {
        return units.nearest(length);
    }

    private void board(Paper paper, Frame frame) {
        Board board = map.board();
        long end = board.length().nanometers();
        List<Spot> outline = List.of(
                new Spot(frame.x(0), frame.y(0)),
                new Spot(frame.x(end), frame.y(0)),
                new Spot(frame.x(end), frame.y(board.widthAtFarEnd().nanometers())),
                new Spot(frame.x(0), frame.y(board.width().nanometers())));
        paper.ground(new Shape(Look.BOARD, outline));
        map.pieces().forEach(piece -> piece(paper, frame, piece));
        board.defects().forEach(defect -> defect(paper, frame, defect));
        for (SawCut cut : map.cuts()) paper.shape(new Shape(Look.KERF, frame.kerf(cut.kerf())));
        map.sections().forEach(section -> reference(paper, frame, section));
        markedEnd(paper, frame);
    }

    private static void piece(Paper paper, Frame frame, Piece piece) {
        List<Spot> corners = frame.corners(piece.region());
        switch (piece.fate()) {
            case BLANK -> {}
            case OFFCUT -> paper.hatch(Hatching.OFFCUT, corners);
            case TEST_BLANK -> paper.hatch(Hatching.TEST_BLANK, corners);
            case WASTE -> paper.hatch(Hatching.WASTE, corners);
        }
        if (piece.fate() != Piece.Fate.WASTE) paper.shape(new Shape(Look.PIECE, corners));
    }

    private static void defect(Paper paper, Frame frame, Defect defect) {
        boolean sound = defect.blocks() == Defect.Blocks.SHOW;
        Box box = frame.box(defect);
        paper.hatch(sound ? Hatching.SOUND_DEFECT : Hatching.DEFECT, box.corners());
        paper.shape(Shape.box(sound ? Look.SOUND_DEFECT : Look.DEFECT, box));
    }

    /** A heavy line along the reference edge, and a solid triangle outside the board that points to it. */
    private static void reference(Paper paper, Frame frame, PlacedSection placed) {
        if (placed.section().strips().stream().allMatch(strip -> strip.setting().isEmpty())) return;
        boolean left = placed.section().referenceEdge() == Edge.LEFT;
        long y = frame.y(placed.reference());
        long start = frame.x(placed.region().from());
        long end = frame.x(placed.region().to());
        paper.line(Pen.REFERENCE, new Spot(start, y), new Spot(end, y));
        long edge = frame.y(left ? 0 : placed.region().width());
        paper.shape(Arrows.datum((start + end) / 2, edge, left));
    }

    private void markedEnd(Paper paper, Frame frame) {
        long x = LEFT - 450;
        long bottom = frame.y(map.board().width().nanometers());
        paper.line(Pen.MARKED_END, new Spot(x, frame.top()), new Spot(x, bottom));
        long middle = (frame.top() + bottom) / 2;
        paper.words(new Words(Lettering.LABEL, Anchor.END, x - 350, middle - 150, "marked"));
        paper.words(new Words(Lettering.LABEL, Anchor.END, x - 350, middle + 850, "end"));
    }

    /** The sections as dimensions below the board. */
    private long sections(Paper paper, Frame frame, long top) {
        long y = top + 500;
        List<PlacedSection> sections = map.board().ripped() ? List.of() : new ArrayList<>(map.sections());
        for (PlacedSection placed : sections) {
            long start = frame.x(placed.region().from());
            long end = frame.x(placed.region().to());
            String id = Isolated.name(placed.section().id());
            String length = tape(placed.section().to().minus(placed.section().from()));
            String fitted =
                    first(end - start - 1_600, id + " \u2013 " + length + " long", id + " \u2013 " + length, id);
            long gap = fitted.isEmpty() ? 0 : Lettering.ID.width(fitted) / 2 + 300;
            Arrows.between(paper, start, end, y, gap);
            paper.words(new Words(Lettering.ID, Anchor.MIDDLE, (start + end) / 2, y + 330, fitted));
        }
        return sections.isEmpty() ? top : y + 500;
    }

    /** The first of those texts that has room; else what fits of the last. */
    private static String first(long room, String... texts) {
        return Arrays.stream(texts)
                .filter(text -> Lettering.ID.width(text) <= room)
                .findFirst()
                .orElse(Lettering.ID.fitted(texts[texts.length - 1], room));
    }

    private long unplaced(Paper paper, long top, long right) {
        String text =
                "Not shown: " + map.unplaced().stream().map(Isolated::name).collect(Collectors.joining(", "));
        paper.words(
                new Words(Lettering.LABEL, Anchor.START, LEFT, top + 900, Lettering.LABEL.fitted(text, right - LEFT)));
        return top + Callouts.ROW;
    }
}
