package ripwright.internal.replay.layout;

import java.util.List;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.Length;
import ripwright.plan.Strip;

/** The rules for the strips of a section. */
public final class StripRules {
    private static final String RULE = "3.strips";

    private final ReplayIndex pieces;
    private final Findings findings;

    public StripRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    public void check() {
        for (PlacedSection section : pieces.sections()) {
            firstLiesAtTheReferenceEdge(section);
            eachNextLiesOneRipKerfFurther(section);
            widthsNeverIncrease(section);
            theyFitTheUsableWidth(section);
            for (Strip strip : section.section().strips()) {
                if (strip.width().isZero())
                    findings.add(section.id(), RULE, "strip " + strip.id() + " is 0 wide; it must be more.");
                if (!section.board().ripped()) {
                    settingIsItsWidth(section, strip);
                    asWideAsTheSawTakes(section, strip);
                }
            }
        }
    }

    /** The first strip has offset 0. */
    private void firstLiesAtTheReferenceEdge(PlacedSection section) {
        if (section.section().strips().isEmpty()) return;
        Strip first = section.section().strips().get(0);
        if (Tolerance.more(first.offset().nanometers(), 0))
            findings.add(
                    section.id(),
                    RULE,
                    "strip " + first.id() + " starts at " + findings.say(first.offset())
                            + "; the first lies at the reference edge, so 0 is due.");
    }

    /** Each next offset is the one before, its width and one rip kerf, exactly. */
    private void eachNextLiesOneRipKerfFurther(PlacedSection section) {
        List<Strip> strips = section.section().strips();
        for (int i = 1; i < strips.size(); i++) {
            Strip before = strips.get(i - 1);
            Strip strip = strips.get(i);
            long end = before.offset().nanometers() + before.width().nanometers();
            long due = end + pieces.ripKerf();
            if (!Tolerance.same(strip.offset().nanometers(), due))
                findings.add(
                        section.id(),
                        RULE,
                        "strip " + strip.id() + " starts at " + findings.say(strip.offset()) + "; " + before.id()
                                + " ends at " + findings.say(end) + " and the rip kerf is "
                                + findings.say(pieces.ripKerf()) + ", so " + findings.say(due) + " is due.");
        }
    }

    private void widthsNeverIncrease(PlacedSection section) {
        List<Strip> strips = section.section().strips();
        for (int i = 1; i < strips.size(); i++) {
            Strip before = strips.get(i - 1);
            Strip strip = strips.get(i);
            if (strip.width().exceeds(before.width()))
                findings.add(
                        section.id(),
                        RULE,
                        "strip " + strip.id() + " is " + findings.say(strip.width()) + " wide, wider than "
                                + before.id() + " before it with " + findings.say(before.width())
                                + "; widths never increase.");
        }
    }

    /** The last strip needs no kerf to fit, but must stay clear of the other edge's loss. */
    private void theyFitTheUsableWidth(PlacedSection section) {
        long rough = section.frame().roughLoss(section.otherEdge());
        if (section.section().strips().isEmpty() || !Tolerance.more(section.reach(), section.width() - rough)) return;
        findings.add(
                section.id(),
                RULE,
                "its strips reach " + findings.say(section.reach()) + " from the raw reference edge; the section is "
                        + findings.say(section.width()) + " wide and its other edge loses " + findings.say(rough)
                        + ", so " + findings.say(section.width() - rough) + " is the most.");
    }

    /** A strip of stock that is not ripped names its rip setting, which is exactly as wide. */
    private void settingIsItsWidth(PlacedSection section, Strip strip) {
        if (strip.setting().isEmpty()) {
            findings.add(section.id(), "5.settings", "strip " + strip.id() + " names no rip setting.");
            return;
        }
        String id = strip.setting().get();
        pieces.setting(id)
                .ifPresentOrElse(
                        setting -> {
                            if (!setting.width().equals(strip.width()))
                                findings.add(
                                        section.id(),
                                        "5.settings",
                                        "strip " + strip.id() + " is " + findings.say(strip.width())
                                                + " wide; its rip setting " + id + " makes "
                                                + findings.say(setting.width()) + ".");
                        },
                        () -> findings.add(
                                section.id(),
                                "5.settings",
                                "strip " + strip.id() + " names the rip setting " + id + ", which is not listed."));
    }

    /** Only where a part's own blank is narrower may a strip be narrower than the narrowest rip. */
    private void asWideAsTheSawTakes(PlacedSection section, Strip strip) {
        Length narrowest = pieces.job().saw().narrowestRip().orElse(Length.ZERO);
        if (strip.blanks().isEmpty() && Tolerance.less(strip.width().nanometers(), narrowest.nanometers()))
            findings.add(
                    section.id(),
                    "3.limits",
                    "strip " + strip.id() + " is " + findings.say(strip.width())
                            + " wide and carries no blank that is; the narrowest rip is " + findings.say(narrowest)
                            + ".");
    }
}
