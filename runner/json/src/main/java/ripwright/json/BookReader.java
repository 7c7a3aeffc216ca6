package ripwright.json;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.json.tree.Problems;
import ripwright.json.tree.WrongInputException;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

/** Reads books: the plans booked against a rack. Keeps no state; safe on any thread. */
public final class BookReader {
    private static final Kind<String> DIGEST = Names.of("digest");
    private static final Kind<String> TEXT = Kinds.of("text", "", value -> value.text());

    private BookReader() {}

    /**
     * The book of that file.
     *
     * @throws WrongInputException with all that is wrong with it
     */
    public static Book read(Path file) throws WrongInputException {
        Problems problems = new Problems();
        Kind<Book> kind = ObjectKind.of("an object with format, units and booked", BookReader::book);
        Optional<Book> book = new JsonFile(problems).value(file).map(kind::read);
        problems.throwIfAny();
        return book.orElseThrow();
    }

    private static Book book(Fields fields) {
        Lengths lengths = Lengths.written(Format.read(fields));
        Kind<Booked> entry = ObjectKind.of(
                "an object with job, on, file, plan, after, left, cut, taken and entered",
                booked -> booked(booked, lengths));
        return new Book(lengths.unit(), fields.required("booked", Kinds.list(entry)));
    }

    private static Booked booked(Fields fields, Lengths lengths) {
        WoodFields wood = new WoodFields(lengths);
        Kind<Board> board =
                ObjectKind.of("a board as in a stack", cut -> wood.read(cut, cut.required("id", Names.of("id"))));
        OffcutFields offcut = new OffcutFields(lengths, new Distinct("id"));
        Kind<Settlement.Taken> taken = ObjectKind.of(
                "an offcut with its place",
                left -> new Settlement.Taken(
                        left.required("place", Kinds.wholeInt(0, Integer.MAX_VALUE)), offcut.read(left)));
        List<Board> cut = fields.required("cut", Kinds.list(board));
        List<Settlement.Taken> took = fields.required("taken", Kinds.list(taken));
        List<Board> entered = fields.required("entered", Kinds.list(offcut));
        return new Booked(
                fields.required("job", Names.of("job's name")),
                fields.required("file", TEXT), // whatever a system lets files be called
                fields.required("plan", DIGEST),
                fields.required("on", Names.of("day")),
                new Settlement(cut, took, entered),
                fields.optional("before", DIGEST),
                fields.required("after", DIGEST),
                fields.optional("writtenBefore", TEXT),
                fields.required("left", DIGEST));
    }
}
