package ripwright.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Problems;
import ripwright.json.tree.Value;
import ripwright.json.tree.WrongInputException;

/** Reads rack files. Keeps no state; safe on any thread. */
public final class RackReader {
    private RackReader() {}

    /**
     * The rack of that file.
     *
     * @throws WrongInputException with all that is wrong with it
     */
    public static Rack read(Path file) throws WrongInputException {
        Problems problems = new Problems();
        return rack(new JsonFile(problems).value(file), problems);
    }

    /**
     * The same from a stream, which messages call {@code name}; it is read to its end, and the caller closes it.
     *
     * @throws WrongInputException with all that is wrong with it
     * @throws IOException when the stream throws it
     */
    public static Rack read(InputStream in, String name) throws WrongInputException, IOException {
        Problems problems = new Problems();
        return rack(new JsonFile(problems).value(name, in), problems);
    }

    private static Rack rack(Optional<Value> value, Problems problems) throws WrongInputException {
        Optional<Rack> rack = value.flatMap(FileKind.RACK::required).map(new RackFields(new Distinct("id"))::read);
        problems.throwIfAny();
        return rack.orElseThrow();
    }
}
