package ripwright.json;

import java.nio.file.Path;
import java.util.Optional;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Problems;
import ripwright.json.tree.WrongInputException;

/** Reads rack files. */
public final class RackReader {
    private RackReader() {}

    /** The rack of that file; all that is wrong with it comes as one exception. */
    public static Rack read(Path file) throws WrongInputException {
        Problems problems = new Problems();
        Optional<Rack> rack = new JsonFile(problems)
                .value(file)
                .flatMap(FileKind.RACK::required)
                .map(new RackFields(new Distinct("id"))::read);
        problems.throwIfAny();
        return rack.orElseThrow();
    }
}
