package ripwright.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Problems;
import ripwright.json.tree.Value;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;

/**
 * Reads plan files. What {@link PlanWriter} wrote comes back, lengths as exact as six decimals are. Keeps no state; safe on any
 * thread.
 */
public final class PlanReader {
    private PlanReader() {}

    /**
     * The plan of that file. Whether it is right is for replay.
     *
     * @throws WrongInputException with all that is wrong with its form
     */
    public static Plan read(Path file) throws WrongInputException {
        Problems problems = new Problems();
        return plan(new JsonFile(problems).value(file), problems);
    }

    /**
     * The same from a stream, which messages call {@code name}; it is read to its end, and the caller closes it.
     *
     * @throws WrongInputException with all that is wrong with its form
     * @throws IOException when the stream throws it
     */
    public static Plan read(InputStream in, String name) throws WrongInputException, IOException {
        Problems problems = new Problems();
        return plan(new JsonFile(problems).value(name, in), problems);
    }

    private static Plan plan(Optional<Value> value, Problems problems) throws WrongInputException {
        Optional<Plan> plan = value.flatMap(FileKind.PLAN::required).map(new PlanFields()::read);
        problems.throwIfAny();
        return plan.orElseThrow();
    }
}
