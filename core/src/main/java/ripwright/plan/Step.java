package ripwright.plan;

import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;

/**
 * One thing to do, in its turn.
 *
 * @param n its number, from 1
 * @param saw where it is done; empty for milling and measuring
 * @param does what is done
 * @param setting the id of the rip setting, for a test, a rip or a check
 * @param stop the stop's length, for blanks cut at a stop
 * @param piece the id of the piece it is done to
 * @param makes the ids of what it makes; none for milling, straightening, a test and a check
 * @param spare for a fitted part, how much longer its strip could still make it: the free wood at both its ends
 */
public record Step(
        int n,
        Optional<Saw> saw,
        Does does,
        Optional<String> setting,
        Optional<Length> stop,
        String piece,
        List<String> makes,
        Optional<Length> spare) {
    /** Which saw. */
    public enum Saw {
        /** The table saw, along the grain. */
        RIP,
        /** The crosscut saw, at the stop. */
        CROSSCUT
    }

    /** What is done. */
    public enum Does {
        /** Crosscuts a board into sections and full-width leftovers. */
        BREAKDOWN,
        /** Mills a piece to its finished thickness. */
        MILL,
        /** Rips the reference edge of a section straight. */
        STRAIGHTEN,
        /** Rips a test blank at a setting and measures it. */
        TEST,
        /** Rips strips off a section. */
        RIP,
        /** Measures the first strip of a setting. */
        CHECK,
        /** Cuts the end of a strip off square, where its first blank starts; no stop, and it makes nothing. */
        SQUARE,
        /** Crosscuts blanks off a strip. */
        BLANK,
        /** Any other crosscut. */
        TRIM
    }

    /** Keeps a copy of the list. */
    public Step {
        makes = List.copyOf(makes);
    }
}
