package ripwright.stock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Area;
import ripwright.measure.Length;
import ripwright.measure.Name;

/**
 * One measured piece of solid wood, from the stack or from the rack. Its frame: stand at the marked end and look along
 * the grain, face side up; x runs away from you, y from the board's own left edge.
 *
 * @param id what the shop calls it, unique over stack and rack
 * @param species its wood
 * @param thickness what it measures now
 * @param millsTo what it will finish at; the same as {@code thickness} when it is milled already
 * @param width at the marked end
 * @param widthAtFarEnd at the other end
 * @param length along the grain
 * @param crook how far the edges that are not straight bow out over the whole length; 0 where both are straight
 * @param straightEdges 2: both; 1: the left one; 0: neither
 * @param edgeLoss what straightening takes from an edge that is not straight, at least
 * @param endTrim what a section gives up where it reaches for an end
 * @param squareEnds 2: both ends are sawn square already; 1: the marked one; 0: neither
 * @param defects what parts must avoid, in the board's frame
 * @param price money per board foot, where it is not the species' price
 * @param ripped whether it is one strip of its full width already
 * @param testOnly whether it gives test blanks alone and no part comes from it
 * @param history where an offcut came from; empty for a board of the stack
 */
public record Board(
        String id,
        Species species,
        Length thickness,
        Length millsTo,
        Length width,
        Length widthAtFarEnd,
        Length length,
        Length crook,
        int straightEdges,
        Length edgeLoss,
        EndTrim endTrim,
        int squareEnds,
        List<Defect> defects,
        Optional<BigDecimal> price,
        boolean ripped,
        boolean testOnly,
        Optional<History> history) {

    /**
     * Refuses a board that cannot be. Whether end trims and edge losses leave any wood of it is not asked: such a board is
     * never cut.
     *
     * @throws IllegalArgumentException when the id is no {@link Name}, a thickness, width or length is 0, {@code millsTo} is
     *     more than {@code thickness}, {@code straightEdges} is not 0, 1 or 2, there is crook though both edges are straight, a
     *     ripped board has a taper or an edge that is not straight, the price is negative, an end is
     *     called square to an edge that is not straight or with a trim, or a defect does not lie on the board; the message says which
     */
    public Board {
        Name.require("id", id);
        positive("thickness", thickness);
        positive("millsTo", millsTo);
        positive("width", width);
        positive("widthAtFarEnd", widthAtFarEnd);
        positive("length", length);
        if (millsTo.exceeds(thickness))
            throw new IllegalArgumentException(
                    "millsTo is " + millsTo + ", more than the thickness of " + thickness + ".");
        if (straightEdges < 0 || straightEdges > 2)
            throw new IllegalArgumentException("straightEdges is " + straightEdges + "; it must be 0, 1 or 2.");
        if (straightEdges == 2 && !crook.isZero())
            throw new IllegalArgumentException(
                    crook + " on a board with two straight edges. Set straightEdges to 1 or 0, or leave crook out.");
        if (ripped && straightEdges != 2)
            throw new IllegalArgumentException("A ripped board has two straight edges; set straightEdges to 2.");
        if (ripped && !width.equals(widthAtFarEnd))
            throw new IllegalArgumentException("A ripped board has no taper, but it is " + width
                    + " wide at one end and " + widthAtFarEnd + " at the other.");
        squareEnds(squareEnds, straightEdges, endTrim);
        price.ifPresent(Board::requirePrice);
        defects = List.copyOf(defects);
        for (Defect defect : defects) {
            if (defect.to().exceeds(length))
                throw new IllegalArgumentException(
                        "A defect ends at " + defect.to() + ", beyond the board's length of " + length + ".");
            Length widest = widthAt(width, widthAtFarEnd, length, defect.from())
                    .max(widthAt(width, widthAtFarEnd, length, defect.to()));
            if (defect.right().exceeds(widest))
                throw new IllegalArgumentException("A defect's right side is at " + defect.right()
                        + ", beyond the board's width of " + widest + " there.");
        }
    }

    private static void positive(String field, Length length) {
        if (length.isZero()) throw new IllegalArgumentException(field + " is 0; it must be more.");
    }

    private static void squareEnds(int squareEnds, int straightEdges, EndTrim endTrim) {
        if (squareEnds < 0 || squareEnds > 2)
            throw new IllegalArgumentException("squareEnds is " + squareEnds + "; it must be 0, 1 or 2.");
        if (squareEnds > 0 && straightEdges < 2)
            throw new IllegalArgumentException("squareEnds is " + squareEnds + ", but straightEdges is " + straightEdges
                    + "; an end is square to two straight edges.");
        if (squareEnds > 0 && !endTrim.near().isZero())
            throw new IllegalArgumentException("The marked end is square, yet " + endTrim.near()
                    + " is to be trimmed there. Leave out one of the two.");
        if (squareEnds > 1 && !endTrim.far().isZero())
            throw new IllegalArgumentException("The far end is square, yet " + endTrim.far()
                    + " is to be trimmed there. Leave out one of the two.");
    }

    private static void requirePrice(BigDecimal price) {
        if (price.signum() < 0) throw new IllegalArgumentException("price is " + price + "; it cannot be negative.");
    }

    /**
     * A clear board of the stack, milled already, as wide at one end as at the other, with two straight edges and no trim, to
     * be altered.
     *
     * @throws IllegalArgumentException when the species is no {@link Name}; all else is for {@link Builder#build}
     */
    public static Builder measured(String id, String species, Length thickness, Length width, Length length) {
        return new Builder(id, species, thickness, width, length);
    }

    /** This board, to be altered. */
    public Builder toBuilder() {
        return new Builder(this);
    }

    /** Whether it lies on the rack. */
    public boolean fromRack() {
        return history.isPresent();
    }

    /** Whether it must still be milled. */
    public boolean rough() {
        return thickness.exceeds(millsTo);
    }

    /** Whether one end is wider than the other. */
    public boolean tapered() {
        return !width.equals(widthAtFarEnd);
    }

    /**
     * Its width {@code x} along the grain from the marked end, rounded down to the nanometer. Beyond the far end the edges
     * are thought to run on.
     *
     * @throws IllegalArgumentException when they would have met before {@code x}
     */
    public Length widthAt(Length x) {
        return widthAt(width, widthAtFarEnd, length, x);
    }

    private static Length widthAt(Length near, Length far, Length length, Length x) {
        java.math.BigInteger rise = java.math.BigInteger.valueOf(far.nanometers() - near.nanometers())
                .multiply(java.math.BigInteger.valueOf(x.nanometers()));
        java.math.BigInteger[] quotient = rise.divideAndRemainder(java.math.BigInteger.valueOf(length.nanometers()));
        return new Length(near.nanometers() + quotient[0].longValueExact() - (quotient[1].signum() < 0 ? 1 : 0));
    }

    /** Its whole face. */
    public Area area() {
        return Area.trapezoid(length, width, widthAtFarEnd);
    }

    /** Builds a board from a clear one, or from another. For one thread; checks nothing before {@link #build}. */
    public static final class Builder {
        private String id;
        private Species species;
        private Length thickness;
        private Length millsTo;
        private Length width;
        private Length widthAtFarEnd;
        private Length length;
        private Length crook = Length.ZERO;
        private int straightEdges = 2;
        private Length edgeLoss = Length.ZERO;
        private EndTrim endTrim = EndTrim.NONE;
        private int squareEnds;
        private List<Defect> defects = List.of();
        private Optional<BigDecimal> price = Optional.empty();
        private boolean ripped;
        private boolean testOnly;
        private Optional<History> history = Optional.empty();

        private Builder(String id, String species, Length thickness, Length width, Length length) {
            this.id = id;
            this.species = new Species(species);
            this.thickness = thickness;
            this.millsTo = thickness;
            this.width = width;
            this.widthAtFarEnd = width;
            this.length = length;
        }

        private Builder(Board board) {
            id = board.id;
            species = board.species;
            thickness = board.thickness;
            millsTo = board.millsTo;
            width = board.width;
            widthAtFarEnd = board.widthAtFarEnd;
            length = board.length;
            crook = board.crook;
            straightEdges = board.straightEdges;
            edgeLoss = board.edgeLoss;
            endTrim = board.endTrim;
            squareEnds = board.squareEnds;
            defects = board.defects;
            price = board.price;
            ripped = board.ripped;
            testOnly = board.testOnly;
            history = board.history;
        }

        /** Under another id. */
        public Builder id(String id) {
            this.id = id;
            return this;
        }

        /** Of that thickness now, to be milled to {@code millsTo}. */
        public Builder rough(Length thickness, Length millsTo) {
            this.thickness = thickness;
            this.millsTo = millsTo;
            return this;
        }

        /** That long. */
        public Builder length(Length length) {
            this.length = length;
            return this;
        }

        /** That wide at the marked end and at the other. */
        public Builder width(Length near, Length far) {
            this.width = near;
            this.widthAtFarEnd = far;
            return this;
        }

        /** With that many straight edges, the others losing {@code edgeLoss} or what {@code crook} asks. */
        public Builder edges(int straightEdges, Length edgeLoss, Length crook) {
            this.straightEdges = straightEdges;
            this.edgeLoss = edgeLoss;
            this.crook = crook;
            return this;
        }

        /** With that much to trim at the marked end and at the other, each with the kerf of the cut. */
        public Builder endTrim(Length near, Length far) {
            this.endTrim = new EndTrim(near, far);
            return this;
        }

        /** With that to trim at the ends. */
        public Builder endTrim(EndTrim endTrim) {
            this.endTrim = endTrim;
            return this;
        }

        /** With that many ends sawn square already, the marked one first. */
        public Builder squareEnds(int squareEnds) {
            this.squareEnds = squareEnds;
            return this;
        }

        /** With those defects, in its own frame. */
        public Builder defects(List<Defect> defects) {
            this.defects = defects;
            return this;
        }

        /** With a price of its own, money per board foot. */
        public Builder price(BigDecimal price) {
            this.price = Optional.of(price);
            return this;
        }

        /** As one strip of its full width. */
        public Builder ripped(boolean ripped) {
            this.ripped = ripped;
            return this;
        }

        /** For test blanks alone. */
        public Builder testOnly(boolean testOnly) {
            this.testOnly = testOnly;
            return this;
        }

        /** On the rack, with that history. */
        public Builder onRack(History history) {
            this.history = Optional.of(history);
            return this;
        }

        /**
         * The board.
         *
         * @throws IllegalArgumentException when it cannot be; the message says why
         */
        public Board build() {
            return new Board(
                    id,
                    species,
                    thickness,
                    millsTo,
                    width,
                    widthAtFarEnd,
                    length,
                    crook,
                    straightEdges,
                    edgeLoss,
                    endTrim,
                    squareEnds,
                    defects,
                    price,
                    ripped,
                    testOnly,
                    history);
        }
    }
}
