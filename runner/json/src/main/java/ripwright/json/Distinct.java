package ripwright.json;

import java.util.HashMap;
import java.util.Map;
import ripwright.json.tree.Value;

/** Names that must differ, and where each was met first. */
final class Distinct {
    private final String what;
    private final Map<String, Value> first = new HashMap<>();

    /** Messages call each of the names {@code what}. */
    Distinct(String what) {
        this.what = what;
    }

    /** Notes that {@code name}, which stands there, was met before. */
    void check(Value value, String name) {
        Value other = first.putIfAbsent(name, value);
        if (other == null) return;
        String file = other.file().equals(value.file()) ? "" : " in " + other.file();
        value.wrong(
                value.found() + " is the " + what + " at " + other.path() + file + " too; " + what + "s must differ.");
    }
}
