package ripwright.runner.rack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import ripwright.json.PlanReader;
import ripwright.json.PlanWriter;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;
import ripwright.runner.disk.Digest;

/**
 * A plan and the files around it.
 *
 * @param file its file
 * @param plan the plan
 * @param digest tells it from every other plan, however its file is laid out
 */
record PlanFile(Path file, Plan plan, String digest) {
    static PlanFile read(Path file) throws WrongInputException {
        Plan plan = PlanReader.read(file);
        return new PlanFile(file, plan, Digest.of(PlanWriter.bytes(plan)));
    }

    String name() {
        return String.valueOf(file.getFileName());
    }

    /** Its job's file as it is called beside the plan; empty when there is none. */
    Optional<Path> job() {
        return Optional.of(beside(".job.json"))
                .filter(Files::exists)
                .or(() -> Optional.of(beside(".json")).filter(Files::exists).filter(other -> !other.equals(file)));
    }

    /** What to name as the job: after spreadsheets the file that says it all, {@code lockers.whole.json}. */
    String wholeJob() {
        Path whole = beside(".whole.json");
        return Files.exists(whole) ? whole.toString() : "FILE";
    }

    /** Where the boards left go. */
    Path left() throws IOException {
        return beside(".left.json").toAbsolutePath();
    }

    Path beside(String ending) {
        return file.resolveSibling(without(without(name(), ".json"), ".plan") + ending);
    }

    private static String without(String name, String ending) {
        return name.endsWith(ending) && name.length() > ending.length()
                ? name.substring(0, name.length() - ending.length())
                : name;
    }
}
