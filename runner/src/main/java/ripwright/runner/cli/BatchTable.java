package ripwright.runner.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What many jobs came to: a table with a line for each, and what they come to together. The same text for the same plans. */
final class BatchTable {
    private static final List<String> HEAD = List.of("job", "parts", "cost", "at least", "gap", "yield", "");
    private static final int FIRST_NUMBER = 1;
    private static final int LAST_NUMBER = 5;

    private final List<Result> results;

    BatchTable(List<Result> results) {
        this.results = results;
    }

    /** Every line ended by a line break. */
    String text() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEAD);
        for (Result result : results) rows.add(row(result));
        int[] widths = new int[HEAD.size()];
        for (List<String> row : rows)
            for (int i = 0; i < widths.length; i++)
                widths[i] = Math.max(widths[i], row.get(i).length());
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) line(row, widths, text);
        return text.append(total(results)).toString();
    }

    private static void line(List<String> row, int[] widths, StringBuilder text) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String gap = " ".repeat(widths[i] - row.get(i).length());
            boolean number = i >= FIRST_NUMBER && i <= LAST_NUMBER;
            line.append(number ? gap + row.get(i) : row.get(i) + gap).append("  ");
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    private static List<String> row(Result result) {
        return result.figures()
                .map(figures -> List.of(
                        result.file().name(),
                        figures.made() + " of " + figures.wanted(),
                        figures.net().toPlainString(),
                        figures.bound().toPlainString(),
                        percent(figures.gap(), 2, RoundingMode.UP),
                        percent(figures.yield(), 1, RoundingMode.HALF_UP),
                        result.words()))
                .orElseGet(() -> List.of(result.file().name(), "", "", "", "", "", result.words()));
    }

    private static String percent(BigDecimal share, int decimals, RoundingMode rounding) {
        return share.movePointRight(2).setScale(decimals, rounding).toPlainString() + " %";
    }

    /** How many ended how, and what their plans cost together; one line. */
    static String total(List<Result> results) {
        Map<ExitCode, Long> counts =
                results.stream().collect(Collectors.groupingBy(Result::exit, TreeMap::new, Collectors.counting()));
        String ended = counts.entrySet().stream()
                .map(entry -> entry.getValue() + " " + entry.getKey().word())
                .collect(Collectors.joining(", "));
        long stand = results.stream()
                .filter(result -> result.ending() == Result.Ending.STANDS)
                .count();
        BigDecimal cost = results.stream()
                .flatMap(result -> result.figures().stream())
                .map(Figures::net)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return (results.size() == 1 ? "1 job: " : results.size() + " jobs: ") + ended
                + (stand > 0 ? "; " + stand + " of them planned before" : "") + ". Cost of all plans: "
                + cost.toPlainString() + ".\n";
    }
}
