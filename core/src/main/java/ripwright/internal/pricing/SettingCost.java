package ripwright.internal.pricing;

import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;

/**
 * What rip settings cost a plan at least. A width that the bill wants and that ripped stock cannot give must be set once;
 * where part of the bill may be left out, every blank of such a width carries its share of the setting.
 */
public final class SettingCost {
    private final long due; // money
    private final long[] share; // share[k]: money of a setting that one blank of part type k carries

    /** Reckons for a job. */
    public SettingCost(JobNumbers numbers, ItemTypes types, ScaledMoney money) {
        long setting = ScaledLabor.of(numbers, money).setting();
        share = new long[types.parts()];
        long sum = 0;
        for (int w = 0; w < numbers.widths.length; w++) {
            if (!mustBeSet(numbers, w)) continue;
            sum += setting;
            share(numbers, types, w, setting);
        }
        due = sum;
    }

    private static boolean mustBeSet(JobNumbers numbers, int w) {
        for (BoardNumbers board : numbers.boards)
            if (board.ripped && board.widthNear == numbers.widths[w]) return false;
        return true;
    }

    private void share(JobNumbers numbers, ItemTypes types, int w, long setting) {
        long blanks = 0;
        for (int k = 0; k < share.length; k++) if (makes(numbers, types, w, k)) blanks += types.wanted(k);
        for (int k = 0; k < share.length; k++) if (makes(numbers, types, w, k)) share[k] = setting / blanks;
    }

    private static boolean makes(JobNumbers numbers, ItemTypes types, int w, int type) {
        PartNumbers part = numbers.parts[types.partsOf(type)[0]];
        if (part.widthIndex != w) return false;
        for (boolean fits : part.fits) if (fits) return true;
        return false;
    }

    /** What all settings cost a plan that makes the whole bill, at least, in scaled money. */
    public long due() {
        return due;
    }

    /** What share of a setting a blank of that type carries, in scaled money: all wanted together no more than one setting. */
    public long share(int partType) {
        return share[partType];
    }
}
