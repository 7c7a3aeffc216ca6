package ripwright.json.tree;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What people and spreadsheets write into cells, as a file in JSON would have it. */
final class CellText {
    private static final Set<String> YES = Set.of("yes", "y", "true", "x", "1", "\u2713", "\u2714", "\u2611");
    private static final Set<String> NO = Set.of("no", "n", "false", "0", "-", "\u2610");

    private static final Pattern NUMBER = Pattern.compile("-?(?:\\d+(?:\\.\\d+)?|\\.\\d+)");
    private static final Pattern LENGTH =
            Pattern.compile("((?:\\d+(?:\\s+|\\s*-\\s*))?\\d+\\s*/\\s*\\d+|\\d+(?:\\.\\d+)?|\\.\\d+)\\s*(in|mm)?");
    private static final Pattern FRACTION_SIGN = Pattern.compile("(\\d)?\\s*([\u00BC-\u00BE\u2150-\u215E])");
    private static final Pattern INCHES = Pattern.compile("(?i)\\s*(?:\"|''|\u2033|\u201D|in\\.|inch(?:es)?)$");
    private static final Pattern MILLIMETERS = Pattern.compile("(?i)\\s*(?:mm\\.?|millimet(?:er|re)s?)$");
    private static final Pattern MONEY = Pattern.compile("^\\p{Sc}\\s*|\\s*\\p{Sc}$");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:\\.\\d{3})+");
    private static final String MONTH = "(?:jan|feb|m[a\u00E4]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])\\p{L}*";
    private static final Pattern DATE = Pattern.compile(
            "(?iU)\\d{1,2}[-. ]+" + MONTH + "\\.?|" + MONTH + "[-. ]+\\d{1,4}|\\d{1,4}([-./])\\d{1,2}\\1\\d{1,4}");
    private static final Pattern BETWEEN_CHOICES = Pattern.compile("(?i)\\s+or\\s+|\\s*[;|]\\s*");

    private final boolean decimalComma;

    /** Of a table whose decimals may stand behind a comma. */
    CellText(boolean decimalComma) {
        this.decimalComma = decimalComma;
    }

    /** What a cell of that column says; {@code unit} is what its head says its lengths are in, or empty. */
    JsonNode node(Column column, String unit, CsvRows.Cell cell) {
        String text = plain(cell.text());
        return switch (column.holds()) {
            case TEXT -> text(cell, word(column.words(), text));
            case NUMBER -> number(cell, word(column.words(), text));
            case LENGTH -> length(cell, text, unit);
            case FLAG -> flag(cell, text);
            case CHOICES -> choices(cell, text);
        };
    }

    /** With plain blanks, and without the apostrophe that keeps a spreadsheet from reckoning. */
    private static String plain(String text) {
        String spaced = text.replace('\u00A0', ' ').replace('\u202F', ' ').strip();
        boolean guarded = spaced.length() > 1 && spaced.charAt(0) == '\'' && "=+-@".indexOf(spaced.charAt(1)) >= 0;
        return guarded ? spaced.substring(1) : spaced;
    }

    private static String word(Map<String, String> words, String text) {
        return words.getOrDefault(text.toLowerCase(Locale.ROOT), text);
    }

    private static JsonNode text(CsvRows.Cell cell, String text) {
        return new JsonNode.JsonScalar(cell.at(), JsonNode.Type.TEXT, text);
    }

    private static JsonNode useless(CsvRows.Cell cell, String found) {
        return new JsonNode.JsonScalar(cell.at(), JsonNode.Type.USELESS, found);
    }

    private JsonNode number(CsvRows.Cell cell, String text) {
        String amount = MONEY.matcher(text).replaceAll("");
        if (isGrouped(amount)) return grouped(cell, amount);
        String digits = decimal(amount);
        if (!NUMBER.matcher(digits).matches()) return text(cell, text);
        boolean whole = digits.matches("-?\\d+\\.0+"); // some spreadsheets write every number with decimals
        String plain = whole ? digits.substring(0, digits.indexOf('.')) : digits;
        return new JsonNode.JsonScalar(cell.at(), JsonNode.Type.NUMBER, plain.startsWith(".") ? "0" + plain : plain);
    }

    private JsonNode length(CsvRows.Cell cell, String text, String unit) {
        if (DATE.matcher(text).matches())
            return useless(
                    cell,
                    JsonNode.quoted(text)
                            + " is a date, which is what spreadsheets make of 3/8 unless the cells are set to text first");
        String spelled = MILLIMETERS
                .matcher(INCHES.matcher(fractions(text)).replaceFirst(" in"))
                .replaceFirst(" mm");
        Matcher number = LENGTH.matcher(decimal(spelled));
        if (!number.matches()) return text(cell, text);
        if (isGrouped(number.group(1))) return grouped(cell, number.group(1));
        String own = number.group(2) == null ? unit : number.group(2);
        return text(cell, own.isEmpty() ? number.group(1) : number.group(1) + " " + own);
    }

    /** With fractions of one sign and the slash that belongs to fractions spelled out. */
    private static String fractions(String text) {
        String spelled = FRACTION_SIGN.matcher(text).replaceAll(sign -> {
            String fraction = Normalizer.normalize(sign.group(2), Normalizer.Form.NFKC);
            return sign.group(1) == null ? fraction : sign.group(1) + " " + fraction;
        });
        return spelled.replace('\u2044', '/');
    }

    private String decimal(String text) {
        return decimalComma ? text.replace(',', '.') : text;
    }

    /** Whether a point may stand between thousands: where decimals stand behind a comma, nobody can tell. */
    private boolean isGrouped(String text) {
        return decimalComma && GROUPED.matcher(text).matches();
    }

    private static JsonNode grouped(CsvRows.Cell cell, String text) {
        return useless(cell, JsonNode.quoted(text) + " may be " + text.replace(".", "") + " or a number with decimals");
    }

    private static JsonNode flag(CsvRows.Cell cell, String text) {
        String word = text.toLowerCase(Locale.ROOT);
        if (YES.contains(word)) return new JsonNode.JsonScalar(cell.at(), JsonNode.Type.FLAG, "true");
        if (NO.contains(word)) return new JsonNode.JsonScalar(cell.at(), JsonNode.Type.FLAG, "false");
        return useless(cell, JsonNode.quoted(text) + " is neither yes nor no");
    }

    private static JsonNode choices(CsvRows.Cell cell, String text) {
        List<JsonNode> choices = new ArrayList<>();
        for (String choice : BETWEEN_CHOICES.split(text, -1)) if (!choice.isBlank()) choices.add(text(cell, choice));
        return choices.size() > 1 ? new JsonNode.JsonArray(cell.at(), choices) : text(cell, text);
    }
}
