package ripwright.plan;

import java.math.BigDecimal;
import java.util.List;
import ripwright.measure.Length;
import ripwright.stock.Species;

/**
 * Parts that are not made.
 *
 * @param part the part's name
 * @param count how many are missing
 * @param buy what to buy for them
 */
public record Shortage(String part, int count, Buy buy) {
    /**
     * What to buy.
     *
     * @param boardFeet of wood, kerfs and waste counted, to four decimals
     * @param species any one of these; empty for any wood at all
     * @param thickness milled
     * @param shortest the shortest board that would yield one
     * @param narrowest the narrowest board that would yield one
     */
    public record Buy(
            BigDecimal boardFeet, List<Species> species, Length thickness, Length shortest, Length narrowest) {
        /** Keeps a copy of the list. */
        public Buy {
            species = List.copyOf(species);
        }
    }
}
