package ripwright.testing;

import java.util.ArrayList;
import java.util.List;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Species;

/**
 * A board that its blanks and the kerfs between them fill exactly.
 *
 * @param board the board, without its price and its place in the stack yet
 * @param sections its sections, from the marked end
 */
record BuiltBoard(Board board, List<Section> sections) {
    /**
     * A section.
     *
     * @param length its length
     * @param strips its strips, widest first
     */
    record Section(Length length, List<Strip> strips) {}

    /**
     * A strip.
     *
     * @param width its width
     * @param blanks the lengths of its blanks, longest first
     */
    record Strip(Length width, List<Length> blanks) {}

    /**
     * Where a blank lies.
     *
     * @param key what kind of blank it is
     * @param from where it starts along the grain
     * @param left where it starts across
     */
    record Place(Key key, Length from, Length left) {}

    /** What kinds of blanks it is built of, one entry for each blank. */
    List<Key> keys() {
        return sections.stream()
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream().map(length -> key(strip, length)))
                .toList();
    }

    /** Where its blanks lie. */
    List<Place> places(Saw kerfs) {
        List<Place> places = new ArrayList<>();
        Length start = board.endTrim().near();
        for (Section section : sections) {
            Length left = leftLoss();
            for (Strip strip : section.strips()) {
                Length from = start;
                for (Length length : strip.blanks()) {
                    places.add(new Place(key(strip, length), from, left));
                    from = from.plus(length).plus(kerfs.crosscutKerf());
                }
                left = left.plus(strip.width()).plus(kerfs.ripKerf());
            }
            start = start.plus(section.length()).plus(kerfs.crosscutKerf());
        }
        return places;
    }

    /** What kind of blank of that length {@code strip} has. */
    Key key(Strip strip, Length length) {
        return new Key(length, strip.width(), this);
    }

    /** What straightening takes from the left edge. */
    Length leftLoss() {
        return board.straightEdges() >= 1 ? Length.ZERO : board.edgeLoss();
    }

    /** What straightening takes from the right edge. */
    Length rightLoss() {
        return board.straightEdges() == 2 ? Length.ZERO : board.edgeLoss();
    }

    /** What makes two blanks lines of one part: their size, wood and thickness. */
    record Key(Length length, Length width, Species wood, Length thickness) {
        private Key(Length length, Length width, BuiltBoard built) {
            this(length, width, built.board().species(), built.board().millsTo());
        }
    }
}
