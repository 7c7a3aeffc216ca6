package ripwright.runner.sheet.drawing;

import java.text.Bidi;

/**
 * Names inside a text. A name written from right to left would turn the figures beside it around, so that 20 × 120 would read
 * 120 × 20; isolated, it keeps to itself.
 *
 * @see "Unicode Standard Annex 9, Unicode Bidirectional Algorithm, 2.4 Explicit Directional Isolates"
 */
public final class Isolated {
    private static final String FIRST_STRONG_ISOLATE = "\u2068";
    private static final String POP_DIRECTIONAL_ISOLATE = "\u2069";

    private Isolated() {}

    /** The name, isolated when it needs to be; whatever could break out of that is shown as a replacement character. */
    public static String name(String name) {
        char[] characters = name.toCharArray();
        if (!Bidi.requiresBidi(characters, 0, characters.length) && name.chars().noneMatch(Isolated::controls))
            return name;
        StringBuilder isolated = new StringBuilder(FIRST_STRONG_ISOLATE);
        for (char character : characters) isolated.append(controls(character) ? '\uFFFD' : character);
        return isolated.append(POP_DIRECTIONAL_ISOLATE).toString();
    }

    private static boolean controls(int character) {
        return (character >= 0x202A && character <= 0x202E) || (character >= 0x2066 && character <= 0x2069);
    }
}
