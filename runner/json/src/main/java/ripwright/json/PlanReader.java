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

/** Reads plan files. What {@link PlanWriter} wrote comes back, lengths as exact as six decimals are. */
public final class PlanReader {
    private PlanReader() {}

    /** The plan of that file; all that is wrong with its form comes as one exception. Whether it is right is for replay. */
    public static Plan read(Path file) throws WrongInputException {
        Problems problems = new Problems();
        return plan(new JsonFile(problems).value(file), problems);
    }

    /** The same from a stream, which messages call {@code name}; the caller closes it. */
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
