package ripwright.json;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Problems;
import ripwright.json.tree.Value;
import ripwright.measure.Unit;

/** The rack of a job: the offcuts themselves, as a rack file has them, or the path of such a file, which is read. */
final class RackKind implements Kind<Rack> {
    private final RackHome home;
    private final Problems problems;
    private final Distinct ids;

    RackKind(RackHome home, Problems problems, Distinct ids) {
        this.home = home;
        this.problems = problems;
        this.ids = ids;
    }

    @Override
    public String expected() {
        return "the path of a rack file, or a rack itself";
    }

    @Override
    public Rack read(Value value) {
        if (value.isObject()) return new RackFields(ids).read(value);
        Optional<String> text = value.text();
        if (text.isEmpty()) {
            value.refuse(this);
            return standIn();
        }
        try {
            return read(value, Path.of(text.get()));
        } catch (InvalidPathException e) {
            value.wrong(value.found() + " is no path.");
            return standIn();
        }
    }

    private Rack read(Value value, Path path) {
        if (home.forbids(path)) {
            value.wrong(value.found() + " leads out of the working folder. A job that comes as a line may have its rack"
                    + " in there or in a folder below, or hold it itself.");
            return standIn();
        }
        Path file = home.folder().resolve(path).normalize();
        Optional<String> hindrance =
                path.toString().isBlank() ? Optional.of("a blank path.") : JsonFile.hindrance(file);
        if (hindrance.isPresent()) {
            value.wrong(value.found() + " leads to " + file + ": " + hindrance.get());
            return standIn();
        }
        return new JsonFile(problems)
                .value(file)
                .flatMap(FileKind.RACK::required)
                .map(new RackFields(ids)::read)
                .orElseGet(this::standIn);
    }

    @Override
    public Rack standIn() {
        return new Rack(Unit.MILLIMETER, List.of());
    }
}
