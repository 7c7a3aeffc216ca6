package ripwright.internal.bound;

import java.util.Arrays;
import java.util.OptionalLong;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.ScaledMoney;
import ripwright.internal.pricing.SettingCost;

/**
 * What a plan is to make, and from what, in types of parts and boards; money is scaled. Either the whole bill, or any part
 * of it that comes to so much finished wood.
 */
public final class Demand {
    private static final double TEN_THOUSANDTH = 100; // of the currency, in millionths

    public final JobNumbers numbers;
    public final ItemTypes types;
    public final ScaledMoney money;
    public final int[] wanted; // wanted[k]: blanks of part type k
    public final long[] feet; // feet[k]: finished wood in one, in the unit of JobNumbers.feet
    final long[] share; // share[k]: of a rip setting, that one carries where not the whole bill is made; else 0
    public final long due; // money due for rip settings whatever is made
    public final int[] copies; // copies[k]: boards of type k
    public final long[] cost; // cost[k]: of one
    public final boolean boardsAlone; // whether nothing but the boards bought costs or fetches money
    public final long grain; // money too few to tell two costs apart
    public final OptionalLong least; // finished wood to be made at least; empty: the whole bill

    private Demand(JobNumbers numbers, ItemTypes types, ScaledMoney money, OptionalLong least) {
        this.numbers = numbers;
        this.types = types;
        this.money = money;
        this.least = least;
        wanted = new int[types.parts()];
        feet = new long[wanted.length];
        share = new long[wanted.length];
        SettingCost settings = new SettingCost(numbers, types, money);
        for (int k = 0; k < wanted.length; k++) {
            wanted[k] = types.wanted(k);
            feet[k] = numbers.feet(types.partsOf(k)[0]);
            if (least.isPresent()) share[k] = settings.share(k);
        }
        boardsAlone = numbers.boardsAlone();
        due = least.isPresent() ? 0 : settings.due();
        copies = new int[types.boards()];
        cost = new long[copies.length];
        for (int k = 0; k < copies.length; k++) {
            copies[k] = types.boardsOf(k).length;
            cost[k] = Arrays.stream(types.boardsOf(k))
                    .mapToLong(money::cost)
                    .min()
                    .orElseThrow();
        }
        grain = boardsAlone ? 1 << 8 : money.up(TEN_THOUSANDTH);
    }

    static Demand wholeBill(JobNumbers numbers) {
        return new Demand(numbers, new ItemTypes(numbers), new ScaledMoney(numbers.job()), OptionalLong.empty());
    }

    static Demand ofFeet(JobNumbers numbers, long feet) {
        return new Demand(numbers, new ItemTypes(numbers), new ScaledMoney(numbers.job()), OptionalLong.of(feet));
    }

    /** The finished wood in the whole bill. */
    long allFeet() {
        long all = 0;
        for (int k = 0; k < wanted.length; k++) all = Math.addExact(all, Math.multiplyExact(feet[k], wanted[k]));
        return all;
    }
}
