package ripwright.json.tree;

import java.util.Arrays;

/** A file as it was read: its name as the user knows it, and its text. */
final class Source {
    private static final int BEFORE = 50; // how much of a long line is shown before a spot
    private static final int WIDTH = 100; // how much of it is shown in all

    private final String name;
    private final String text;
    private int[] lineStarts = {}; // offsets, found when first asked for

    Source(String name, String text) {
        this.name = name;
        this.text = text;
    }

    String name() {
        return name;
    }

    String text() {
        return text;
    }

    /** Line, column and line of the character at {@code offset}. */
    Mistake.Spot spot(int offset) {
        if (lineStarts.length == 0) lineStarts = findLineStarts();
        int at = Math.min(offset, text.length());
        int found = Arrays.binarySearch(lineStarts, at);
        int line = found >= 0 ? found : -found - 2;
        int end = lineEnd(line);
        boolean isShort = end - lineStarts[line] <= WIDTH;
        int start = isShort ? lineStarts[line] : Math.max(lineStarts[line], at - BEFORE);
        end = Math.min(end, start + WIDTH);
        String excerpt = clean(text.substring(start, Math.max(start, end)));
        int indent = excerpt.length() - excerpt.stripLeading().length();
        int cut = Math.min(indent, at - start);
        return new Mistake.Spot(
                line + 1, at - lineStarts[line] + 1, excerpt.substring(cut).stripTrailing(), at - start - cut);
    }

    private int lineEnd(int line) {
        int end = line + 1 < lineStarts.length ? lineStarts[line + 1] : text.length();
        while (end > lineStarts[line] && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) end--;
        return end;
    }

    private int[] findLineStarts() {
        int[] starts = new int[16];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
            if (!ends) continue;
            if (count == starts.length) starts = Arrays.copyOf(starts, 2 * count);
            starts[count++] = i + 1;
        }
        return Arrays.copyOf(starts, count);
    }

    /** {@code text} with every control character and every half of a character made harmless. */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == '\t') clean.append(' ');
            else if (Character.isISOControl(c) || (c >= 0xD800 && c <= 0xDFFF)) clean.append('?');
            else clean.appendCodePoint(c);
        });
        return clean.toString();
    }
}
