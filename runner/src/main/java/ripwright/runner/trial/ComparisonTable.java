package ripwright.runner.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ripwright.measure.Length;
import ripwright.plan.Shortage;
import ripwright.plan.Tally;
import ripwright.stock.Species;

/** A comparison as a terminal shows it: a line for each width, and in words what follows. */
public final class ComparisonTable {
    private static final List<String> HEADS =
            List.of("width", "parts", "boards", "net cost", "at least", "settings", "offcuts", "yield", "time");

    private final Comparison comparison;

    /** Of that comparison. */
    public ComparisonTable(Comparison comparison) {
        this.comparison = comparison;
    }

    /** Every line ended by a line break. */
    public String text() {
        StringBuilder text = new StringBuilder();
        int count = comparison.outcomes().size();
        text.append(comparison.job().name()).append(": ").append(comparison.names());
        text.append(" at ").append(count == 1 ? "1 width" : count + " widths").append(".\n\n");
        table(text);
        text.append('\n');
        verdict().forEach(line -> text.append("  ").append(line).append('\n'));
        return text.toString();
    }

    private void table(StringBuilder text) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADS);
        comparison.outcomes().forEach(outcome -> rows.add(cells(outcome)));
        int[] widths = new int[HEADS.size()];
        for (List<String> row : rows)
            for (int i = 0; i < widths.length; i++)
                widths[i] = Math.max(widths[i], row.get(i).length());
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(" ");
            for (int i = 0; i < widths.length; i++) {
                String blanks = " ".repeat(widths[i] - row.get(i).length());
                line.append(i == 0 ? " " : "  ").append(i == 0 ? row.get(i) + blanks : blanks + row.get(i));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private List<String> cells(Outcome outcome) {
        Tally tally = outcome.plan().tally();
        String all = outcome.complete() ? "all " : outcome.partsMade() + " of ";
        return List.of(
                comparison.text(outcome.width()),
                all + outcome.partsWanted(),
                String.valueOf(outcome.boards()),
                outcome.net().toPlainString(),
                outcome.bound().toPlainString(),
                outcome.ripSettings() + " rip, " + outcome.stopSettings() + " stop",
                outcome.offcuts() + " (" + feet(tally.offcuts(), RoundingMode.HALF_UP) + " bf)",
                percent(tally.yield()) + " %",
                time(tally.minutes()));
    }

    private List<String> verdict() {
        List<String> lines = new ArrayList<>();
        comparison
                .cheapest()
                .ifPresentOrElse(
                        best -> cheapest(best, lines), () -> lines.add("At none of these widths the stack makes all."));
        List<Outcome> dearer = comparison.surelyDearer();
        if (!dearer.isEmpty())
            lines.add("Dearer for certain, whatever the plan: "
                    + dearer.stream()
                            .map(outcome -> comparison.text(outcome.width()))
                            .collect(Collectors.joining(", "))
                    + ".");
        for (Outcome outcome : comparison.outcomes())
            for (Shortage shortage : outcome.plan().shortages()) lines.add(shortage(outcome, shortage));
        return lines;
    }

    private void cheapest(Outcome best, List<String> lines) {
        lines.add("Cheapest found: " + comparison.text(best.width()) + " at "
                + best.net().toPlainString() + (comparison.isAsInTheJob(best) ? ", as in the job." : "."));
        comparison
                .asInTheJob()
                .filter(asIs -> asIs.complete() && !comparison.isAsInTheJob(best))
                .ifPresent(asIs -> lines.add("As in the job, " + comparison.text(asIs.width()) + ": "
                        + asIs.net().subtract(best.net()).toPlainString() + " more."));
    }

    private String shortage(Outcome outcome, Shortage shortage) {
        Shortage.Buy buy = shortage.buy();
        String wood = buy.species().isEmpty()
                ? "any wood"
                : buy.species().stream().map(Species::name).collect(Collectors.joining(" or "));
        return "Short at " + comparison.text(outcome.width()) + ": " + shortage.count() + " x " + shortage.part()
                + "; buy " + feet(buy.boardFeet(), RoundingMode.UP) + " board feet of " + wood + ", "
                + tape(buy.thickness()) + " thick, no board under " + tape(buy.narrowest()) + " x "
                + tape(buy.shortest()) + " "
                + comparison.job().units().symbol() + ".";
    }

    private String tape(Length length) {
        return comparison.job().units().nearest(length);
    }

    static String feet(BigDecimal boardFeet, RoundingMode rounding) {
        return boardFeet.setScale(1, rounding).toPlainString();
    }

    static String percent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    static String time(BigDecimal minutes) {
        long whole = minutes.setScale(0, RoundingMode.UP).longValue();
        return whole < 60 ? whole + " min" : whole / 60 + " h " + whole % 60 + " min";
    }
}
