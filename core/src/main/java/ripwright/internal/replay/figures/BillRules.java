package ripwright.internal.replay.figures;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.BoardFeet;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Shortage.Buy;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** The rules for what is made of the bill, and what is short. */
public final class BillRules {
    private static final String RULE = "4.short";

    private final ReplayIndex pieces;
    private final Findings findings;
    private final Map<String, Integer> made = new HashMap<>(); // part -> how many blanks

    public BillRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
        pieces.blanks().forEach(blank -> made.merge(blank.blank().part(), 1, Integer::sum));
    }

    public void check() {
        madeAndShortAreTheCount();
        statusSaysWhetherShort();
        pieces.plan().shortages().forEach(this::buyWouldDo);
        togetherFromOneBoard();
    }

    /** Every part is made, or short, as often as the bill wants it. */
    private void madeAndShortAreTheCount() {
        Map<String, Integer> missing = new LinkedHashMap<>();
        for (Shortage shortage : pieces.plan().shortages()) {
            if (pieces.part(shortage.part()).isEmpty())
                findings.add(shortage.part(), RULE, "it is listed as short; the bill does not have it.");
            if (missing.putIfAbsent(shortage.part(), shortage.count()) != null)
                findings.add(shortage.part(), RULE, "it is listed as short twice.");
            if (shortage.count() < 1)
                findings.add(
                        shortage.part(), RULE, "it is listed as short by " + shortage.count() + "; at least 1 is due.");
        }
        for (Part part : pieces.job().parts()) {
            int blanks = made.getOrDefault(part.name(), 0);
            int lacking = missing.getOrDefault(part.name(), 0);
            if ((long) blanks + lacking != part.count())
                findings.add(
                        part.name(),
                        RULE,
                        blanks + " made and " + lacking + " short; the bill wants " + part.count() + ".");
        }
    }

    private void statusSaysWhetherShort() {
        boolean isShort = !pieces.plan().shortages().isEmpty();
        if (isShort != (pieces.plan().status() == Plan.Status.SHORT))
            findings.add(
                    "plan",
                    RULE,
                    isShort
                            ? "its status is complete, with parts listed as short."
                            : "its status is short, with no part listed as short.");
    }

    /** What to buy is at least the missing blanks' wood, of a kind and size that would yield one. */
    private void buyWouldDo(Shortage shortage) {
        pieces.part(shortage.part()).ifPresent(part -> {
            Buy buy = shortage.buy();
            BigDecimal least = BoardFeet.of(part.blankLength(), part.blankWidth(), part.thickness())
                    .times(Math.max(0, shortage.count()))
                    .rounded();
            if (buy.boardFeet().compareTo(least) < 0)
                findings.add(
                        part.name(),
                        RULE,
                        "to buy are " + buy.boardFeet().toString() + " board feet; its missing blanks alone are "
                                + least.toPlainString() + ".");
            if (!Tolerance.same(buy.thickness(), part.thickness()))
                findings.add(
                        part.name(),
                        RULE,
                        "to buy is wood " + findings.say(buy.thickness()) + " thick; it needs "
                                + findings.say(part.thickness()) + ".");
            if (Tolerance.less(buy.shortest().nanometers(), part.blankLength().nanometers()))
                findings.add(
                        part.name(),
                        RULE,
                        "to buy is a board " + findings.say(buy.shortest()) + " long at least; one of its blanks is "
                                + findings.say(part.blankLength()) + ".");
            if (pieces.saysNewThings()) theLossesOfSuchBoardsAreBought(part, buy);
            if (Tolerance.less(buy.narrowest().nanometers(), part.blankWidth().nanometers()))
                findings.add(
                        part.name(),
                        RULE,
                        "to buy is a board " + findings.say(buy.narrowest()) + " wide at least; one of its blanks is "
                                + findings.say(part.blankWidth()) + ".");
            if (!part.species().isEmpty()
                    && (buy.species().isEmpty() || !part.species().containsAll(buy.species())))
                findings.add(part.name(), RULE, "to buy is " + names(buy) + "; it does not take every such wood.");
        });
    }

    /** The smallest board to buy also has what its ends and edges lose: as much as the worst of the stack's boards of that wood. */
    private void theLossesOfSuchBoardsAreBought(Part part, Buy buy) {
        long near = pieces.over();
        long far = pieces.over();
        long edges = 0;
        for (Board board : pieces.job().stack()) {
            if (board.testOnly() || !board.millsTo().equals(part.thickness()) || !part.takes(board.species())) continue;
            near = Math.max(near, board.endTrim().near().nanometers());
            far = Math.max(far, board.endTrim().far().nanometers());
            edges = Math.max(
                    edges, (2 - board.straightEdges()) * board.edgeLoss().nanometers());
        }
        long shortest = part.blankLength().nanometers() + near + far;
        long narrowest = part.blankWidth().nanometers() + edges;
        if (Tolerance.less(buy.shortest().nanometers(), shortest))
            findings.add(
                    part.name(),
                    RULE,
                    "to buy is a board " + findings.say(buy.shortest())
                            + " long at least; with what is lost at its ends, one of its blanks needs "
                            + findings.say(shortest) + ".");
        if (Tolerance.less(buy.narrowest().nanometers(), narrowest))
            findings.add(
                    part.name(),
                    RULE,
                    "to buy is a board " + findings.say(buy.narrowest())
                            + " wide at least; with what is lost at its edges, one of its blanks needs "
                            + findings.say(narrowest) + ".");
    }

    private static String names(Buy buy) {
        if (buy.species().isEmpty()) return "any wood";
        return String.join(
                " or ", buy.species().stream().map(Species::name).sorted().toList());
    }

    /** All blanks of all parts that name the same group come from one board. */
    private void togetherFromOneBoard() {
        Map<String, Set<String>> boards = new LinkedHashMap<>(); // group -> boards its blanks come from
        for (PlacedBlank blank : pieces.blanks())
            pieces.part(blank.blank().part())
                    .flatMap(Part::together)
                    .ifPresent(group -> boards.computeIfAbsent(group, unused -> new LinkedHashSet<>())
                            .add(blank.board().id()));
        boards.forEach((group, from) -> {
            if (from.size() > 1)
                findings.add(
                        group,
                        "2.together",
                        "its parts come from " + String.join(" and ", from) + "; all are due from one board.");
        });
    }
}
