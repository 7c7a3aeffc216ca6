package ripwright.json.tree;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A column that a spreadsheet may have, and the field that its cells fill. The name of a field of an object within is written
 * with a dot, as in {@code endTrim.near}; of objects in a list with brackets too, as in {@code defects[].from}: further ones
 * stand in the rows below, whose other cells are blank.
 *
 * @param field the field's name
 * @param holds what its cells hold
 * @param required whether the column must be there
 * @param names what it may be called; the first is what messages call it
 * @param words what words its cells may use for others
 * @param otherwise what a blank cell says, and every cell where the column is not there; blank: nothing
 */
public record Column(
        String field, Holds holds, boolean required, List<String> names, Map<String, String> words, String otherwise) {
    private static final Pattern BESIDE_NAME = Pattern.compile("[(\\[{].*?[)\\]}]|,.*$");
    private static final Pattern NOT_IN_NAME = Pattern.compile("[^\\p{L}\\p{N}]+");

    /** What the cells of a column hold. */
    public enum Holds {
        /** Text as it is. */
        TEXT,
        /** A number; signs of money are taken off. */
        NUMBER,
        /** A length. */
        LENGTH,
        /** Yes or no. */
        FLAG,
        /** Text, or several with {@code or} or a semicolon between. */
        CHOICES
    }

    /** Keeps copies. */
    public Column {
        names = List.copyOf(names);
        words = Map.copyOf(words);
    }

    /** One that must be there. */
    public static Column required(String field, Holds holds, String... names) {
        return new Column(field, holds, true, List.of(names), Map.of(), "");
    }

    /** One that may be there. */
    public static Column optional(String field, Holds holds, String... names) {
        return new Column(field, holds, false, List.of(names), Map.of(), "");
    }

    /** The same, its cells read by {@code words}, which are in lower case. */
    public Column reading(Map<String, String> words) {
        return new Column(field, holds, required, names, words, otherwise);
    }

    /** The same, a blank cell read as {@code text}. */
    public Column otherwise(String text) {
        return new Column(field, holds, required, names, words, text);
    }

    /** Whether {@code head} is one of its names, without regard to case, blanks, signs, plural, and what is in brackets. */
    boolean isCalled(String head) {
        String plain = plain(head);
        return !plain.isEmpty() && names.stream().anyMatch(name -> plain(name).equals(plain));
    }

    static String plain(String head) {
        String name = BESIDE_NAME.matcher(head.toLowerCase(Locale.ROOT)).replaceAll(" ");
        String plain = NOT_IN_NAME.matcher(name).replaceAll("");
        return plain.length() > 3 && plain.endsWith("s") ? plain.substring(0, plain.length() - 1) : plain;
    }

    /** Whether it belongs to the objects of a list. */
    boolean listed() {
        return field.contains("[].");
    }

    /** The field of the row's object that it fills, or fills in part. */
    String outer() {
        int dot = field.indexOf('.');
        return dot < 0 ? field : field.substring(0, dot).replace("[]", "");
    }

    /** The field within that, where there is one; else empty. */
    String inner() {
        int dot = field.indexOf('.');
        return dot < 0 ? "" : field.substring(dot + 1);
    }
}
