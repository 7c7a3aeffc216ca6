package ripwright.testing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Blank;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/** Says what is wrong with layouts by section 3 of the contract, straight from the nanometers. */
public final class LayoutCheck {
    private static final int MOST_SECTIONS = 3;

    private final Job job;
    private final List<Board> boards;
    private final List<Layout> layouts;
    private final List<String> faults = new ArrayList<>();

    /** Checks {@code layouts} of boards of {@code job}. */
    public LayoutCheck(Job job, List<Layout> layouts) {
        this.job = job;
        this.boards = job.boards();
        this.layouts = List.copyOf(layouts);
    }

    /** What is wrong; empty when a shop could cut it so. */
    public List<String> faults() {
        faults.clear();
        Set<Integer> cut = new HashSet<>();
        for (Layout layout : layouts) {
            require(cut.add(layout.board()), "board " + layout.board() + " is cut twice");
            board(layout);
        }
        int[] made = made();
        for (int part = 0; part < made.length; part++)
            require(made[part] <= job.parts().get(part).count(), "part " + part + " is made " + made[part] + " times");
        together();
        return List.copyOf(faults);
    }

    /** How many blanks there are of every line of the bill. */
    public int[] made() {
        int[] made = new int[job.parts().size()];
        for (Layout layout : layouts)
            for (Section section : layout.sections())
                for (Strip strip : section.strips()) for (Blank blank : strip.blanks()) made[blank.part()]++;
        return made;
    }

    /** Whether every part of the bill is made. */
    public boolean complete() {
        int[] made = made();
        for (int part = 0; part < made.length; part++)
            if (made[part] != job.parts().get(part).count()) return false;
        return true;
    }

    private void together() {
        Map<String, Integer> home = new HashMap<>();
        for (Layout layout : layouts)
            for (Section section : layout.sections())
                for (Strip strip : section.strips())
                    for (Blank blank : strip.blanks())
                        job.parts()
                                .get(blank.part())
                                .together()
                                .ifPresent(group -> require(
                                        home.computeIfAbsent(group, any -> layout.board()) == layout.board(),
                                        "group " + group + " comes from several boards"));
    }

    private void board(Layout layout) {
        Board board = boards.get(layout.board());
        long near = board.endTrim().near().nanometers();
        long far = board.length().nanometers() - board.endTrim().far().nanometers();
        int count = layout.sections().size();
        require(count >= 1 && count <= MOST_SECTIONS, board.id() + " has " + count + " sections");
        long next = near;
        for (Section section : layout.sections()) {
            String name = board.id() + " at " + section.from();
            require(section.from() >= next, name + " starts before " + next);
            require(section.to() <= far, name + " ends at " + section.to() + ", behind " + far);
            require(section.to() > section.from(), name + " has no length");
            require(!section.strips().isEmpty(), name + " has no strip");
            if (board.ripped()) ripped(name, board, section);
            else section(name, board, section);
            strips(name, board, section);
            next = section.to() + job.saw().crosscutKerf().nanometers();
        }
        if (board.ripped())
            require(
                    layout.sections().get(0).from() == near
                            && layout.sections().get(0).to() == far,
                    board.id() + " is ripped and not cut trim to trim");
    }

    private void ripped(String name, Board board, Section section) {
        require(section.edgeLoss() == 0, name + " is ripped and loses an edge");
        require(
                section.strips().size() == 1
                        && section.strips().get(0).width() == board.width().nanometers(),
                name + " is ripped and not one strip of its full width");
    }

    private void section(String name, Board board, Section section) {
        long length = section.to() - section.from();
        job.saw().longestRip().ifPresent(most -> require(length <= most.nanometers(), name + " is too long"));
        job.saw().shortestRip().ifPresent(least -> require(length >= least.nanometers(), name + " is too short"));
        boolean left = section.referenceEdge() == Edge.LEFT;
        require(left || !board.tapered(), name + " is tapered and rides on its right edge");
        boolean straight = board.straightEdges() >= (left ? 1 : 2);
        boolean otherStraight = board.straightEdges() >= (left ? 2 : 1);
        long loss = board.edgeLoss().nanometers();
        require(section.edgeLoss() >= (straight ? 0 : Math.max(loss, crook(board, length))), name + " is not straight");
        long width = Math.min(
                board.widthAt(new Length(section.from())).nanometers(),
                board.widthAt(new Length(section.to())).nanometers());
        long used = section.edgeLoss()
                + (otherStraight ? 0 : loss)
                - job.saw().ripKerf().nanometers();
        for (Strip strip : section.strips())
            used += strip.width() + job.saw().ripKerf().nanometers();
        require(used <= width, name + " is " + width + " wide, its strips take " + used);
    }

    /** What the crook demands of a section, up to the nanometer. */
    private static long crook(Board board, long length) {
        BigInteger square = BigInteger.valueOf(length).pow(2);
        BigInteger whole = BigInteger.valueOf(board.length().nanometers()).pow(2);
        BigInteger[] loss =
                BigInteger.valueOf(board.crook().nanometers()).multiply(square).divideAndRemainder(whole);
        return loss[0].longValueExact() + loss[1].signum();
    }

    private void strips(String name, Board board, Section section) {
        long offset = section.edgeLoss();
        long before = Long.MAX_VALUE;
        long narrowest = job.saw().narrowestRip().orElse(Length.ZERO).nanometers();
        for (Strip strip : section.strips()) {
            require(strip.width() > 0 && strip.width() <= before, name + " has strips out of order");
            require(
                    board.ripped()
                            || strip.width() >= narrowest
                            || !strip.blanks().isEmpty(),
                    name + " has a strip too narrow to rip");
            long left = section.referenceEdge() == Edge.LEFT
                    ? offset
                    : board.width().nanometers() - offset - strip.width();
            blanks(name, board, section, strip, left);
            before = strip.width();
            offset += strip.width() + job.saw().ripKerf().nanometers();
        }
    }

    private void blanks(String name, Board board, Section section, Strip strip, long left) {
        long next = section.from();
        boolean small = false;
        for (Blank blank : strip.blanks()) {
            Part part = job.parts().get(blank.part());
            String what = name + ", " + part.name() + " at " + blank.from();
            long end = blank.from() + part.blankLength().nanometers();
            require(blank.from() >= next, what + " starts before " + next);
            require(end <= section.to(), what + " ends behind its section");
            require(part.blankWidth().nanometers() == strip.width(), what + " is not as wide as its strip");
            require(part.thickness().equals(board.millsTo()), what + " has another thickness");
            require(part.takes(board.species()), what + " has another species");
            require(part.mayComeFrom(board.id()), what + " comes from a board it may not come from");
            boolean tooShort =
                    part.blankLength().compareTo(job.saw().shortestCrosscut().orElse(Length.ZERO)) < 0;
            require(tooShort || !small, what + " comes behind a blank too short to crosscut");
            small |= tooShort;
            for (Defect defect : board.defects())
                require(
                        !blocks(defect, part) || clear(defect, blank.from(), end, left, left + strip.width()),
                        what + " lies on " + defect.kind());
            next = end + job.saw().crosscutKerf().nanometers();
        }
    }

    private static boolean blocks(Defect defect, Part part) {
        return defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW;
    }

    private static boolean clear(Defect defect, long from, long to, long left, long right) {
        return to <= defect.from().nanometers()
                || from >= defect.to().nanometers()
                || right <= defect.left().nanometers()
                || left >= defect.right().nanometers();
    }

    private void require(boolean holds, String fault) {
        if (!holds) faults.add(fault);
    }
}
