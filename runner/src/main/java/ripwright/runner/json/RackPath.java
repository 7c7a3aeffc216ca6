package ripwright.runner.json;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Unit;
import ripwright.runner.tree.JsonFile;
import ripwright.runner.tree.Kind;
import ripwright.runner.tree.Problems;
import ripwright.runner.tree.Value;

/** The path of a rack file in a job, read as the rack it leads to. */
final class RackPath implements Kind<Rack> {
    private final Path folder;
    private final Problems problems;
    private final Distinct ids;

    /** The path is relative to {@code folder}. */
    RackPath(Path folder, Problems problems, Distinct ids) {
        this.folder = folder;
        this.problems = problems;
        this.ids = ids;
    }

    @Override
    public String expected() {
        return "the path of a rack file";
    }

    @Override
    public Rack read(Value value) {
        Optional<String> text = value.text();
        if (text.isEmpty()) {
            value.refuse(this);
            return standIn();
        }
        try {
            Path file = folder.resolve(text.get()).normalize();
            Optional<String> hindrance = text.get().isBlank() ? Optional.of("a blank path.") : JsonFile.hindrance(file);
            if (hindrance.isEmpty())
                return new JsonFile(problems)
                        .value(file)
                        .flatMap(FileKind.RACK::required)
                        .map(new RackFields(ids)::read)
                        .orElseGet(this::standIn);
            value.wrong(value.found() + " leads to " + file + ": " + hindrance.get());
        } catch (InvalidPathException e) {
            value.wrong(value.found() + " is no path.");
        }
        return standIn();
    }

    @Override
    public Rack standIn() {
        return new Rack(Unit.MILLIMETER, List.of());
    }
}
