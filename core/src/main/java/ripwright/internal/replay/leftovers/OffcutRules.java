package ripwright.internal.replay.leftovers;

import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.job.Keep;
import ripwright.plan.Offcut;
import ripwright.stock.Board;

/** The rules for leftovers: what is worth keeping is listed as it is, and nothing else. */
public final class OffcutRules {
    private static final String RULE = "3.leftovers";

    private final ReplayIndex pieces;
    private final WhatIsLeft left;
    private final Findings findings;
    private final OffcutListing listing;

    public OffcutRules(ReplayIndex pieces, WhatIsLeft left, Findings findings) {
        this.pieces = pieces;
        this.left = left;
        this.findings = findings;
        this.listing = new OffcutListing(pieces.job(), findings);
    }

    public void check() {
        theyComeFromPieces();
        left.all().forEach(this::listedAsTheyAre);
    }

    private void theyComeFromPieces() {
        for (Offcut offcut : pieces.plan().offcuts())
            if (left.of(offcut.from()).isEmpty())
                findings.add(
                        offcut.id(),
                        RULE,
                        "it is what is left of " + offcut.from()
                                + ", which is no board, section or strip of this plan.");
    }

    /** Says of each listed offcut how it differs from the leftover it must be, and which leftovers are not listed. */
    private void listedAsTheyAre(Remains remains) {
        for (Remains.Mistaken mistaken : remains.mistaken())
            mistaken.differences()
                    .forEach(difference -> findings.add(mistaken.offcut().id(), RULE, difference));
        for (Offcut offcut : remains.unexplained()) nothingWorthKeepingIsLike(offcut, remains);
        for (ReplayLeftover leftover : remains.missing())
            findings.add(
                    remains.of(),
                    RULE,
                    "what is left of it from " + findings.say(leftover.along().from()) + " to "
                            + findings.say(leftover.along().to()) + ", " + findings.say(leftover.narrow())
                            + " wide, is worth keeping and not listed.");
    }

    private void nothingWorthKeepingIsLike(Offcut offcut, Remains remains) {
        boolean small = remains.waste().stream()
                .anyMatch(waste -> listing.differences(offcut.piece(), waste).isEmpty());
        if (small)
            findings.add(
                    offcut.id(),
                    RULE,
                    "at " + findings.say(offcut.piece().length()) + " by "
                            + findings.say(
                                    offcut.piece().width().min(offcut.piece().widthAtFarEnd()))
                            + " it is too small to be kept; raw end trim not counted, " + least(offcut.piece())
                            + " is the least.");
        else findings.add(offcut.id(), RULE, "nothing more is left of " + remains.of() + " that is worth keeping.");
    }

    private String least(Board piece) {
        Keep keep = pieces.job().keep();
        if (piece.testOnly()) return findings.say(pieces.job().testRip().length());
        return findings.say(keep.length()) + " by " + findings.say(keep.width());
    }
}
