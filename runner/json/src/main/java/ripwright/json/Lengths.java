package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.NumberText;
import ripwright.json.tree.Value;
import ripwright.measure.Length;
import ripwright.measure.Unit;

/** The kinds of lengths of a file whose plain numbers are in one unit, and how its messages write lengths. */
final class Lengths {
    private static final int LONGEST_TEXT = 100; // letters
    private static final Length WIDEST_KERF = Length.inches("1");

    // Where the unit cannot be read: the same numbers are within bounds more often as millimeters than as inches.
    private static final Unit STAND_IN = Unit.MILLIMETER;

    private final Optional<Unit> unit;
    private final boolean asText;

    private Lengths(Optional<Unit> unit, boolean asText) {
        this.unit = unit;
        this.asText = asText;
    }

    /** As jobs and racks have them: numbers or text. Without a unit a stand-in is read. */
    static Lengths written(Optional<Unit> unit) {
        return new Lengths(unit, true);
    }

    /** As plans have them: numbers alone. */
    static Lengths planned(Optional<Unit> unit) {
        return new Lengths(unit, false);
    }

    Unit unit() {
        return unit.orElse(STAND_IN);
    }

    /** How a message writes it. */
    String text(Length length) {
        return unit().exact(length) + unit.map(known -> " " + known.symbol()).orElse("");
    }

    /** May be 0. */
    Kind<Length> any() {
        return Kinds.of(expected(), Length.ZERO, this::read);
    }

    /** Above 0. */
    Kind<Length> size() {
        return Kinds.of(
                expected(),
                Length.ZERO,
                value -> read(value).map(length -> {
                    if (length.isZero())
                        throw new IllegalArgumentException(value.found() + "; it must be more than 0.");
                    return length;
                }));
    }

    /** 0 to 1 in. */
    Kind<Length> kerf() {
        return Kinds.of(
                expected(),
                Length.ZERO,
                value -> read(value).map(length -> {
                    if (length.exceeds(WIDEST_KERF))
                        throw new IllegalArgumentException(value.found() + "; a kerf is at most 1 in.");
                    return length;
                }));
    }

    private String expected() {
        return asText ? "a length, such as 23.5 or \"2 3/8\"" : "a length, a plain number";
    }

    private Optional<Length> read(Value value) {
        Optional<Length> number = value.number().map(digits -> Length.of(new NumberText(digits).exact(), unit()));
        if (number.isPresent() || !asText) return number;
        return value.text().map(text -> parsed(value, text));
    }

    /** What is too long to be a length is not quoted as a whole. */
    private Length parsed(Value value, String text) {
        if (text.length() <= LONGEST_TEXT) return Length.parse(text, unit());
        throw new IllegalArgumentException(value.found() + "; it must be " + expected() + ".");
    }
}
