package ripwright.saw;

import java.util.Optional;
import ripwright.measure.Length;

/**
 * What the two saws take and what they allow. A limit that is absent is none.
 *
 * @param ripKerf what a rip turns to dust, 0 to 1 in
 * @param crosscutKerf what a crosscut turns to dust, 0 to 1 in
 * @param longestRip the longest section that is ripped
 * @param shortestRip the shortest section that is ripped
 * @param narrowestRip the narrowest strip that is ripped, but for parts that are narrower themselves
 * @param shortestCrosscut the shortest blank that is crosscut, but for parts that are shorter themselves
 */
public record Saw(
        Length ripKerf,
        Length crosscutKerf,
        Optional<Length> longestRip,
        Optional<Length> shortestRip,
        Optional<Length> narrowestRip,
        Optional<Length> shortestCrosscut) {
    private static final Length WIDEST_KERF = Length.inches("1");

    /**
     * Refuses a kerf over an inch and a longest rip under the shortest.
     *
     * @throws IllegalArgumentException when there is one
     */
    public Saw {
        kerf("ripKerf", ripKerf);
        kerf("crosscutKerf", crosscutKerf);
        if (longestRip.isPresent()
                && shortestRip.isPresent()
                && shortestRip.get().exceeds(longestRip.get()))
            throw new IllegalArgumentException(
                    "longestRip is " + longestRip.get() + ", under shortestRip of " + shortestRip.get() + ".");
    }

    private static void kerf(String field, Length kerf) {
        if (kerf.exceeds(WIDEST_KERF))
            throw new IllegalArgumentException(field + " is " + kerf + "; a kerf is at most 1 in.");
    }

    /**
     * Two saws without limits.
     *
     * @throws IllegalArgumentException when a kerf is over an inch
     */
    public static Saw of(Length ripKerf, Length crosscutKerf) {
        return new Saw(ripKerf, crosscutKerf, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
