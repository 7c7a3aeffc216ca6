package ripwright.runner.sheet.page;

import java.util.List;
import java.util.OptionalInt;

/**
 * One cell of a table.
 *
 * @param kind how it is written
 * @param text what it says
 * @param ticks the boxes to tick in it
 * @param rows how many rows it spans
 * @param columns how many columns it spans
 */
public record Cell(Kind kind, String text, List<Tick> ticks, int rows, int columns) {
    /** Keeps a copy of the list. */
    public Cell {
        ticks = List.copyOf(ticks);
    }

    /**
     * A box to tick.
     *
     * @param done what is done when it is ticked
     * @param text what stands beside it; may be empty
     * @param step the step it is a piece of; empty when it belongs to none
     */
    public record Tick(String done, String text, OptionalInt step) {}

    /** How a cell is written. */
    public enum Kind {
        /** A box to tick, for the whole row. */
        TICK,
        /** Boxes to tick, each with what it is for. */
        TICKS,
        /** The number of a step; heads its row. */
        STEP,
        /** The number of a step there is a caution about; heads its row. */
        MINDED_STEP,
        /** The id or name of a piece; heads its row. */
        ID,
        /** Words. */
        TEXT,
        /** A measure or a count. */
        NUMBER,
        /** The number of a figure. */
        FIGURE,
        /** Room to write into. */
        FIELD
    }

    static Cell of(Kind kind, String text) {
        return new Cell(kind, text, List.of(), 1, 1);
    }

    static Cell tick(String done) {
        return tick(new Tick(done, "", OptionalInt.empty()));
    }

    static Cell tick(Tick tick) {
        return new Cell(Kind.TICK, "", List.of(tick), 1, 1);
    }

    static Cell ticks(List<Tick> ticks) {
        return new Cell(Kind.TICKS, "", ticks, 1, 1);
    }

    static Cell id(String id) {
        return of(Kind.ID, id);
    }

    static Cell text(String text) {
        return of(Kind.TEXT, text);
    }

    static Cell number(String text) {
        return of(Kind.NUMBER, text);
    }

    static Cell field() {
        return of(Kind.FIELD, "");
    }

    Cell down(int rows) {
        return new Cell(kind, text, ticks, rows, columns);
    }

    Cell across(int columns) {
        return new Cell(kind, text, ticks, rows, columns);
    }

    /** Whether it is the number of a step. */
    public boolean step() {
        return kind == Kind.STEP || kind == Kind.MINDED_STEP;
    }

    /** Whether it heads its row. */
    public boolean heads() {
        return step() || kind == Kind.ID;
    }

    /** The group of rows or the row it heads, as HTML's scope has it. */
    public String scope() {
        return rows > 1 ? "rowgroup" : "row";
    }
}
