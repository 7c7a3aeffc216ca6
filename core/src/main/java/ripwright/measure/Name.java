package ripwright.measure;

/** What a name or an id may be. */
public final class Name {
    private static final int LONGEST = 300;

    private Name() {}

    /**
     * {@code text}, when it has 1 to 300 characters, not all blank, and no control characters.
     *
     * @throws IllegalArgumentException when it is anything else; the message calls it {@code what}
     */
    public static String require(String what, String text) {
        if (text.isBlank()) throw new IllegalArgumentException("The " + what + " is blank.");
        if (text.codePointCount(0, text.length()) > LONGEST)
            throw new IllegalArgumentException("The " + what + " is longer than 300 characters.");
        if (text.codePoints().anyMatch(Character::isISOControl))
            throw new IllegalArgumentException(
                    "The " + what + " holds a control character, such as a line break or tab.");
        return text;
    }
}
