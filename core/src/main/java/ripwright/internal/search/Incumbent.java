package ripwright.internal.search;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.TestWoodCost;

/**
 * An answer, as it is judged: every rip setting must be proved, then the finished wood it makes counts, then what it costs.
 *
 * @param layouts how each board is cut, by its place in the job; null where it stays whole
 * @param feet the finished wood it makes, in the unit of {@link JobNumbers#feet}
 * @param unproved how many test blanks find no wood in time
 * @param net what it costs, the others' wood with it, in millionths
 * @param blanks how many blanks it makes
 */
@SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
public record Incumbent(@Nullable PricedLayout[] layouts, int unproved, long feet, long net, int blanks) {
    /** The answer with those layouts, one place for each board of the job. */
    public static Incumbent of(JobNumbers numbers, @Nullable PricedLayout[] layouts) {
        long feet = 0;
        long net = 0;
        int blanks = 0;
        Set<Long> widths = new HashSet<>();
        for (PricedLayout layout : layouts) {
            if (layout == null) continue;
            feet += layout.feet();
            net += layout.net();
            blanks += layout.made().length;
            for (long width : layout.widths()) widths.add(width);
        }
        TestWoodCost.Cost proving = numbers.proving().of(layouts);
        for (long width : widths) net += numbers.settingCost(width);
        net += proving.millionths();
        return new Incumbent(layouts, proving.missing(), feet, net, blanks);
    }

    /** What it costs, to the cent. */
    public BigDecimal cost() {
        return BigDecimal.valueOf(net, 6).setScale(2, RoundingMode.HALF_UP);
    }

    /** Whether it is to be preferred to that one. */
    public boolean betterThan(Incumbent other) {
        if (unproved != other.unproved) return unproved < other.unproved;
        return feet != other.feet ? feet > other.feet : net < other.net;
    }

    /** The layouts of the boards that are cut, in the order of the job. */
    public List<Layout> cut() {
        List<Layout> cut = new ArrayList<>();
        for (PricedLayout layout : layouts) if (layout != null) cut.add(layout.layout());
        return cut;
    }
}
