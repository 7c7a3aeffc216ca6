package ripwright.runner.sheet.page;

import java.util.List;

/**
 * What can come out different in one step.
 *
 * @param step the step's number
 * @param things what can
 */
public record Outcomes(int step, List<Thing> things) {
    /** Keeps a copy of the list. */
    public Outcomes {
        things = List.copyOf(things);
    }

    /**
     * A piece, or a part in the bill whose size turns out another.
     *
     * @param id the piece's id or the part's name
     * @param part whether it is a part in the bill
     * @param name what it is called
     * @param width as planned; may be empty
     * @param length as planned; may be empty
     */
    public record Thing(String id, boolean part, String name, String width, String length) {}
}
