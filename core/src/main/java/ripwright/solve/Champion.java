package ripwright.solve;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Layout;
import ripwright.pattern.PricedLayout;

/**
 * An answer, as it is judged: by the finished wood it makes, then by what it costs.
 *
 * @param layouts how each board is cut, by its place in the job; null where it stays whole
 * @param feet the finished wood it makes, in the unit of {@link JobNumbers#feet}
 * @param net what it costs without test blanks, in millionths
 * @param blanks how many blanks it makes
 */
@SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
public record Champion(@Nullable PricedLayout[] layouts, long feet, long net, int blanks) {
    /** The answer with those layouts, one place for each board of the job. */
    public static Champion of(JobNumbers numbers, @Nullable PricedLayout[] layouts) {
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
        return new Champion(layouts, feet, net + numbers.settingCost() * widths.size(), blanks);
    }

    /** What it costs without test blanks, to the cent. */
    public BigDecimal cost() {
        return BigDecimal.valueOf(net, 6).setScale(2, RoundingMode.HALF_UP);
    }

    /** Whether it makes more finished wood, or as much for less. */
    public boolean betterThan(Champion other) {
        return feet != other.feet ? feet > other.feet : net < other.net;
    }

    /** The layouts of the boards that are cut, in the order of the job. */
    public List<Layout> cut() {
        List<Layout> cut = new ArrayList<>();
        for (PricedLayout layout : layouts) if (layout != null) cut.add(layout.layout());
        return cut;
    }
}
