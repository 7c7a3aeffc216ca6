package ripwright.runner.json;

import java.util.Optional;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.tree.Kind;
import ripwright.runner.tree.Kinds;
import ripwright.runner.tree.NumberText;
import ripwright.runner.tree.Value;

/** The kinds of lengths of a file whose plain numbers are in one unit. */
final class Lengths {
    private static final String WRITTEN = "a length, such as 23.5 or \"2 3/8\"";
    private static final Length WIDEST_KERF = Length.inches("1");

    private final Unit unit;

    Lengths(Unit unit) {
        this.unit = unit;
    }

    /** A number or text; may be 0. */
    Kind<Length> any() {
        return Kinds.of(WRITTEN, Length.ZERO, this::read);
    }

    /** A number or text, above 0. */
    Kind<Length> size() {
        return Kinds.of(
                WRITTEN,
                Length.ZERO,
                value -> read(value).map(length -> {
                    if (length.isZero())
                        throw new IllegalArgumentException(value.found() + "; it must be more than 0.");
                    return length;
                }));
    }

    /** A number or text, 0 to 1 in. */
    Kind<Length> kerf() {
        return Kinds.of(
                WRITTEN,
                Length.ZERO,
                value -> read(value).map(length -> {
                    if (length.exceeds(WIDEST_KERF))
                        throw new IllegalArgumentException(value.found() + "; a kerf is at most 1 in.");
                    return length;
                }));
    }

    /** A number alone, as plans have it. */
    Kind<Length> planned() {
        return Kinds.of("a length, a plain number", Length.ZERO, this::number);
    }

    private Optional<Length> read(Value value) {
        return number(value).or(() -> value.text().map(text -> Length.parse(text, unit)));
    }

    private Optional<Length> number(Value value) {
        return value.number().map(digits -> Length.of(new NumberText(digits).exact(), unit));
    }
}
