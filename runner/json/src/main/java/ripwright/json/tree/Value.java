package ripwright.json.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A value of a file and where it stands. */
public final class Value {
    private static final Pattern UNQUOTED = Pattern.compile("-?\\d+(?:\\.\\d+)?|true|false");

    private final Source source;
    private final Problems problems;
    private final Place path;
    private final JsonNode node;

    Value(Source source, Problems problems, Place path, JsonNode node) {
        this.source = source;
        this.problems = problems;
        this.path = path;
        this.node = node;
    }

    /** Notes {@code what} was found here and what would be right. */
    public void wrong(String what) {
        problems.add(source, path.toString(), node.at(), what);
    }

    /** Notes what is wrong with the file it stands in, as a whole. */
    public void wrongFile(String what) {
        problems.add(source.name(), what);
    }

    /** Notes that this is not of that kind. */
    public void refuse(Kind<?> kind) {
        boolean word = kind.expected().contains("\""); // one that does stand in quotes
        boolean quoted = !word && text().filter(UNQUOTED.asMatchPredicate()).isPresent();
        wrong(found() + "; it must be " + kind.expected() + "." + (quoted ? " Leave the quotes out." : ""));
    }

    /** What stands here, as a message names it. */
    public String found() {
        return node.found();
    }

    /** Where it stands, as in {@code $.stack[4].width}. */
    public String path() {
        return path.toString();
    }

    /** The file it stands in, as the user knows it. */
    public String file() {
        return source.name();
    }

    /** Whether it is an object. */
    public boolean isObject() {
        return node instanceof JsonNode.JsonObject;
    }

    /** The text in double quotes here; empty when it is anything else. */
    public Optional<String> text() {
        return scalar(JsonNode.Type.TEXT);
    }

    /** The digits here, as they are written; empty when it is anything else. */
    public Optional<String> number() {
        return scalar(JsonNode.Type.NUMBER);
    }

    /** True or false; empty when it is anything else. */
    public Optional<Boolean> flag() {
        return scalar(JsonNode.Type.FLAG).map("true"::equals);
    }

    private Optional<String> scalar(JsonNode.Type type) {
        return node instanceof JsonNode.JsonScalar scalar && scalar.type() == type
                ? Optional.of(scalar.text())
                : Optional.empty();
    }

    /** The values of the list here; empty when it is anything else. */
    public Optional<List<Value>> items() {
        return items(Integer.MAX_VALUE);
    }

    /** The same; an {@link IllegalArgumentException}, before anything is made of them, when they are more than {@code most}. */
    Optional<List<Value>> items(int most) {
        if (!(node instanceof JsonNode.JsonArray array)) return Optional.empty();
        if (array.items().size() > most)
            throw new IllegalArgumentException(array.items().size() + " entries; there may be " + most + ".");
        List<Value> items = new ArrayList<>(array.items().size());
        for (int i = 0; i < array.items().size(); i++)
            items.add(new Value(source, problems, path.item(i), array.items().get(i)));
        return Optional.of(items);
    }

    /** The fields of the object here; empty when it is anything else. */
    public Optional<Fields> fields() {
        return node instanceof JsonNode.JsonObject object
                ? Optional.of(new Fields(this, object.members()))
                : Optional.empty();
    }

    Value field(String name, JsonNode.Member member) {
        return new Value(source, problems, path.field(name), member.value());
    }

    /** Notes what is wrong with the field of that name, at its name when it is there, else at the object's start. */
    void wrongField(String name, int at, String what) {
        problems.add(source, path.field(name).toString(), at < 0 ? placeOf(name) : at, what);
    }

    private int placeOf(String missing) {
        return node instanceof JsonNode.JsonObject object
                ? object.blanks().getOrDefault(missing, node.at())
                : node.at();
    }

    long problems() {
        return problems.count();
    }
}
