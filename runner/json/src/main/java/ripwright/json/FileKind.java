package ripwright.json;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Value;

/** The kinds of files there are, told apart by fields that no other kind has: a wrong file is one mistake, not twenty. */
enum FileKind {
    JOB("a job"),
    PLAN("a plan"),
    REPORT("a report of what is done"),
    RACK("a rack");

    private final String name;

    FileKind(String name) {
        this.name = name;
    }

    private List<String> own() {
        return switch (this) {
            case JOB -> List.of("saw", "stack", "parts", "keep");
            case PLAN -> List.of("steps", "boards", "settings", "testBlanks");
            case REPORT -> List.of("done", "changes");
            case RACK -> List.of("offcuts"); // a plan has them too, but is known before
        };
    }

    /** That file's value; empty when it is clearly of another kind, which is noted. */
    Optional<Value> required(Value file) {
        Map<String, Value> fields = file.fields().map(Fields::all).orElse(Map.of());
        if (isOf(fields)) return Optional.of(file);
        Optional<FileKind> other =
                Arrays.stream(values()).filter(kind -> kind.isOf(fields)).findFirst();
        other.ifPresent(kind -> file.wrongFile("this is " + kind.name + "; " + name + " is due here."));
        return other.isPresent() ? Optional.empty() : Optional.of(file);
    }

    private boolean isOf(Map<String, Value> fields) {
        return own().stream().anyMatch(fields::containsKey);
    }
}
