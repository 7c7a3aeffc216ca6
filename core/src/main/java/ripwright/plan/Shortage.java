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
     * @param boardFeet of wood as it is sold, what is thinner than an inch as one inch, kerfs and waste counted
     * @param species any one of these; empty for any wood at all
     * @param thickness milled
     * @param shortest the length of the shortest board that would yield one, what ends lose here with it
     * @param narrowest the width of the narrowest board that would yield one, what edges lose here with it
     */
    public record Buy(
            BigDecimal boardFeet, List<Species> species, Length thickness, Length shortest, Length narrowest) {
        /** Keeps a copy of the list. */
        public Buy {
            species = List.copyOf(species);
        }
    }
}
