package ripwright.json;

import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.measure.Name;
import ripwright.stock.Species;

/** The kinds of names and ids. */
final class Names {
    private Names() {}

    /** A name; messages call it {@code what}. */
    static Kind<String> of(String what) {
        return Kinds.of(
                "text of 1 to 300 characters", "?", value -> value.text().map(text -> require(what, text)));
    }

    /** The id of a stack or rack entry. */
    static Kind<String> id() {
        return Kinds.of(
                "text of 1 to 300 characters",
                "?",
                value -> value.text().map(text -> {
                    if (text.contains("#"))
                        throw new IllegalArgumentException(value.found()
                                + " holds a #, which tells the copies of an entry with a count apart. Leave it out.");
                    return require("id", text);
                }));
    }

    static Kind<Species> species() {
        return Kinds.of(
                "the name of a wood", new Species("?"), value -> value.text().map(Names::species));
    }

    static Species species(String text) {
        return new Species(require("species", text));
    }

    private static String require(String what, String text) {
        Name.require(what, text);
        if (text.codePoints().anyMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE))
            throw new IllegalArgumentException("The " + what + " holds half of a two-part character; write it whole.");
        return text;
    }
}
