package ripwright.runner.trial;

import java.math.BigDecimal;
import java.util.List;
import ripwright.bill.Part;
import ripwright.json.FiguresOut;
import ripwright.json.csv.CsvOut;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Length;
import ripwright.plan.Cost;
import ripwright.plan.Shortage;
import ripwright.plan.Tally;

/** A comparison as files for other programs; figures as a plan's file has them. */
public final class ComparisonFiles {
    private static final int FORMAT = 1;

    private final Comparison comparison;

    /** Of that comparison. */
    public ComparisonFiles(Comparison comparison) {
        this.comparison = comparison;
    }

    /** A row for each width. */
    public byte[] table(CsvOut.Style style) {
        String unit = comparison.job().units().symbol();
        List<String> heads = List.of(
                "width (" + unit + ")",
                "as in the job",
                "parts made",
                "parts wanted",
                "boards",
                "stock",
                "salvage",
                "labor",
                "net",
                "bound",
                "rip settings",
                "stop settings",
                "offcuts",
                "offcuts (board feet)",
                "consumed (board feet)",
                "waste (board feet)",
                "yield",
                "minutes");
        return CsvOut.bytes(
                style,
                heads,
                out -> comparison.outcomes().forEach(outcome -> {
                    Cost cost = outcome.plan().cost();
                    Tally tally = outcome.plan().tally();
                    out.row(
                            number(outcome.width()),
                            comparison.isAsInTheJob(outcome),
                            outcome.partsMade(),
                            outcome.partsWanted(),
                            outcome.boards(),
                            cost.stock(),
                            cost.salvage(),
                            cost.labor(),
                            cost.net(),
                            cost.bound(),
                            outcome.ripSettings(),
                            outcome.stopSettings(),
                            outcome.offcuts(),
                            tally.offcuts(),
                            tally.consumed(),
                            tally.waste(),
                            tally.yield(),
                            tally.minutes());
                }));
    }

    /** One object, its widths in the order they were asked for. */
    public byte[] json() {
        return JsonOut.bytes(json -> {
            json.number("format", FORMAT);
            json.text("job", comparison.job().name());
            json.text("units", comparison.job().units().symbol());
            json.texts("parts", comparison.parts().stream().map(Part::name).toList());
            json.list("widths", comparison.outcomes(), outcome -> width(json, outcome));
        });
    }

    private void width(JsonOut json, Outcome outcome) {
        FiguresOut figures = new FiguresOut(json);
        Tally tally = outcome.plan().tally();
        json.number("width", number(outcome.width()));
        json.flag("asInTheJob", comparison.isAsInTheJob(outcome));
        json.text("status", outcome.complete() ? "complete" : "short");
        json.number("partsMade", outcome.partsMade());
        json.number("partsWanted", outcome.partsWanted());
        json.number("boards", outcome.boards());
        figures.cost(outcome.plan().cost());
        json.number("ripSettings", outcome.ripSettings());
        json.number("stopSettings", outcome.stopSettings());
        json.number("offcuts", outcome.offcuts());
        figures.boardFeet(tally);
        json.number("yield", tally.yield());
        json.number("minutes", tally.minutes());
        json.list("short", outcome.plan().shortages(), shortage -> shortage(json, shortage));
    }

    private static void shortage(JsonOut json, Shortage shortage) {
        json.text("part", shortage.part());
        json.number("count", shortage.count());
        json.number("boardFeet", shortage.buy().boardFeet());
    }

    private BigDecimal number(Length width) {
        return comparison.job().units().number(width);
    }
}
