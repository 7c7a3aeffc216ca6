package ripwright.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.resume.Change;
import ripwright.resume.Report;

/** A report: what is done, and what is different. */
final class ReportFields extends ObjectKind<Report> {
    private static final int MOST = 1_000_000;

    private final Lengths lengths;

    ReportFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object, starting with {";
    }

    @Override
    protected Report read(Fields fields) {
        Format.readNumber(fields);
        String job = fields.required("job", Names.of("job's name"));
        List<Integer> done = fields.required("done", Kinds.list(Kinds.wholeInt(0, Integer.MAX_VALUE), MOST));
        List<String> made =
                fields.optional("made", Kinds.list(Names.of("piece"), MOST)).orElse(List.of());
        List<Optional<Change>> changes = fields.required("changes", Kinds.list(new ChangeFields(lengths), MOST));
        Optional<String> note = fields.optional("note", NOTE);
        return new Report(
                job, done, made, changes.stream().flatMap(Optional::stream).toList(), note);
    }

    private static final Kind<String> NOTE = Kinds.of("text", "", ripwright.json.tree.Value::text);

    /** One of the changes there can be; empty when something is wrong with it. */
    private static final class ChangeFields extends ObjectKind<Optional<Change>> {
        private final Lengths lengths;

        ChangeFields(Lengths lengths) {
            this.lengths = lengths;
        }

        @Override
        public String expected() {
            return "an object with piece and one of width, length, spoiled or defect, or with part and length or width";
        }

        @Override
        protected Optional<Change> read(Fields fields) {
            Optional<String> piece = fields.optional("piece", Names.of("piece"));
            Optional<String> part = fields.optional("part", Names.of("part"));
            Optional<Length> width = fields.optional("width", lengths.size());
            Optional<Length> length = fields.optional("length", lengths.size());
            Optional<Boolean> spoiled = fields.optional("spoiled", Kinds.flag());
            Optional<DefectFields.Entry> defect = fields.optional("defect", new DefectFields(lengths));
            if (piece.isPresent() && part.isPresent())
                fields.wrong("part", "a piece and a part in one change. Say of one what is different.");
            if (piece.isEmpty() && part.isEmpty())
                fields.missing(
                        "piece", List.of("piece", "part"), "missing. Name the piece or the part that is different.");
            if (piece.isPresent() == part.isPresent()) return Optional.empty();
            if (part.isPresent()) return ofPart(fields, part.get(), length, width, spoiled, defect);
            long said = Stream.of(width, length, spoiled, defect)
                    .filter(Optional::isPresent)
                    .count();
            if (said == 0)
                fields.missing(
                        "piece",
                        List.of("width", "length", "spoiled", "defect"),
                        "nothing is different. Say one of width, length, spoiled or defect.");
            if (said > 1) fields.wrong("piece", said + " things in one change. Make a change of each.");
            if (said != 1) return Optional.empty();
            if (spoiled.isPresent() && fields.good("spoiled") && !spoiled.get())
                fields.wrong("spoiled", "false; leave the change out when the piece is good.");
            return fields.build(() -> Optional.of(ofPiece(piece.get(), width, length, defect)), Optional::empty);
        }

        private static Change ofPiece(
                String piece, Optional<Length> width, Optional<Length> length, Optional<DefectFields.Entry> defect) {
            if (width.isPresent()) return new Change.Width(piece, width.get());
            if (length.isPresent()) return new Change.Extent(piece, length.get());
            return defect.<Change>map(
                            entry -> new Change.Found(piece, entry.defect().orElseThrow()))
                    .orElseGet(() -> new Change.Spoiled(piece));
        }

        private static Optional<Change> ofPart(
                Fields fields,
                String part,
                Optional<Length> length,
                Optional<Length> width,
                Optional<Boolean> spoiled,
                Optional<DefectFields.Entry> defect) {
            if (spoiled.isPresent()) fields.wrong("spoiled", "a part is not spoiled; name the piece that is.");
            if (defect.isPresent()) fields.wrong("defect", "a part has no defect; name the piece that has.");
            if (length.isEmpty() && width.isEmpty())
                fields.missing(
                        "part",
                        List.of("length", "width"),
                        "nothing is different. Say the length or the width it must be now.");
            return fields.build(() -> Optional.of(new Change.Wanted(part, length, width)), Optional::empty);
        }
    }
}
