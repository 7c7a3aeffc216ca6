package ripwright.runner.sheet.place;

import ripwright.runner.sheet.place.Piece.Fate;

/**
 * A stretch of a length and what becomes of it, in nanometers from the board's marked end.
 *
 * @param fate what becomes of it
 * @param id its id in the plan; for waste the id of the piece it is left of
 * @param from where it starts
 * @param to where it ends
 */
record Span(Fate fate, String id, long from, long to) {
    long length() {
        return to - from;
    }
}
