package ripwright.runner.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Renders the templates, which were made into Java when this was built; they escape every value. */
public final class Markup {
    private Markup() {}

    /** The text that {@code template} makes of {@code values}, free of what XML has no place for. */
    public static String rendered(String template, Map<String, Object> values) {
        StringOutput output = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render(template, values, output);
        return legal(output.toString());
    }

    /** The text, each character that XML has no place for replaced: names may hold halves of pairs and the like. */
    private static String legal(String text) {
        if (text.codePoints().allMatch(Markup::legal)) return text;
        StringBuilder legal = new StringBuilder(text.length());
        text.codePoints()
                .map(character -> legal(character) ? character : 0xFFFD)
                .forEach(legal::appendCodePoint);
        return legal.toString();
    }

    /** Extensible Markup Language 1.0, fifth edition, production 2. */
    private static boolean legal(int character) {
        return (character >= 0x20 && character < 0xD800)
                || (character >= 0xE000 && character < 0xFFFE)
                || character >= 0x10000
                || character == '\t'
                || character == '\n'
                || character == '\r';
    }
}
