package ripwright.resume;

import ripwright.internal.geometry.Piece;

/**
 * Wood that is gone.
 *
 * @param cause how it went
 * @param wood where it lay in its board
 */
record Losses(Cause cause, Piece wood) {
    /** How wood goes. */
    enum Cause {
        /** A crosscut. */
        CROSSCUT,
        /** A rip, and the sliver beside it that comes to nothing. */
        RIP,
        /** Straightening. */
        EDGE,
        /** A test rip. */
        TEST
    }
}
