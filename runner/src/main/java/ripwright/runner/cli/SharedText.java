package ripwright.runner.cli;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Unit;
import ripwright.shared.SharedPlan;
import ripwright.shared.SharedSettings;

/** What several jobs from one stack come to together, and the rip settings of all as one list, for people and programs. */
final class SharedText {
    private final SharedPlan plans;
    private final SharedSettings settings;
    private final List<SharedSettings.Row> rows;

    SharedText(SharedPlan plans, SharedSettings settings) {
        this.plans = plans;
        this.settings = settings;
        this.rows = settings.rows();
    }

    /** Every line ended by a line break. */
    String text() {
        StringBuilder text =
                new StringBuilder("All together: cost " + plans.net().toPlainString() + ", "
                        + plans.fresh().setScale(1, RoundingMode.HALF_UP).toPlainString()
                        + " board feet of the stack. Cut in this order: "
                        + plans.turns().stream().map(turn -> turn.job().name()).collect(Collectors.joining(", "))
                        + ".\n");
        if (rows.isEmpty()) return text.toString();
        boolean oneGo = rows.size() < settings.apart();
        text.append(
                oneGo
                        ? "Rip settings for all, " + rows.size() + " instead of " + settings.apart()
                                + ": set the fence and prove it once a line, then rip for every job in the line.\n"
                        : "Rip settings, job by job; cutting all in one go would save none:\n");
        List<List<String>> lines = new ArrayList<>();
        for (SharedSettings.Row row : rows) lines.add(line(row));
        int run = lines.stream().mapToInt(line -> line.get(0).length()).max().orElse(0);
        int width = lines.stream().mapToInt(line -> line.get(1).length()).max().orElse(0);
        for (List<String> line : lines)
            text.append("  ")
                    .append(padded(line.get(0), run))
                    .append(padded(line.get(1), width))
                    .append(line.get(2))
                    .append('\n');
        if (oneGo && rows.get(rows.size() - 1).run() > 1)
            text.append("A later run takes wood that is there only after the one before.\n");
        return text.toString();
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length() + 2);
    }

    private List<String> line(SharedSettings.Row row) {
        Unit units = plans.turns().get(0).job().units();
        String uses = row.uses().stream()
                .map(use -> job(use) + " " + use.setting() + ": " + use.strips()
                        + (use.strips() == 1 ? " strip" : " strips"))
                .collect(Collectors.joining("; "));
        return List.of("run " + row.run(), units.nearest(row.width()) + " " + units.symbol(), uses);
    }

    private String job(SharedSettings.Use use) {
        return plans.turns().get(use.turn()).job().name();
    }

    /** The same for programs; {@code settings.schema.json} says what every field means. */
    byte[] json() {
        Unit units = plans.turns().get(0).job().units();
        return JsonOut.bytes(json -> {
            json.number("format", 1);
            json.text("units", units.symbol());
            json.number("net", plans.net());
            json.number("fresh", plans.fresh());
            json.texts(
                    "jobs",
                    plans.turns().stream().map(turn -> turn.job().name()).toList());
            json.number("apart", settings.apart());
            json.list("settings", rows, row -> {
                json.number("run", row.run());
                json.number("width", units.number(row.width()));
                json.list("uses", row.uses(), use -> {
                    json.text("job", job(use));
                    json.text("setting", use.setting());
                    json.number("strips", use.strips());
                });
            });
        });
    }
}
