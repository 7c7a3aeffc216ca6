package ripwright.internal.replay.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.internal.replay.Figure;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.measure.Money;
import ripwright.plan.Cost;
import ripwright.plan.Tally;

/** The rules for a plan's figures: what it costs, where the wood goes, how long it takes. */
public final class FigureRules {
    private static final int CENTS = 2;
    private static final int BOARD_FEET = 4;
    private static final int LONGEST_NUMBER = 40; // digits, before or after the point

    private final Cost cost;
    private final Tally tally;
    private final Money perMinute;
    private final SawEffort effort;
    private final Totals totals;
    private final Findings findings;
    private final boolean saysNewThings;

    public FigureRules(ReplayIndex pieces, WhatIsLeft left, Findings findings) {
        this.cost = pieces.plan().cost();
        this.tally = pieces.plan().tally();
        this.perMinute = Money.of(pieces.job().laborOrUnpaid().perHour());
        this.effort = new SawEffort(pieces, left);
        this.totals = new Totals(pieces, left);
        this.findings = findings;
        this.saysNewThings = pieces.saysNewThings();
    }

    public void check() {
        figure("cost.stock", "4.stock", cost.stock(), Figure.of(totals.stock().value()), CENTS, "");
        figure("cost.salvage", "4.salvage", cost.salvage(), totals.salvage(), CENTS, "");
        timeAndLabor();
        netIsOfThePrintedFigures();
        boundIsAFloor();
        woodIsAccountedFor();
    }

    private void figure(String name, String rule, BigDecimal printed, Figure due, int decimals, String why) {
        if (!due.prints(printed, decimals))
            findings.add(
                    "plan",
                    rule,
                    name + " is " + printed + "; " + due.rounded(decimals).toPlainString() + " is due" + why + ".");
    }

    /** Minutes and labor are of the same settings, rips and crosscuts. */
    private void timeAndLabor() {
        int crosscuts = crosscuts();
        BigFraction minutes = Money.of(effort.minutes(crosscuts)).value();
        String why = " for " + effort.inWords(crosscuts);
        figure("minutes", "4.labor", tally.minutes(), Figure.of(minutes), CENTS, why);
        figure("cost.labor", "4.labor", cost.labor(), labor(), CENTS, why);
    }

    /** Where the layout as it is written leaves open whether there is a cut, the plan's own minutes say so. */
    private int crosscuts() {
        return IntStream.rangeClosed(effort.fewestCrosscuts(), effort.mostCrosscuts())
                .filter(cuts ->
                        Figure.of(Money.of(effort.minutes(cuts)).value()).prints(tally.minutes(), CENTS))
                .findFirst()
                .orElse(effort.mostCrosscuts());
    }

    private Figure labor() {
        BigFraction minutes = Money.of(effort.minutes(crosscuts())).value();
        return Figure.of(perMinute.value().multiply(minutes).divide(60));
    }

    /** Net is stock - salvage + labor of the printed figures. */
    private void netIsOfThePrintedFigures() {
        BigDecimal due = dueNet();
        if (cost.net().compareTo(due) != 0)
            findings.add(
                    "plan",
                    "1.money",
                    "cost.net is " + cost.net() + "; stock - salvage + labor come to " + due.toPlainString() + ".");
    }

    private BigDecimal dueNet() {
        Figure salvage = totals.salvage();
        BigDecimal printed = salvage.prints(cost.salvage(), CENTS) ? cost.salvage() : salvage.rounded(CENTS);
        return totals.stock().rounded().subtract(printed).add(labor().rounded(CENTS));
    }

