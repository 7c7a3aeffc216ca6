package ripwright.resume;

import java.util.Optional;
import ripwright.measure.Length;
import ripwright.measure.Name;
import ripwright.stock.Defect;

/** One thing that is not as the plan has it. A width is across the grain, a length along it. */
public sealed interface Change {
    /**
     * A piece is that wide now.
     *
     * @param piece its id in the plan
     * @param width across, the same all along
     */
    record Width(String piece, Length width) implements Change {
        /**
         * Refuses a piece without a name and without width.
         *
         * @throws IllegalArgumentException when it is either
         */
        public Width {
            Name.require("piece", piece);
            positive("width", width);
        }
    }

    /**
     * A piece is that long now, from its end nearer the board's marked end.
     *
     * @param piece its id in the plan
     * @param length along the grain
     */
    record Extent(String piece, Length length) implements Change {
        /**
         * Refuses a piece without a name and without length.
         *
         * @throws IllegalArgumentException when it is either
         */
        public Extent {
            Name.require("piece", piece);
            positive("length", length);
        }
    }

    /**
     * A piece is no longer what it was to be. Nothing of it is used again, unless another change says what is left of it.
     *
     * @param piece its id in the plan
     */
    record Spoiled(String piece) implements Change {
        /**
         * Refuses a piece without a name.
         *
         * @throws IllegalArgumentException when it is no {@link Name}
         */
        public Spoiled {
            Name.require("piece", piece);
        }
    }

    /**
     * A defect nobody knew of.
     *
     * @param piece the id, in the plan, of the piece it is on
     * @param defect from the piece's end nearer the board's marked end and from its left edge as it lies in the board
     */
    record Found(String piece, Defect defect) implements Change {
        /**
         * Refuses a piece without a name. Whether the defect lies on it is for {@link Resume}.
         *
         * @throws IllegalArgumentException when it is no {@link Name}
         */
        public Found {
            Name.require("piece", piece);
        }
    }

    /**
     * A part must be of another size; those made already are left alone.
     *
     * @param part its name
     * @param length what it must be now, finished; absent: as before
     * @param width what it must be now, finished; absent: as before
     */
    record Wanted(String part, Optional<Length> length, Optional<Length> width) implements Change {
        /**
         * Refuses a change that changes nothing.
         *
         * @throws IllegalArgumentException when there is neither size, one of them is 0, or the part is no {@link Name}
         */
        public Wanted {
            Name.require("part", part);
            length.ifPresent(size -> positive("length", size));
            width.ifPresent(size -> positive("width", size));
            if (length.isEmpty() && width.isEmpty())
                throw new IllegalArgumentException("neither length nor width is given; say what the part must be now.");
        }
    }

    private static void positive(String field, Length length) {
        if (length.isZero()) throw new IllegalArgumentException(field + " is 0; it must be more.");
    }
}
