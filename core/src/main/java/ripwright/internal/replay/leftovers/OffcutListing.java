package ripwright.internal.replay.leftovers;

import java.util.ArrayList;
import java.util.List;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.Tolerance;
import ripwright.internal.replay.Words;
import ripwright.job.Job;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/** Holds an offcut as a plan lists it against the leftover it must be. */
public final class OffcutListing {
    private final Job job;
    private final Findings findings;

    OffcutListing(Job job, Findings findings) {
        this.job = job;
        this.findings = findings;
    }

    /** What the plan says of {@code listed} that is not so of {@code left}: a sentence each, none when all is so. */
    List<String> differences(Board listed, ReplayLeftover left) {
        List<String> differences = new ArrayList<>();
        Board board = left.frame().board();
        if (!listed.species().equals(board.species()))
            differences.add("it is listed as " + listed.species() + "; " + board.id() + " is " + board.species() + ".");
        length("thickness", listed.thickness().nanometers(), left.thickness(), left, differences);
        length(
                "thickness after milling",
                listed.millsTo().nanometers(),
                board.millsTo().nanometers(),
                left,
                differences);
        sizes(listed, left, differences);
        edges(listed, left, differences);
        ends(listed, left, differences);
        if (listed.testOnly() != board.testOnly())
            differences.add("it is listed " + (listed.testOnly() ? "" : "not ") + "for test blanks alone; " + board.id()
                    + " is" + (board.testOnly() ? "." : " not."));
        defects(listed, left, differences);
        if (listed.ripped()) differences.add("it is listed as ripped stock; an offcut is listed by its edges.");
        if (listed.price().isPresent() && listed.price().get().compareTo(job.price(board)) != 0)
            differences.add("its price is listed as " + listed.price().get() + "; that of " + board.id() + " is "
                    + job.price(board) + ".");
        return differences;
    }

    private void sizes(Board listed, ReplayLeftover left, List<String> differences) {
        boolean turned = left.turned();
        length("length", listed.length().nanometers(), left.length(), left, differences);
        length("width", listed.width().nanometers(), turned ? left.far() : left.near(), left, differences);
        length(
                "width at the far end",
                listed.widthAtFarEnd().nanometers(),
                turned ? left.near() : left.far(),
                left,
                differences);
        length(
                "end trim at the marked end",
                listed.endTrim().near().nanometers(),
                turned ? left.rawFar() : left.rawNear(),
                left,
                differences);
        length(
                "end trim at the far end",
                listed.endTrim().far().nanometers(),
                turned ? left.rawNear() : left.rawFar(),
                left,
                differences);
    }

    private void edges(Board listed, ReplayLeftover left, List<String> differences) {
        if (listed.straightEdges() != left.straightEdges())
            differences.add("it is listed with " + listed.straightEdges() + " straight edges; what is left of "
                    + left.of() + " has " + left.straightEdges() + ".");
        else if (left.straightEdges() < 2) { // with two straight edges nothing is lost, whatever is listed
            length("edge loss", listed.edgeLoss().nanometers(), left.edgeLoss(), left, differences);
            length("crook", listed.crook().nanometers(), left.crook(), left, differences);
        }
    }

    private static void ends(Board listed, ReplayLeftover left, List<String> differences) {
        if (listed.squareEnds() != left.squareEnds())
            differences.add("it is listed with " + Words.count(listed.squareEnds(), "square end") + "; what is left of "
                    + left.of() + " has " + left.squareEnds() + ".");
    }

    private void length(String what, long listed, long due, ReplayLeftover left, List<String> differences) {
        if (!Tolerance.same(listed, due))
            differences.add("its " + what + " is listed as " + findings.say(listed) + "; what is left of " + left.of()
                    + " has " + findings.say(due) + ".");
    }

    private void defects(Board listed, ReplayLeftover left, List<String> differences) {
        List<Defect> unexplained = new ArrayList<>(listed.defects());
        for (ReplayLeftover.Patch patch : left.ownPatches()) {
            boolean found = false;
            for (int i = 0; i < unexplained.size() && !found; i++)
                if (isOn(unexplained.get(i), patch)) {
                    unexplained.remove(i);
                    found = true;
                }
            if (!found && !sliver(patch.to() - patch.from()) && !sliver(patch.right() - patch.left()))
                differences.add("it lacks the " + patch.defect().kind() + " from " + findings.say(patch.from()) + " to "
                        + findings.say(patch.to()) + " and " + findings.say(patch.left()) + " to "
                        + findings.say(patch.right()) + " across that it carries along.");
        }
        for (Defect defect : unexplained)
            if (!Tolerance.same(defect.from(), defect.to()) && !Tolerance.same(defect.left(), defect.right()))
                differences.add("it lists a " + defect.kind() + " from " + findings.say(defect.from()) + " to "
                        + findings.say(defect.to()) + " and " + findings.say(defect.left()) + " to "
                        + findings.say(defect.right()) + " across that "
                        + left.frame().board().id()
                        + " does not have there.");
    }

    private static boolean isOn(Defect defect, ReplayLeftover.Patch patch) {
        return defect.kind().equals(patch.defect().kind())
                && defect.blocks() == patch.defect().blocks()
                && Tolerance.same(defect.from().nanometers(), patch.from())
                && Tolerance.same(defect.to().nanometers(), patch.to())
                && Tolerance.same(defect.left().nanometers(), patch.left())
                && Tolerance.same(defect.right().nanometers(), patch.right());
    }

    /** What a reader takes for nothing: a defect may end just beside a cut. */
    private static boolean sliver(long length) {
        return Tolerance.same(length, 0);
    }
}
