package ripwright.json.tree;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What keeps a text from being JSON, in plain words: what stands there, and what is due from what stands before it. */
final class SyntaxMistake {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}_.+-]+");
    private static final Pattern NO_NUMBER = Pattern.compile("-?(?:NaN|[+-]?Infinity|INF)$");
    private static final String OTHER_QUOTES = "'`\u2018\u2019\u201C\u201D\u201E";
    private static final String QUOTE_LENGTHS =
            " A length with a fraction or a unit goes in double quotes, as in \"2 3/8\" or \"38 mm\".";

    private final String text;
    private final int offset;
    private final String what;

    /** Of the parser in the state that {@code e} left it in. */
    SyntaxMistake(String text, JsonParser parser, JsonProcessingException e) {
        this.text = text;
        int at = (int) Math.min(text.length(), Math.max(0, e.getLocation().getCharOffset()));
        boolean ended = e instanceof JsonEOFException || isCutShort(text.stripTrailing(), at);
        Matcher noNumber = NO_NUMBER.matcher(text.substring(Math.max(0, at - 12), at));
        if (ended) {
            this.offset = text.stripTrailing().length();
            this.what = "the text ends here, in the middle; the file seems cut short.";
        } else if (noNumber.find()) {
            this.offset = at - noNumber.group().length();
            this.what = noNumber.group() + " is not a number; write one in plain digits.";
        } else {
            this.offset = at;
            this.what = parser.currentToken() == JsonToken.VALUE_STRING && insideText(e) ? inText() : between(parser);
        }
    }

    /** Whether the mistake is at the very end, and the end is not that of an object or a list. */
    private static boolean isCutShort(String text, int at) {
        return at >= text.length() - 1 && !text.endsWith("}") && !text.endsWith("]");
    }

    /** Where it is. */
    int offset() {
        return offset;
    }

    /** What was found and what would be right. */
    String what() {
        return what;
    }

    /** Whether the text value the parser is at has begun but not ended: its closing quote is what it looked for. */
    private static boolean insideText(JsonProcessingException e) {
        String message = e.getOriginalMessage();
        return message.contains("string value") || message.contains("escape");
    }

    private String inText() {
        char found = text.charAt(offset);
        if (found == '\n' || found == '\r') return "the line ends inside text; close it with a double quote.";
        if (found < ' ') return "a control character inside text; leave it out.";
        return "a backslash before something JSON does not know; a backslash itself is written \\\\.";
    }

    private String between(JsonParser parser) {
        if (text.startsWith("//", offset) || text.startsWith("/*", offset))
            return "a remark; these files have none, take it out.";
        if (OTHER_QUOTES.indexOf(text.charAt(offset)) >= 0)
            return text.charAt(offset)
                    + " is no quote here; names and text go in straight double quotes, \"like this\".";
        int before = offset - 1;
        while (before >= 0 && isBlank(text.charAt(before))) before--;
        if (before < 0) return found() + " where the file's one value is due: an object, starting with {.";
        char previous = text.charAt(before);
        char found = text.charAt(offset);
        boolean inObject = parser.getParsingContext().inObject();
        if (found < ' ' || previous < ' ') return "a control character; leave it out.";
        if (previous == ',' && (found == '}' || found == ']'))
            return "a comma before " + found + "; take the comma out.";
        if (previous == '{' || (previous == ',' && inObject))
            return found() + " where the name of a field in double quotes is due.";
        if (":[,".indexOf(previous) >= 0 && found != '.')
            return found() + " where a value is due." + hintForValue(found);
        if (parser.currentToken() == JsonToken.FIELD_NAME && previous == '"')
            return found() + " where a colon is due, between a field's name and its value.";
        if (parser.currentToken() == JsonToken.FIELD_NAME || (!Character.isDigit(previous) && !isEnd(previous)))
            return "a number that JSON does not know; write it like 0.5, 5 or 1.25.";
        String due = inObject ? " where a comma or } is due." : " where a comma or ] is due.";
        return found() + due + (Character.isDigit(previous) ? hintAfterNumber(found) : "");
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\r' || c == '\n';
    }

    /** Whether a value can end so: text, an object, a list, true, false or null. */
    private static boolean isEnd(char c) {
        return c == '"' || c == '}' || c == ']' || c == 'e' || c == 'l';
    }

    private static String hintForValue(char found) {
        if (Character.isLetter(found)) return " Text goes in double quotes; true, false and null are in small letters.";
        return Character.isDigit(found) || found == '-' ? QUOTE_LENGTHS : "";
    }

    private static String hintAfterNumber(char found) {
        return Character.isLetterOrDigit(found) || found == '/' || found == '-' ? QUOTE_LENGTHS : "";
    }

    private String found() {
        Matcher word = WORD.matcher(text).region(offset, Math.min(text.length(), offset + 20));
        return "found "
                + (word.lookingAt() ? word.group() : text.substring(offset, text.offsetByCodePoints(offset, 1)));
    }
}
