package ripwright.bench;

import java.util.List;
import java.util.Locale;

/** The lines as bars in an SVG: for each row how much more than the best each of the three asks. */
final class Picture {
    private static final int LEFT = 250; // of the bars
    private static final int LONGEST = 420; // bar
    private static final int WIDTH = LEFT + LONGEST + 80;
    private static final int BAR = 11;
    private static final int ROW = 3 * BAR + 13;
    private static final int TOP = 52;
    private static final List<String> NAMES = List.of("hand rule", "plain OptaPlanner", "Ripwright");
    private static final List<String> FILLS = List.of("#c8c8c8", "#8a8a8a", "#2f5d50");

    private final List<Line> lines;
    private final StringBuilder svg = new StringBuilder();

    Picture(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /** The picture. */
    String text() {
        svg.setLength(0);
        int height = TOP + ROW * lines.size() + 8;
        add("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" font-family="sans-serif" font-size="10">
                <rect width="100%%" height="100%%" fill="#fff"/>
                """, WIDTH, height);
        words(10, 16, "start", "Cost over the best known, else over our bound: medians, in percent");
        for (int i = 0; i < NAMES.size(); i++) {
            bar(10 + 140 * i, 26, BAR, FILLS.get(i));
            words(26 + 140 * i, 35, "start", NAMES.get(i));
        }
        double most = lines.stream()
                .flatMap(line -> over(line).stream())
                .filter(Double::isFinite)
                .reduce(1.0, Math::max);
        for (int row = 0; row < lines.size(); row++) row(lines.get(row), TOP + ROW * row, most);
        add("<path d=\"M%d %dV%d\" stroke=\"#444\"/>\n</svg>\n", LEFT, TOP - 4, height - 8);
        return svg.toString();
    }

    private static List<Double> over(Line line) {
        return List.of(
                line.median(outcome -> outcome.over(outcome.hand())),
                line.median(outcome -> outcome.over(outcome.plain())),
                line.median(outcome -> outcome.over(outcome.ours())));
    }

    private void row(Line line, int top, double most) {
        words(LEFT - 8, top + 2 * BAR - 1, "end", line.row().name());
        List<Double> over = over(line);
        for (int i = 0; i < over.size(); i++) {
            double figure = over.get(i);
            double length = Double.isFinite(figure) ? LONGEST * figure / most : 0;
            bar(LEFT, top + BAR * i, length, FILLS.get(i));
            words(LEFT + length + 5, top + BAR * i + 9, "start", Table.number("%.1f", figure));
        }
    }

    private void bar(double x, int y, double length, String fill) {
        add("<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" fill=\"%s\"/>\n", x, y, length, BAR - 1, fill);
    }

    private void words(double x, int y, String anchor, String words) {
        String safe = words.replace("&", "&amp;").replace("<", "&lt;");
        add("<text x=\"%.1f\" y=\"%d\" text-anchor=\"%s\">%s</text>\n", x, y, anchor, safe);
    }

    private void add(String format, Object... figures) {
        svg.append(String.format(Locale.ROOT, format, figures));
    }
}