    /**
     * The bound is whole cents and never above net; the gap is (net - bound) / net, up; proven is when both are equal.
     */
    private void boundIsAFloor() {
        BigDecimal bound = cost.bound();
        if (!isWholeCents(bound)) {
            findings.add("plan", "1.money", "cost.bound is " + bound + "; whole cents are due.");
            return;
        }
        BigDecimal net = isWholeCents(cost.net()) ? cost.net() : dueNet();
        if (bound.compareTo(net) > 0)
            findings.add("plan", "1.money", "cost.bound is " + bound + ", above cost.net of " + net + ".");
        boolean proven = bound.compareTo(net) == 0;
        if (cost.proven() != proven)
            findings.add(
                    "plan",
                    "1.money",
                    "it is called " + (cost.proven() ? "" : "not ") + "proven, with a bound of " + bound
                            + " and a net of " + net + ".");
        BigDecimal gap = gap(net, bound, RoundingMode.CEILING);
        boolean negative = net.signum() < 0; // then "up" may be read as away from zero, too
        if (cost.gap().compareTo(gap) != 0
                && !(negative && cost.gap().compareTo(gap(net, bound, RoundingMode.UP)) == 0))
            findings.add(
                    "plan",
                    "1.money",
                    "cost.gap is " + cost.gap() + "; (net - bound) / net is " + gap.toPlainString() + ".");
    }

    private static BigDecimal gap(BigDecimal net, BigDecimal bound, RoundingMode up) {
        return net.signum() == 0 ? BigDecimal.ZERO : net.subtract(bound).divide(net, 4, up);
    }

    /** Also keeps numbers out that are too long to reckon with. */
    private static boolean isWholeCents(BigDecimal money) {
        BigDecimal shortest = money.stripTrailingZeros();
        return shortest.scale() <= CENTS && shortest.precision() - (long) shortest.scale() <= LONGEST_NUMBER;
    }

    /** Board feet by true thickness: boards cut, parts by finished size, offcuts as listed, and waste is the rest. */
    private void woodIsAccountedFor() {
        String rule = "4.boardFeet";
        Figure consumed = Figure.of(totals.consumed().value());
        Figure parts = Figure.of(totals.parts().value());
        figure("boardFeet.consumed", rule, tally.consumed(), consumed, BOARD_FEET, "");
        figure("boardFeet.parts", rule, tally.parts(), parts, BOARD_FEET, "");
        figure("boardFeet.offcuts", rule, tally.offcuts(), totals.offcuts(), BOARD_FEET, "");
        BigDecimal rest = consumed.rounded(BOARD_FEET)
                .subtract(parts.rounded(BOARD_FEET))
                .subtract(totals.offcuts().rounded(BOARD_FEET));
        if (saysNewThings) wasteIsTheRestOfThePrintedFigures(consumed, parts);
        else if (tally.waste().compareTo(rest) != 0) // the rest of the printed figures is the rest, too
        figure("boardFeet.waste", rule, tally.waste(), totals.waste(), BOARD_FEET, "");

        boolean nothing = totals.consumed().value().signum() == 0;
        Figure yield = nothing
                ? Figure.ZERO
                : Figure.of(totals.parts().value().divide(totals.consumed().value()));
        BigDecimal ofPrinted = consumed.rounded(BOARD_FEET).signum() == 0
                ? BigDecimal.ZERO
                : parts.rounded(BOARD_FEET).divide(consumed.rounded(BOARD_FEET), 4, RoundingMode.HALF_UP);
        if (tally.yield().compareTo(ofPrinted) != 0) figure("yield", "4.yield", tally.yield(), yield, 4, "");
    }

    /** Board feet that are printed add up. */
    private void wasteIsTheRestOfThePrintedFigures(Figure consumed, Figure parts) {
        boolean right = totals.offcuts().prints(tally.offcuts(), BOARD_FEET);
        BigDecimal offcuts = right ? tally.offcuts() : totals.offcuts().rounded(BOARD_FEET);
        BigDecimal due =
                consumed.rounded(BOARD_FEET).subtract(parts.rounded(BOARD_FEET)).subtract(offcuts);
        if (tally.waste().compareTo(due) != 0)
            findings.add(
                    "plan",
                    "4.boardFeet",
                    "boardFeet.waste is " + tally.waste() + "; consumed - parts - offcuts, as printed, come to "
                            + due.toPlainString() + ".");
    }
}
