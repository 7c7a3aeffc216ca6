package ripwright.json;

import java.nio.file.Path;
import java.util.Optional;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Problems;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;

/** Reads plan files. What {@link PlanWriter} wrote comes back, lengths as exact as six decimals are. */
public final class PlanReader {
    private PlanReader() {}

    /** The plan of that file; all that is wrong with its form comes as one exception. Whether it is right is for replay. */
    public static Plan read(Path file) throws WrongInputException {
        Problems problems = new Problems();
        Optional<Plan> plan = new JsonFile(problems)
                .value(file)
                .flatMap(FileKind.PLAN::required)
                .map(new PlanFields()::read);
        problems.throwIfAny();
        return plan.orElseThrow();
    }
}
