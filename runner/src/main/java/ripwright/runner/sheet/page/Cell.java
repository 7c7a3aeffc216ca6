package ripwright.runner.sheet.page;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One cell of a table.
 *
 * @param kind how it is written
 * @param text what it says
 * @param ticks the boxes to tick in it
 * @param opening what is to be measured and written into it
 * @param rows how many rows it spans
 * @param columns how many columns it spans
 */
public record Cell(Kind kind, String text, List<Tick> ticks, Optional<Opening> opening, int rows, int columns) {
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
     * @param made the id of the piece that is there when it is ticked; empty when it stands for none
     */
    public record Tick(String done, String text, OptionalInt step, Optional<String> made) {}

    /**
     * An opening that a part is fitted to; all lengths in nanometers.
     *
     * @param blank the blank's id
     * @param strip the id of its strip, which other openings may share
     * @param planned the length of the blank as planned
     * @param beyond how much longer the blank is than its opening
     * @param spare how much longer its strip can make it
     */
    public record Opening(String blank, String strip, long planned, long beyond, long spare) {}

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
        /** A name or a few words. */
        TEXT,
        /** A sentence on how or why. */
        WORDS,
        /** A measure or a count. */
        NUMBER,
        /** The number of a figure. */
        FIGURE,
        /** Room to write into. */
        FIELD
    }

    static Cell of(Kind kind, String text) {
        return new Cell(kind, text, List.of(), Optional.empty(), 1, 1);
    }

    static Cell tick(String done) {
        return tick(new Tick(done, "", OptionalInt.empty(), Optional.empty()));
    }

    static Cell tick(Tick tick) {
        return new Cell(Kind.TICK, "", List.of(tick), Optional.empty(), 1, 1);
    }

    static Cell ticks(List<Tick> ticks) {
        return new Cell(Kind.TICKS, "", ticks, Optional.empty(), 1, 1);
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

    static Cell opening(Opening opening) {
        return new Cell(Kind.FIELD, "", List.of(), Optional.of(opening), 1, 1);
    }

    Cell down(int rows) {
        return new Cell(kind, text, ticks, opening, rows, columns);
    }

    Cell across(int columns) {
        return new Cell(kind, text, ticks, opening, rows, columns);
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
