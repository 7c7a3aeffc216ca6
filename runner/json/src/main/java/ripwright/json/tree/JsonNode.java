package ripwright.json.tree;

import java.util.List;
import java.util.Map;

/** A value as a file has it, and at which character it starts. */
sealed interface JsonNode {
    /** The offset of its first character. */
    int at();

    /** Named values, and at which character those stand that are blank, where the file has a place for them. */
    record JsonObject(int at, Map<String, Member> members, Map<String, Integer> blanks) implements JsonNode {
        JsonObject(int at, Map<String, Member> members) {
            this(at, members, Map.of());
        }
    }

    /** A list of values. */
    record JsonArray(int at, List<JsonNode> items) implements JsonNode {}

    /** Text, a number as it is written, true, false or null. */
    record JsonScalar(int at, Type type, String text) implements JsonNode {}

    /** A value of an object, and at which character its name starts. */
    record Member(int at, JsonNode value) {}

    /** What a scalar is. */
    enum Type {
        /** In double quotes. */
        TEXT,
        /** Digits. */
        NUMBER,
        /** True or false. */
        FLAG,
        /** Nothing. */
        NULL,
        /** Of no use; its text says what was found instead. */
        USELESS
    }

    /** What it is, as a message names it: short values as they are. */
    default String found() {
        if (this instanceof JsonObject) return "an object";
        if (this instanceof JsonArray) return "a list";
        JsonScalar scalar = (JsonScalar) this;
        if (scalar.type() == Type.USELESS) return scalar.text();
        return scalar.type() == Type.TEXT ? quoted(scalar.text()) : shortened(scalar.text());
    }

    /** {@code text} in double quotes, its middle left out when it is long. */
    static String quoted(String text) {
        return "\"" + shortened(text) + "\"";
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 40) + "..." + text.substring(text.length() - 10);
    }
}
