package ripwright.runner.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Species;

/** Five hundred parts, and names that would break a page that trusted them. */
final class HostileJob {
    /** Sets a flag on the page, were it ever taken for markup. */
    static final String MARKUP =
            "</script></style><script>window.hostile=1</script><img src=x onerror='window.hostile=1'>";

    private static final List<String> NAMES = List.of(
            MARKUP,
            "\" onclick=\"window.hostile=1\" x=\"",
            "${name} @if(true) {{name}} <!-- ]]> -->",
            "\uD83E\uDE9A\uD83E\uDEB5 shelf \uD83D\uDC77\u200D\u2640\uFE0F",
            "\u05DC\u05D5\u05D7 \u05E6\u05D3",
            "\u0644\u0648\u062D \u062C\u0627\u0646\u0628\u064A",
            "\u202Edraob\u202C & <b>bold</b>",
            "w".repeat(300),
            "\uD83E\uDEB5".repeat(150),
            "cut a long name with spaces in it ".repeat(8).strip());

    private HostileJob() {}

    static Job job() {
        Length thick = Length.inches("3/4");
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++)
            parts.add(Part.of(NAMES.get(i), Length.inches(14 + 3 * i + ""), Length.inches(1 + i % 3 + " 1/4"), thick)
                    .count(50)
                    .fitted(i == 4)
                    .build());
        Species wood = new Species("<b>ma&ple</b> \uD83C\uDF41");
        List<Board> stack = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            String tail = " " + i;
            String name = NAMES.get(i % NAMES.size());
            stack.add(Board.measured(
                            name.substring(0, Math.min(name.length(), 300 - tail.length())) + tail,
                            wood.name(),
                            thick,
                            Length.inches(6 + i % 5 + " 1/2"),
                            Length.inches(96 + i % 7 + ""))
                    .endTrim(Length.inches("1"), Length.inches("1"))
                    .defects(List.of(new Defect(
                            Length.inches("40"),
                            Length.inches("42"),
                            Length.inches("2"),
                            Length.inches("3"),
                            MARKUP,
                            Defect.Blocks.ALL)))
                    .build());
        }
        return new Job(
                MARKUP + " \u05DC\u05D5\u05D7 \uD83E\uDE9A",
                Unit.INCH,
                Saw.of(Length.inches("1/8"), Length.inches("1/8")),
                new TestRip(Length.inches("12"), 1),
                new Keep(Length.inches("12"), Length.inches("2")),
                Map.of(wood, BigDecimal.TEN),
                new BigDecimal("0.5"),
                Optional.empty(),
                stack,
                List.of(),
                parts,
                Limits.NONE);
    }
}
