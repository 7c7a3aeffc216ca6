package ripwright.json.tree;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Mistakes as a user reads them: file by file, each with its path, what is wrong, and the line it stands on. */
final class MistakeText {
    private static final int MOST_SHOWN = 100; // of one file
    private static final int WIDEST_PATH = 40; // a longer one stands out of the column

    private final List<Mistake> mistakes;
    private final Map<String, Long> counts; // how many there are in every file, shown or not

    MistakeText(List<Mistake> mistakes, Map<String, Long> counts) {
        this.mistakes = List.copyOf(mistakes);
        this.counts = new LinkedHashMap<>(counts);
    }

    String text(String consequence) {
        StringBuilder text = new StringBuilder();
        counts.forEach((file, count) -> {
            if (count == 0) return;
            List<Mistake> shown = mistakes.stream()
                    .filter(mistake -> mistake.file().equals(file))
                    .limit(MOST_SHOWN)
                    .toList();
            boolean first = text.isEmpty();
            text.append(file).append(": ").append(count == 1 ? "1 mistake" : count + " mistakes");
            text.append(first ? ", " + consequence + "." : ".");
            if (shown.size() < count)
                text.append(" The first ").append(shown.size()).append(':');
            text.append('\n');
            lines(shown, text);
        });
        return text.toString();
    }

    private static void lines(List<Mistake> mistakes, StringBuilder text) {
        int column = 0;
        for (Mistake mistake : mistakes)
            if (mistake.path().length() <= WIDEST_PATH)
                column = Math.max(column, mistake.path().length());
        for (Mistake mistake : mistakes) {
            String path = mistake.path();
            String padding = " ".repeat(Math.max(0, column - path.length()) + 3);
            boolean whole = mistake.spot().isEmpty(); // of a file as a whole, its name has said where
            text.append("  ").append(whole ? "" : path + padding);
            text.append(mistake.what()).append('\n');
            mistake.spot().ifPresent(spot -> excerpt(spot, text));
        }
    }

    private static void excerpt(Mistake.Spot spot, StringBuilder text) {
        String place = "    " + spot.line() + ":" + spot.column();
        text.append(place).append(" | ").append(spot.excerpt()).append('\n');
        text.append(" ".repeat(place.length()))
                .append(" | ")
                .append(" ".repeat(spot.caret()))
                .append("^\n");
    }
}
