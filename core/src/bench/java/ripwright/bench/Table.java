package ripwright.bench;

import java.util.List;
import java.util.Locale;

/** The lines as a Markdown table. */
final class Table {
    private static final String HEAD = """
            | jobs | how many x s | hand rule | plain | ours | bound | known | hand rule over | plain over | ours over | gap | proven | to best | plan after | heap |
            | --- | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: |
            """;

    private final List<Line> lines;

    Table(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /** The table, ended by a line break. */
    String text() {
        StringBuilder text = new StringBuilder(HEAD);
        for (Line line : lines)
            text.append("| ").append(String.join(" | ", cells(line))).append(" |\n");
        return text.toString();
    }

    private static List<String> cells(Line line) {
        return List.of(
                line.row().name(),
                line.outcomes().size() + " x " + line.row().seconds().toPlainString(),
                number("%.2f", line.median(outcome -> Outcome.number(outcome.hand()))),
                number("%.2f", line.median(outcome -> Outcome.number(outcome.plain()))),
                number("%.2f", line.median(outcome -> Outcome.number(outcome.ours()))),
                number("%.2f", line.median(outcome -> outcome.cost().bound().doubleValue())),
                line.known().map(known -> number("%.2f", known)).orElse("-"),
                number("%.1f %%", line.median(outcome -> outcome.over(outcome.hand()))),
                number("%.1f %%", line.median(outcome -> outcome.over(outcome.plain()))),
                number("%.2f %%", line.median(outcome -> outcome.over(outcome.ours()))),
                number(
                        "%.2f %%",
                        line.median(outcome -> 100 * outcome.cost().gap().doubleValue())),
                line.proven() + " of " + line.outcomes().size(),
                number("%.1f s", line.median(Outcome::toBest)),
                number("%.1f s", line.median(Outcome::elapsed)),
                number("%.0f MB", line.median(Outcome::heap)));
    }

    /** A figure in that format; {@code short} where half of the jobs or more were not made whole. */
    static String number(String format, double figure) {
        return Double.isInfinite(figure) ? "short" : String.format(Locale.ROOT, format, figure);
    }
}
