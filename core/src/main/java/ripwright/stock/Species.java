package ripwright.stock;

import java.util.Locale;
import ripwright.measure.Name;

/**
 * A kind of wood. Two are equal without regard to case and outer blanks.
 *
 * @param name as the job writes it, outer blanks taken off
 */
public record Species(String name) {
    /**
     * Refuses what is no name.
     *
     * @throws IllegalArgumentException when it is no {@link Name}
     */
    public Species {
        name = Name.require("species", name).strip();
    }

    private String key() {
        return name.toLowerCase(Locale.ROOT);
    }

    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof Species species && key().equals(species.key());
    }

    @Override
    public int hashCode() {
        return key().hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
