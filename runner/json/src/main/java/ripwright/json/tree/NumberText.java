package ripwright.json.tree;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as a file has it. Exact, and small enough to reckon with: 1e999999999 is ten letters and a gigabyte of digits. */
public final class NumberText {
    private static final int LONGEST = 60; // letters
    private static final int FARTHEST = 40; // of the exponent
    private static final Pattern EXPONENT = Pattern.compile("[eE]([+-]?)0*(\\d*)$");

    private final String digits;

    /** As the file has it. */
    public NumberText(String digits) {
        this.digits = digits;
    }

    /**
     * Exactly that.
     *
     * @throws IllegalArgumentException when it has over 60 letters, or its exponent is beyond 40 either way
     */
    public BigDecimal exact() {
        Matcher exponent = EXPONENT.matcher(digits);
        boolean far = exponent.find() && (exponent.group(2).length() > 2 || exponentOf(exponent.group(2)) > FARTHEST);
        if (far || digits.length() > LONGEST)
            throw new IllegalArgumentException(shortened() + " is out of all reason; write a number in plain digits.");
        return new BigDecimal(digits);
    }

    private static int exponentOf(String digits) {
        return digits.isEmpty() ? 0 : Integer.parseInt(digits);
    }

    long whole(long least, long most, String expected) {
        BigDecimal number = exact();
        boolean whole = number.stripTrailingZeros().scale() <= 0;
        if (!whole || number.compareTo(BigDecimal.valueOf(least)) < 0 || number.compareTo(BigDecimal.valueOf(most)) > 0)
            throw new IllegalArgumentException(digits + "; it must be " + expected + ".");
        return number.longValueExact();
    }

    private String shortened() {
        return digits.length() <= LONGEST ? digits : digits.substring(0, 20) + "...";
    }
}
