package ripwright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A length as people write it, and what it says. */
final class LengthText {
    private static final Pattern FORM =
            Pattern.compile("(?:(?<whole>\\d{1,12})(?:\\s+|\\s*-\\s*))?(?<numerator>\\d{1,12})"
                    + "\\s*/\\s*(?<denominator>\\d{1,12})\\s*(?<fractionUnit>in|mm)?"
                    + "|(?<number>\\d{1,30}(?:\\.\\d{1,30})?|\\.\\d{1,30})\\s*(?<numberUnit>in|mm)?");

    private final String text;
    private final Unit unit;

    LengthText(String text, Unit unit) {
        this.text = text.strip();
        this.unit = unit;
    }

    Length length() {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) throw new IllegalArgumentException(complaint());
        if (matcher.group("number") != null)
            return Length.of(new BigDecimal(matcher.group("number")), unit(matcher.group("numberUnit")));
        return fraction(matcher);
    }

    private Length fraction(Matcher matcher) {
        BigInteger numerator = new BigInteger(matcher.group("numerator"));
        BigInteger denominator = new BigInteger(matcher.group("denominator"));
        if (denominator.signum() == 0)
            throw new IllegalArgumentException(
                    "\"" + text + "\" divides by zero; the number under the line must be at least 1.");
        String whole = matcher.group("whole");
        if (whole != null && numerator.compareTo(denominator) >= 0)
            throw new IllegalArgumentException(
                    "\"" + text + "\" has a whole number and a fraction of 1 or more; carry it over.");
        BigInteger parts = new BigInteger(whole == null ? "0" : whole)
                .multiply(denominator)
                .add(numerator);
        BigInteger scaled = parts.multiply(
                BigInteger.valueOf(unit(matcher.group("fractionUnit")).nanometers()));
        BigInteger nearest = scaled.shiftLeft(1).add(denominator).divide(denominator.shiftLeft(1));
        if (nearest.bitLength() > 62) throw Length.tooLong("\"" + text + "\"");
        return new Length(nearest.longValueExact());
    }

    private Unit unit(@org.jspecify.annotations.Nullable String symbol) {
        if (symbol == null) return unit;
        return symbol.equals("in") ? Unit.INCH : Unit.MILLIMETER;
    }

    private String complaint() {
        if (text.startsWith("-")) return "A length cannot be negative: \"" + text + "\".";
        return "\"" + text
                + "\" is not a length. Write it like \"2 3/8\", \"2-3/8\", \"23.5\", \"38 mm\" or \"3/4 in\".";
    }
}
