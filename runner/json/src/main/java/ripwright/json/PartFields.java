package ripwright.json;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.bill.Tenon;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.stock.Species;

/** One line of the cutting bill. */
final class PartFields extends ObjectKind<Part> {
    private static final int MOST_COPIES = 100_000;

    private final Lengths lengths;
    private final Distinct names = new Distinct("name");

    PartFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object with name, count, length, width, thickness and face";
    }

    @Override
    protected Part read(Fields fields) {
        String name = fields.required("name", Names.of("name"));
        int count = fields.required("count", Kinds.wholeInt(1, MOST_COPIES));
        Length length = fields.required("length", lengths.size());
        Length width = fields.required("width", lengths.size());
        Length thickness = fields.required("thickness", lengths.size());
        List<Species> species = fields.optional("species", new SpeciesKind(), List.of());
        Part.Face face = fields.required("face", Kinds.choice(Part.Face.class));
        Length sneakUp = fields.optional("sneakUp", lengths.any(), Length.ZERO);
        Length edgeAllowance = fields.optional("edgeAllowance", lengths.any(), Length.ZERO);
        boolean fitted = fields.optional("fitted", Kinds.flag(), false);
        Optional<String> together = fields.optional("together", Names.of("together group"));
        boolean tested = fields.optional("test", Kinds.flag(), true);
        Tenon tenon = fields.optional("tenon", BothEndsKind.tenon(lengths.any()), Tenon.NONE);
        List<String> boards = fields.optional("boards", Kinds.list(Names.of("id")), List.of());
        if (fields.good("boards") && boards.isEmpty())
            fields.wrong("boards", "an empty list; name one board at least, or leave it out.");
        if (fields.good("name")) fields.value("name").ifPresent(value -> names.check(value, name));
        checkBlank(fields, "tenon", length, tenon.near().plus(tenon.far()));
        checkBlank(fields, "sneakUp", length.plus(tenon.sum()), sneakUp);
        checkBlank(fields, "edgeAllowance", width, edgeAllowance);
        return fields.build(
                () -> new Part(
                        name,
                        count,
                        length,
                        width,
                        thickness,
                        Set.copyOf(species),
                        face,
                        sneakUp,
                        edgeAllowance,
                        fitted,
                        together,
                        Set.copyOf(boards),
                        tested,
                        tenon),
                () -> standIn(fields.good("count") ? count : 1));
    }

    private void checkBlank(Fields fields, String allowance, Length size, Length extra) {
        if (extra.exceeds(Length.LONGEST.minus(size)))
            fields.wrong(
                    allowance,
                    lengths.text(extra) + " more than " + lengths.text(size) + " is over 100 m; make it less.");
    }

    private static Part standIn(int count) {
        Length size = new Length(OnePlace.NANOMETERS + 1); // of what has none: the least a job may have
        return Part.of("?", size, size, size).count(count).build();
    }
}
