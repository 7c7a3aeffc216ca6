package ripwright.bill;

import java.util.Optional;
import java.util.Set;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.measure.Name;
import ripwright.stock.Species;

/**
 * One line of the cutting bill: what the furniture needs, in finished size.
 *
 * @param name what the shop calls it, unique in the bill
 * @param count how many are wanted
 * @param length finished, along the grain; between the shoulders where there are tenons
 * @param width finished, across
 * @param thickness finished; a board must mill to exactly this
 * @param species the woods it may be of; empty for any wood at all
 * @param face whether a viewer will see it
 * @param sneakUp extra length left on its blank, trimmed by hand while fitting
 * @param edgeAllowance extra width left on its blank
 * @param fitted whether it is cut last, one at a time, to the opening
 * @param together the group whose blanks all come from one board
 * @param boards the ids of the boards it may come from; empty for any board. One that ends with {@link #USED_UP} is there no
 *     longer: a part that names no other can come from nowhere
 * @param tested whether its width must be proved: false where it is hidden, or jointed or planed to width later
 * @param tenon how far it reaches beyond its shoulders
 */
public record Part(
        String name,
        int count,
        Length length,
        Length width,
        Length thickness,
        Set<Species> species,
        Face face,
        Length sneakUp,
        Length edgeAllowance,
        boolean fitted,
        Optional<String> together,
        Set<String> boards,
        boolean tested,
        Tenon tenon) {
    /** Ends the id of a board that is used up. */
    public static final String USED_UP = ", used up";

    /** Whether a viewer will see a part. */
    public enum Face {
        /** It shows: nothing a viewer would see is tolerated. */
        SHOW,
        /** It is hidden: sound defects are tolerated. */
        HIDDEN
    }

    /**
     * Refuses a part that cannot be. Whether there are such boards is for the job.
     *
     * @throws IllegalArgumentException when the name or the group is no {@link Name}, {@code count} is under 1, or a finished
     *     size is 0
     */
    public Part {
        Name.require("name", name);
        together.ifPresent(group -> Name.require("together group", group));
        if (count < 1) throw new IllegalArgumentException("count is " + count + "; it must be at least 1.");
        positive("length", length);
        positive("width", width);
        positive("thickness", thickness);
        species = Set.copyOf(species);
        boards = Set.copyOf(boards);
    }

    /** A part whose width must be proved, without tenons. */
    public Part(
            String name,
            int count,
            Length length,
            Length width,
            Length thickness,
            Set<Species> species,
            Face face,
            Length sneakUp,
            Length edgeAllowance,
            boolean fitted,
            Optional<String> together,
            Set<String> boards) {
        this(
                name,
                count,
                length,
                width,
                thickness,
                species,
                face,
                sneakUp,
                edgeAllowance,
                fitted,
                together,
                boards,
                true,
                Tenon.NONE);
    }

    private static void positive(String field, Length length) {
        if (length.isZero()) throw new IllegalArgumentException(field + " is 0; it must be more.");
    }

    /** One hidden part of any wood and of any board, without allowances, to be altered. */
    public static Builder of(String name, Length length, Length width, Length thickness) {
        return new Builder(name, length, width, thickness);
    }

    /**
     * The same line for that many.
     *
     * @throws IllegalArgumentException when they are fewer than 1
     */
    public Part times(int count) {
        return toBuilder().count(count).build();
    }

    /**
     * The same line at that finished width.
     *
     * @throws IllegalArgumentException when it is 0
     */
    public Part ofWidth(Length width) {
        return toBuilder().width(width).build();
    }

    /** The same line, to be altered. */
    public Builder toBuilder() {
        Builder builder = new Builder(name, length, width, thickness);
        builder.count = count;
        builder.species = species;
        builder.face = face;
        builder.sneakUp = sneakUp;
        builder.edgeAllowance = edgeAllowance;
        builder.fitted = fitted;
        builder.together = together;
        builder.boards = boards;
        builder.tested = tested;
        builder.tenon = tenon;
        return builder;
    }

    /**
     * How long it is when it is finished: its length and its tenons.
     *
     * @throws IllegalArgumentException when that is over 100 m
     */
    public Length finishedLength() {
        return length.plus(tenon.sum());
    }

    /**
     * How long its blank is: finished length and sneak-up oversize.
     *
     * @throws IllegalArgumentException when that is over 100 m
     */
    public Length blankLength() {
        return finishedLength().plus(sneakUp);
    }

    /**
     * How wide its blank is: finished width and edge allowance.
     *
     * @throws IllegalArgumentException when that is over 100 m
     */
    public Length blankWidth() {
        return width.plus(edgeAllowance);
    }

    /** Whether it may be of that wood. */
    public boolean takes(Species wood) {
        return species.isEmpty() || species.contains(wood);
    }

    /** Whether it may come from the board of that id. */
    public boolean mayComeFrom(String board) {
        return boards.isEmpty() || boards.contains(board);
    }

    /** The wood in one finished part, by true volume. */
    public BoardFeet boardFeet() {
        return BoardFeet.of(finishedLength(), width, thickness);
    }

    /** Builds a part from a plain one, or from another. For one thread; checks nothing before {@link #build}. */
    public static final class Builder {
        private final String name;
        private final Length thickness;
        private Length length;
        private Length width;
        private int count = 1;
        private Set<Species> species = Set.of();
        private Face face = Face.HIDDEN;
        private Length sneakUp = Length.ZERO;
        private Length edgeAllowance = Length.ZERO;
        private boolean fitted;
        private Optional<String> together = Optional.empty();
        private Set<String> boards = Set.of();
        private boolean tested = true;
        private Tenon tenon = Tenon.NONE;

        private Builder(String name, Length length, Length width, Length thickness) {
            this.name = name;
            this.length = length;
            this.width = width;
            this.thickness = thickness;
        }

        /** That many. */
        public Builder count(int count) {
            this.count = count;
            return this;
        }

        /** Of that finished length. */
        public Builder length(Length length) {
            this.length = length;
            return this;
        }

        /** Of that finished width. */
        public Builder width(Length width) {
            this.width = width;
            return this;
        }

        /** Of one of those woods; of any when there are none. */
        public Builder species(Set<Species> species) {
            this.species = species;
            return this;
        }

        /** Showing or hidden. */
        public Builder face(Face face) {
            this.face = face;
            return this;
        }

        /** With that much extra length. */
        public Builder sneakUp(Length sneakUp) {
            this.sneakUp = sneakUp;
            return this;
        }

        /** With that much extra width. */
        public Builder edgeAllowance(Length edgeAllowance) {
            this.edgeAllowance = edgeAllowance;
            return this;
        }

        /** Cut last, one at a time. */
        public Builder fitted(boolean fitted) {
            this.fitted = fitted;
            return this;
        }

        /** From one board with all others of that group. */
        public Builder together(String group) {
            return together(Optional.of(group));
        }

        /** From one board with all others of that group; from any boards without one. */
        public Builder together(Optional<String> group) {
            this.together = group;
            return this;
        }

        /** From one of the boards with those ids; from any when there are none. */
        public Builder boards(Set<String> boards) {
            this.boards = boards;
            return this;
        }

        /** Whether its width must be proved. */
        public Builder tested(boolean tested) {
            this.tested = tested;
            return this;
        }

        /** Reaching that far beyond its shoulders. */
        public Builder tenon(Tenon tenon) {
            this.tenon = tenon;
            return this;
        }

        /**
         * The part.
         *
         * @throws IllegalArgumentException when it cannot be; the message says why
         */
        public Part build() {
            return new Part(
                    name,
                    count,
                    length,
                    width,
                    thickness,
                    species,
                    face,
                    sneakUp,
                    edgeAllowance,
                    fitted,
                    together,
                    boards,
                    tested,
                    tenon);
        }
    }
}
