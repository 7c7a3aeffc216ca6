package ripwright.runner.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.runner.sheet.Markup;

/**
 * A comparison as a small SVG picture that stands alone: for each width the first part's end, all to one scale, beside a bar
 * for its net cost, hatched as far as no plan can be cheaper. Prints in black and white.
 */
public final class ComparisonPicture {
    /** Where parts start. */
    public static final long PART_LEFT = 124;

    /** Where bars start. */
    public static final long BAR_LEFT = 268;

    private static final long WIDTH = 760;
    private static final long ROW = 64;
    private static final long HEAD = 48;
    private static final long FOOT = 34;
    private static final long PART_LENGTH = 120;
    private static final long PART_HEIGHT = 44;
    private static final long BAR_LENGTH = 330;
    private static final int LONGEST_NAMES = 70;

    private final Comparison comparison;

    /** Of that comparison, which has one outcome at least. */
    public ComparisonPicture(Comparison comparison) {
        this.comparison = comparison;
    }

    /**
     * One width, placed; all in pixels.
     *
     * @param top of its row
     * @param width as text
     * @param note beside the width
     * @param partLength how long its part is drawn
     * @param partWidth how wide
     * @param broken whether the part goes on beyond what is drawn
     * @param bar how long its cost is
     * @param floor how much of that no plan can do without
     * @param cost as text
     * @param complete whether every part is made
     * @param figures all else, as text
     */
    public record Row(
            long top,
            String width,
            String note,
            long partLength,
            long partWidth,
            boolean broken,
            long bar,
            long floor,
            String cost,
            boolean complete,
            String figures) {}

    /** The file's text, well-formed as XML. */
    public String svg() {
        List<Row> rows = rows();
        return Markup.rendered(
                "trial.jte",
                Map.of(
                        "title",
                        shortened(comparison.job().name() + ": " + comparison.names()),
                        "description",
                        new ComparisonTable(comparison).text(),
                        "rows",
                        rows,
                        "width",
                        WIDTH,
                        "height",
                        HEAD + ROW * rows.size() + FOOT));
    }

    private List<Row> rows() {
        Optional<Outcome> cheapest = comparison.cheapest();
        BigDecimal most = most();
        Length widest = comparison.outcomes().stream().map(Outcome::width).reduce(Length.ZERO, Length::max);
        double scale = (double) PART_HEIGHT / widest.nanometers();
        Part part = comparison.parts().get(0);
        long length = Math.round(part.length().nanometers() * scale);
        List<Row> rows = new ArrayList<>();
        for (Outcome outcome : comparison.outcomes())
            rows.add(new Row(
                    HEAD + ROW * rows.size(),
                    comparison.text(outcome.width()),
                    comparison.isAsInTheJob(outcome) ? "as in the job" : "",
                    Math.max(1, Math.min(length, PART_LENGTH)),
                    Math.max(1, Math.round(outcome.width().nanometers() * scale)),
                    length > PART_LENGTH,
                    share(outcome.net(), most),
                    share(outcome.bound().min(outcome.net()), most),
                    cost(outcome, cheapest),
                    outcome.complete(),
                    figures(outcome)));
        return rows;
    }

    private BigDecimal most() {
        return comparison.outcomes().stream().map(Outcome::net).reduce(BigDecimal.ZERO, BigDecimal::max);
    }

    private static long share(BigDecimal amount, BigDecimal most) {
        if (most.signum() <= 0 || amount.signum() <= 0) return 0;
        return amount.multiply(BigDecimal.valueOf(BAR_LENGTH))
                .divide(most, 0, RoundingMode.HALF_UP)
                .longValue();
    }

    private static String cost(Outcome outcome, Optional<Outcome> cheapest) {
        String net = outcome.net().toPlainString();
        if (!outcome.complete()) return net + ", short of " + (outcome.partsWanted() - outcome.partsMade());
        BigDecimal more = outcome.net().subtract(cheapest.orElseThrow().net());
        return more.signum() == 0 ? net + ", cheapest found" : net + ", " + more.toPlainString() + " more";
    }

    private static String figures(Outcome outcome) {
        return counted(outcome.boards(), "board") + ", " + counted(outcome.ripSettings(), "rip setting") + ", "
                + counted(outcome.stopSettings(), "stop") + ", " + counted(outcome.offcuts(), "offcut") + ", yield "
                + ComparisonTable.percent(outcome.plan().tally().yield()) + " %, "
                + ComparisonTable.time(outcome.plan().tally().minutes());
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String shortened(String text) {
        if (text.codePointCount(0, text.length()) <= LONGEST_NAMES) return text;
        return text.substring(0, text.offsetByCodePoints(0, LONGEST_NAMES)) + "...";
    }
}
