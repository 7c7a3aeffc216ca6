package ripwright.replay;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.Cost;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/** Short factory methods for jobs and plans, in one unit; what they make is not checked. */
public final class Make {
    public static final Make IN = new Make(Unit.INCH);
    static final Make MM = new Make(Unit.MILLIMETER);

    private final Unit unit;

    private Make(Unit unit) {
        this.unit = unit;
    }

    public Unit unit() {
        return unit;
    }

    public Length length(String text) {
        return Length.parse(text, unit);
    }

    Blank blank(String id, String part, String from, String length) {
        return new Blank(id, part, length(from), length(length));
    }

    Strip strip(String id, String offset, String width, String setting, Blank... blanks) {
        Optional<String> at = setting.isEmpty() ? Optional.empty() : Optional.of(setting);
        return new Strip(id, length(offset), length(width), at, List.of(blanks));
    }

    Section section(String id, String from, String to, Edge reference, String edgeLoss, Strip... strips) {
        return new Section(id, length(from), length(to), reference, length(edgeLoss), List.of(strips));
    }

    Setting setting(String id, String width) {
        return new Setting(id, length(width), Optional.empty());
    }

    Setting setting(String id, String width, String blank, TestBlank.Source source) {
        return new Setting(id, length(width), Optional.of(new Setting.Test(blank, source)));
    }

    TestBlank testBlank(
            String id,
            String from,
            TestBlank.Source source,
            String width,
            String length,
            String thickness,
            String species,
            String... proves) {
        return new TestBlank(
                id,
                from,
                source,
                length(width),
                length(length),
                length(thickness),
                new Species(species),
                List.of(proves));
    }

    static Cost cost(String stock, String salvage, String labor, String net, String bound, String gap, boolean proven) {
        return new Cost(
                new BigDecimal(stock),
                new BigDecimal(salvage),
                new BigDecimal(labor),
                new BigDecimal(net),
                new BigDecimal(bound),
                new BigDecimal(gap),
                proven);
    }

    static Tally tally(String consumed, String parts, String offcuts, String waste, String yield, String minutes) {
        return new Tally(
                new BigDecimal(consumed),
                new BigDecimal(parts),
                new BigDecimal(offcuts),
                new BigDecimal(waste),
                new BigDecimal(yield),
                new BigDecimal(minutes));
    }

    Steps steps() {
        return new Steps();
    }

    /** Steps in their turn, numbered as they come. */
    final class Steps {
        private final List<Step> steps = new ArrayList<>();

        Steps breakdown(String board, String... makes) {
            return add(Step.Saw.CROSSCUT, Step.Does.BREAKDOWN, "", "", board, "", makes);
        }

        Steps mill(String piece) {
            return add(null, Step.Does.MILL, "", "", piece, "");
        }

        Steps straighten(String piece) {
            return add(Step.Saw.RIP, Step.Does.STRAIGHTEN, "", "", piece, "");
        }

        Steps test(String setting, String blank) {
            return add(Step.Saw.RIP, Step.Does.TEST, setting, "", blank, "");
        }

        Steps rip(String setting, String section, String... makes) {
            return add(Step.Saw.RIP, Step.Does.RIP, setting, "", section, "", makes);
        }

        Steps check(String setting, String strip) {
            return add(null, Step.Does.CHECK, setting, "", strip, "");
        }

        Steps stop(String stop, String strip, String... makes) {
            return add(Step.Saw.CROSSCUT, Step.Does.BLANK, "", stop, strip, "", makes);
        }

        Steps fitted(String spare, String strip, String... makes) {
            return add(Step.Saw.CROSSCUT, Step.Does.BLANK, "", "", strip, spare, makes);
        }

        Steps trim(String piece, String... makes) {
            return add(Step.Saw.CROSSCUT, Step.Does.TRIM, "", "", piece, "", makes);
        }

        private Steps add(
                Step.@Nullable Saw saw,
                Step.Does does,
                String setting,
                String stop,
                String piece,
                String spare,
                String... makes) {
            steps.add(new Step(
                    steps.size() + 1,
                    Optional.ofNullable(saw),
                    does,
                    setting.isEmpty() ? Optional.empty() : Optional.of(setting),
                    stop.isEmpty() ? Optional.empty() : Optional.of(length(stop)),
                    piece,
                    List.of(makes),
                    spare.isEmpty() ? Optional.empty() : Optional.of(length(spare))));
            return this;
        }

        /** The only one. */
        Step only() {
            if (steps.size() != 1) throw new IllegalStateException(steps.size() + " steps");
            return steps.get(0);
        }

        List<Step> list() {
            return List.copyOf(steps);
        }
    }
}
