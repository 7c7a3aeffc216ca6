package ripwright.runner.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.json.Book;
import ripwright.json.Booked;
import ripwright.measure.Unit;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.replay.Fault;
import ripwright.replay.Replay;
import ripwright.settle.Settlement;
import ripwright.settle.Settling;
import ripwright.stock.Board;

/** What speaks against booking a plan, or against taking it back, in sentences; nothing when all is well. */
final class Reasons {
    private static final int MOST_FAULTS = 10;

    private final Unit units;
    private final List<Board> rack;
    private final Book book;

    /** On that rack with that book. */
    Reasons(Unit units, List<Board> rack, Book book) {
        this.units = units;
        this.rack = rack;
        this.book = book;
    }

    /** What has changed since the plan was made, or else what is wrong with it. */
    List<String> againstSettling(Settling settling, Plan plan) {
        List<String> reasons = new ArrayList<>();
        for (String id : settling.missing()) reasons.add(missing(id));
        for (Board board : settling.cut()) cutAlready(board, plan).ifPresent(reasons::add);
        if (!reasons.isEmpty()) return reasons;
        List<Fault> faults = Replay.faults(settling.job(), plan);
        if (faults.isEmpty()) return List.of();
        for (CutBoard board : plan.boards()) changed(board.board()).ifPresent(reasons::add);
        reasons.add(
                "As the boards are in the job and on the rack now, the plan does not hold. If one of them was changed"
                        + " since the plan was made, plan again.");
        faults.stream().limit(MOST_FAULTS).forEach(fault -> reasons.add("  " + fault.message()));
        if (faults.size() > MOST_FAULTS) reasons.add("  and " + (faults.size() - MOST_FAULTS) + " more.");
        return reasons;
    }

    private String missing(String id) {
        return book.tookLast(id)
                .map(taker -> id + " is not on the rack any more: " + said(taker) + " took it. Plan again.")
                .orElse(id + " is neither in the job's stack nor on the rack. Plan again.");
    }

    /** Ids with a # are copies of an entry, numbered anew in every job. */
    private Optional<String> cutAlready(Board board, Plan plan) {
        return book.cutLast(board)
                .filter(cutter -> board.id().indexOf('#') < 0 || cutter.job().equals(plan.job()))
                .map(cutter ->
                        board.id() + " is cut already: " + said(cutter) + " did. Take it off the stack and plan again;"
                                + " if this is another board of the same measures, give it an id of its own.");
    }

    private Optional<String> changed(String id) {
        Optional<Board> now =
                rack.stream().filter(offcut -> offcut.id().equals(id)).findFirst();
        Optional<Board> then = book.entered(id);
        if (now.isEmpty() || then.isEmpty() || now.equals(then)) return Optional.empty();
        return Optional.of(id + " came to the rack as " + size(then.get()) + "; now it is there as " + size(now.get())
                + ", changed by hand.");
    }

    /** Who needs what the plan has left, and what is in the way of what it took. */
    List<String> againstUnsettling(Settlement settlement) {
        List<String> reasons = new ArrayList<>();
        for (Board gone : settlement.gone(rack)) reasons.add(gone(gone));
        for (Board other : settlement.inTheWay(rack))
            reasons.add(other.id() + " on the rack has the id or the mark of an offcut that would come back.");
        return reasons;
    }

    private String gone(Board offcut) {
        String id = offcut.id();
        Optional<Board> now =
                rack.stream().filter(other -> other.id().equals(id)).findFirst();
        if (now.isPresent())
            return id + ", which it left, was changed by hand since: it came as " + size(offcut) + ", now it is "
                    + size(now.get()) + ".";
        return book.tookLast(id)
                .map(taker -> id + ", which it left, is cut: " + said(taker) + " took it. Unsettle that first.")
                .orElse(id + ", which it left, is not on the rack any more.");
    }

    private String size(Board board) {
        String width =
                units.exact(board.width()) + (board.tapered() ? " to " + units.exact(board.widthAtFarEnd()) : "");
        return board.species() + ", " + units.exact(board.thickness()) + " x " + width + " x "
                + units.exact(board.length()) + " " + units.symbol();
    }

    static String said(Booked entry) {
        return "\"" + entry.job() + "\", booked on " + entry.on() + " (" + entry.file() + "),";
    }
}
