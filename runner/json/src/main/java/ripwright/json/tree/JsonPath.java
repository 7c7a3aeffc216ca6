package ripwright.json.tree;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Where a value stands in its file, as in {@code $.stack[4].width}. */
final class JsonPath implements Place {
    static final JsonPath ROOT = new JsonPath(null, "$", -1);

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");

    private final @Nullable JsonPath parent;
    private final String name; // of a field
    private final int index; // of an item; -1 for a field

    private JsonPath(@Nullable JsonPath parent, String name, int index) {
        this.parent = parent;
        this.name = name;
        this.index = index;
    }

    @Override
    public JsonPath field(String name) {
        return new JsonPath(this, name, -1);
    }

    @Override
    public JsonPath item(int index) {
        return new JsonPath(this, "", index);
    }

    @Override
    public String toString() {
        if (parent == null) return name;
        if (index >= 0) return parent + "[" + index + "]";
        return parent + (PLAIN.matcher(name).matches() ? "." + name : "[" + JsonNode.quoted(name) + "]");
    }
}
