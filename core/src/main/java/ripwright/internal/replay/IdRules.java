package ripwright.internal.replay;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import ripwright.measure.Name;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;

/** The rules for names and ids. */
public final class IdRules {
    private static final String RULE = "1.ids";

    private final ReplayIndex pieces;
    private final Findings findings;
    private final Map<String, String> kinds = new HashMap<>(); // what an id stands for: a board, a strip, ...

    public IdRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    public void check() {
        planIsOfTheJob();
        boardsAreTheJobs();
        idsAreUnique();
        offcutsCanEnterTheRack();
    }

    /** A plan names its job and keeps to its units. */
    private void planIsOfTheJob() {
        if (!pieces.plan().job().equals(pieces.job().name()))
            findings.add(
                    "plan",
                    "5.head",
                    "its job is \"" + pieces.plan().job() + "\"; \""
                            + pieces.job().name() + "\" is due.");
        if (pieces.plan().units() != pieces.job().units())
            findings.add(
                    "plan",
                    "5.head",
                    "its units are " + pieces.plan().units().symbol() + "; those of the job are "
                            + pieces.job().units().symbol() + ".");
    }

    /** A consumed board is one of the stack or the rack, listed once. */
    private void boardsAreTheJobs() {
        Set<String> listed = new HashSet<>();
        for (CutBoard cut : pieces.plan().boards()) {
            if (!listed.add(cut.board())) findings.add(cut.board(), RULE, "the board is listed twice.");
            if (pieces.jobBoard(cut.board()).isEmpty()) findings.add(cut.board(), RULE, "the job has no such board.");
        }
    }

    /** Ids are unique in a plan, and fit to be written. */
    private void idsAreUnique() {
        for (CutBoard cut : pieces.plan().boards()) kinds.put(cut.board(), "board");
        for (CutBoard cut : pieces.plan().boards()) cut.sections().forEach(this::takeSection);
        for (Setting setting : pieces.plan().settings()) take(setting.id(), "rip setting");
        for (TestBlank blank : pieces.plan().testBlanks()) take(blank.id(), "test blank");
        for (Offcut offcut : pieces.plan().offcuts()) take(offcut.id(), "offcut");
    }

    private void takeSection(Section section) {
        take(section.id(), "section");
        for (Strip strip : section.strips()) {
            take(strip.id(), "strip");
            strip.blanks().forEach(blank -> take(blank.id(), "blank"));
        }
    }

    private void take(String id, String kind) {
        String taken = kinds.putIfAbsent(id, kind);
        if (taken != null)
            findings.add(id, RULE, "is the id of a " + kind + ", and of a " + taken + " already; ids must differ.");
        try {
            Name.require("id", id);
        } catch (IllegalArgumentException e) {
            findings.add(id, RULE, "is no id for a " + kind + ". " + e.getMessage());
        }
    }

    /** Offcuts enter the rack, where ids are unique over stack and rack together and contain no {@code #}. */
    private void offcutsCanEnterTheRack() {
        for (Offcut offcut : pieces.plan().offcuts()) {
            if (offcut.id().contains("#"))
                findings.add(offcut.id(), RULE, "is no id for an offcut; the rack takes none that contains \"#\".");
            boolean consumed = pieces.board(offcut.id()).isPresent();
            if (!consumed && pieces.jobBoard(offcut.id()).isPresent())
                findings.add(offcut.id(), RULE, "is the id of an offcut, and of a board still there; ids must differ.");
        }
    }
}
