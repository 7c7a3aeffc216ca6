package ripwright.internal.replay.figures;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.TestedSettings;
import ripwright.internal.replay.Words;
import ripwright.internal.replay.leftovers.Remains;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.saw.Labor;

/** What a plan takes at the saws: settings, rips and crosscuts, each saw cut counted once. */
public final class SawEffort {
    private final Labor labor;
    private final int settings;
    private final int rips;
    private final int fewestCrosscuts;
    private final int mostCrosscuts;

    SawEffort(ReplayIndex pieces, WhatIsLeft left) {
        this.labor = pieces.job().laborOrUnpaid();
        List<PlacedStrip> ripped = pieces.strips().stream()
                .filter(strip -> !strip.board().ripped())
                .toList();
        Collection<List<PlacedStrip>> bySetting = ripped.stream()
                .collect(Collectors.groupingBy(strip -> setting(strip, pieces)))
                .values();
        this.settings = bySetting.size();
        TestedSettings proof = new TestedSettings(pieces);
        long tested = bySetting.stream().filter(proof::tests).count();
        long straightened = pieces.sections().stream()
                .filter(section -> section.straightenedOrNot()
                        ? straightensIn(pieces.plan(), section.id())
                        : section.straightened())
                .count();
        this.rips = Math.toIntExact(ripped.size() + straightened + tested);
        List<CrosscutLine> lines = Stream.concat(
                        pieces.boards().stream().map(board -> board.line(pieces.crosscutKerf())),
                        pieces.strips().stream().map(strip -> strip.line(pieces.crosscutKerf())))
                .toList();
        this.fewestCrosscuts = lines.stream().mapToInt(CrosscutLine::fewestCuts).sum()
                + left.all().stream().mapToInt(Remains::fewestCuts).sum();
        this.mostCrosscuts = lines.stream().mapToInt(CrosscutLine::mostCuts).sum()
                + left.all().stream().mapToInt(Remains::mostCuts).sum();
    }

    /** Told apart by its width, or where the decimals of a plan's file hide how two widths differ by its name. */
    private static Object setting(PlacedStrip strip, ReplayIndex pieces) {
        Length width = strip.strip().width();
        if (pieces.hidesWidths(width, width)) return strip.strip().setting();
        return width;
    }

    private static boolean straightensIn(Plan plan, String section) {
        return plan.steps().stream()
                .anyMatch(step ->
                        step.does() == Step.Does.STRAIGHTEN && step.piece().equals(section));
    }

    /** Minutes with {@code crosscuts} crosscuts. */
    BigDecimal minutes(int crosscuts) {
        return labor.settingMinutes()
                .multiply(BigDecimal.valueOf(settings))
                .add(labor.ripMinutes().multiply(BigDecimal.valueOf(rips)))
                .add(labor.crosscutMinutes().multiply(BigDecimal.valueOf(crosscuts)));
    }

    int fewestCrosscuts() {
        return fewestCrosscuts;
    }

    int mostCrosscuts() {
        return mostCrosscuts;
    }

    String inWords(int crosscuts) {
        return Words.count(settings, "setting") + ", " + Words.count(rips, "rip") + " and "
                + Words.count(crosscuts, "crosscut");
    }
}
