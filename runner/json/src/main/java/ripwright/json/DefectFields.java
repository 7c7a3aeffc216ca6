package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/** A defect, and where it was read. */
final class DefectFields extends ObjectKind<DefectFields.Entry> {
    /** What was read; empty when something is wrong with it. */
    record Entry(Fields fields, Lengths lengths, Optional<Defect> defect) {
        /** Notes when it does not lie on {@code board}. */
        void checkOn(Board board) {
            if (defect.isEmpty()) return;
            Length length = board.length();
            Length to = defect.get().to();
            if (to.exceeds(length)) {
                fields.wrong("to", lengths.text(to) + " is beyond the board's length of " + lengths.text(length) + ".");
                return;
            }
            Length width = board.widthAt(defect.get().from()).max(board.widthAt(to));
            Length right = defect.get().right();
            if (right.exceeds(width))
                fields.wrong(
                        "right",
                        lengths.text(right) + " is beyond the board's width of " + lengths.text(width) + " there.");
        }
    }

    private final Lengths lengths;

    DefectFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object with from, to, left, right, kind and blocks";
    }

    @Override
    protected Entry read(Fields fields) {
        Length from = fields.required("from", lengths.any());
        Length to = fields.required("to", lengths.any());
        Length left = fields.required("left", lengths.any());
        Length right = fields.required("right", lengths.any());
        String kind = fields.required("kind", Names.of("kind of a defect"));
        Defect.Blocks blocks = fields.required("blocks", Kinds.choice(Defect.Blocks.class));
        if (fields.good("from", "to") && !to.exceeds(from))
            fields.wrong(
                    "to",
                    lengths.text(to) + " is not beyond from, " + lengths.text(from)
                            + ". A defect ends farther along than it starts.");
        if (fields.good("left", "right") && !right.exceeds(left))
            fields.wrong(
                    "right",
                    lengths.text(right) + " is not beyond left, " + lengths.text(left)
                            + ". A defect is wider than nothing.");
        Optional<Defect> defect =
                fields.build(() -> Optional.of(new Defect(from, to, left, right, kind, blocks)), Optional::empty);
        return new Entry(fields, lengths, defect);
    }
}
