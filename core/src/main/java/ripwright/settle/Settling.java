package ripwright.settle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;

/**
 * Books a finished plan against its job's stack and the rack as it lies now: what the plan cuts leaves, what it leaves
 * enters. Whether the plan is right is for replay. A pass over the boards.
 */
public final class Settling {
    private final Job begun;
    private final Job planned;
    private final Plan plan;
    private final List<Board> rack;
    private final Set<String> consumed; // ids of what leaves stack or rack, or is in hand already
    private final List<Board> kept; // in hand already, not used by the plan, and worth keeping

    /** Of that plan of {@code job}, on that rack, which need not be the one the job was read with. */
    public Settling(Job job, Plan plan, List<Board> rack) {
        this(job, job, plan, rack, consumed(plan), List.of());
    }

    private Settling(Job begun, Job planned, Plan plan, List<Board> rack, Set<String> consumed, List<Board> kept) {
        this.begun = begun;
        this.planned = planned;
        this.plan = plan;
        this.rack = List.copyOf(rack);
        this.consumed = consumed;
        this.kept = kept;
    }

    /**
     * Of a job that was begun by one plan and finished by another. Its boards are those of the job that was begun; what was
     * opened of them before it was resumed is no longer among the boards of the job that was resumed. What that has in hand
     * on its own rack, and does not use, enters the rack as well.
     *
     * @param begun the job as it was begun
     * @param before the ids of all boards that the plan or the plans before it were to cut
     * @param resumed the job that was left
     * @param plan its plan
     * @param rack the rack as it lies now
     */
    public static Settling resumed(Job begun, Set<String> before, Job resumed, Plan plan, List<Board> rack) {
        Set<String> pieces = pieces(begun, resumed);
        Set<String> whole = ids(resumed.boards());
        whole.removeAll(pieces);
        Set<String> consumed = new LinkedHashSet<>(before);
        consumed.removeIf(id -> whole.contains(inHand(id)));
        Set<String> cut = consumed(plan);
        for (Board board : begun.stack()) if (cut.contains(inHand(board.id()))) consumed.add(board.id());
        for (String id : cut) if (!pieces.contains(id) && !isInHand(id, begun.stack())) consumed.add(id);
        List<Board> kept = new ArrayList<>();
        for (Board offcut : resumed.rack())
            if (pieces.contains(offcut.id()) && !cut.contains(offcut.id()) && !isTestBlank(offcut, begun))
                kept.add(offcut);
        return new Settling(begun, resumed, plan, rack, consumed, kept);
    }

    /** What the boards of a resumed job are called: an id with a # would be that of a copy. */
    private static String inHand(String id) {
        return id.replace('#', '.');
    }

    private static boolean isInHand(String id, List<Board> stack) {
        return stack.stream().anyMatch(board -> inHand(board.id()).equals(id));
    }

    /** The ids of what was cut from a board of the job that was begun. */
    private static Set<String> pieces(Job begun, Job resumed) {
        Set<String> pieces = new HashSet<>();
        for (Board board : resumed.stack()) if (!isInHand(board.id(), begun.stack())) pieces.add(board.id());
        for (Board offcut : resumed.rack()) if (isPiece(offcut, begun, resumed)) pieces.add(offcut.id());
        return pieces;
    }

    /** Whether it was cut from a board of the job that was begun, and does not lie on the rack yet. */
    private static boolean isPiece(Board offcut, Job begun, Job resumed) {
        History history = offcut.history().orElse(History.UNKNOWN);
        Optional<String> job = history.job();
        return history.since().isEmpty()
                && job.filter(name -> name.equals(begun.name()) || name.equals(resumed.name()))
                        .isPresent();
    }

    /** A test blank is not kept, as it is not after a plan that needs no other; what is left of test wood is. */
    private static boolean isTestBlank(Board offcut, Job begun) {
        Optional<String> from = offcut.history().flatMap(History::board);
        boolean ofTestWood = begun.boards().stream()
                .anyMatch(board ->
                        board.testOnly() && from.filter(board.id()::equals).isPresent());
        return (offcut.testOnly() && !ofTestWood) || isBarred(offcut);
    }

    /** As test blanks were told from other wood by the plans of earlier days. */
    private static boolean isBarred(Board offcut) {
        return offcut.defects().stream()
                .anyMatch(defect -> defect.blocks() == Defect.Blocks.ALL
                        && defect.from().isZero()
                        && defect.left().isZero()
                        && defect.to().equals(offcut.length())
                        && !offcut.width().max(offcut.widthAtFarEnd()).exceeds(defect.right()));
    }

    private static Set<String> consumed(Plan plan) {
        Set<String> consumed = new LinkedHashSet<>();
        for (CutBoard board : plan.boards()) consumed.add(board.board());
        return consumed;
    }

    private static Set<String> ids(List<Board> boards) {
        Set<String> ids = new HashSet<>();
        for (Board board : boards) ids.add(board.id());
        return ids;
    }

    /** The job whose stack and rack it is. */
    public Job begun() {
        return begun;
    }

    /**
     * The ids of what is cut and neither the stack nor the rack has. {@link #settlement} passes over them: while there are any
     * it is for the caller to refuse.
     */
    public List<String> missing() {
        Set<String> there = ids(begun.stack());
        there.addAll(ids(rack));
        return consumed.stream().filter(id -> !there.contains(id)).toList();
    }

    /** The job as far as it concerns the plan: of the rack only what the plan takes from there, as it is now. */
    public Job job() {
        if (!planned.equals(begun)) return planned; // what is in hand is as it is there
        List<Board> used = new ArrayList<>();
        for (Settlement.Taken taken : taken()) used.add(taken.offcut());
        boolean nothing = planned.stack().isEmpty() && used.isEmpty();
        List<Board> rackUsed = nothing ? planned.rack() : used;
        Set<String> there = ids(planned.stack());
        there.addAll(ids(rackUsed));
        return planned.toBuilder()
                .rack(rackUsed)
                .parts(planned.parts().stream().map(part -> of(part, there)).toList())
                .build();
    }

    /** The part, of those boards it may come from that are there; of none, where none of them is. */
    private static Part of(Part part, Set<String> there) {
        Set<String> boards = new LinkedHashSet<>();
        for (String id : part.boards()) if (there.contains(id) || id.endsWith(Part.USED_UP)) boards.add(id);
        if (boards.size() == part.boards().size()) return part;
        if (boards.isEmpty()) boards.add(usedUp(part.boards().iterator().next()));
        return part.toBuilder().boards(boards).build();
    }

    private static String usedUp(String id) {
        int longest = 300 - Part.USED_UP.length();
        int length = id.codePointCount(0, id.length());
        return (length <= longest ? id : id.substring(0, id.offsetByCodePoints(0, longest))) + Part.USED_UP;
    }

    /** The boards of the stack that stay whole. */
    public List<Board> left() {
        return begun.stack().stream()
                .filter(board -> !consumed.contains(board.id()))
                .toList();
    }

    /** The boards of the stack that are cut. */
    public List<Board> cut() {
        return begun.stack().stream()
                .filter(board -> consumed.contains(board.id()))
                .toList();
    }

    /**
     * What is booked. Offcuts keep the ids and marks that the plan gives them, unless these are taken.
     *
     * @param used the ids of all offcuts there ever were on the rack
     * @param since the day, as the shop writes it
     * @throws IllegalArgumentException when that is no {@link ripwright.measure.Name}
     */
    public Settlement settlement(Set<String> used, String since) {
        List<Settlement.Taken> taken = taken();
        Set<String> gone = new HashSet<>();
        for (Settlement.Taken leaving : taken) gone.add(leaving.offcut().id());
        List<Board> entering = entering();
        Labels labels = new Labels(
                rack.stream().filter(offcut -> !gone.contains(offcut.id())).toList(), used, entering);
        List<Board> entered = new ArrayList<>();
        for (Board piece : entering) entered.add(entered(piece, labels, since));
        return new Settlement(cut(), taken, entered);
    }

    /** What enters, as the plan and the sheet call it: the plan's offcuts, then what was in hand and is kept. */
    public List<Board> entering() {
        List<Board> entering = new ArrayList<>();
        for (Offcut offcut : plan.offcuts()) {
            Board piece = offcut.piece();
            String board = piece.history().flatMap(History::board).orElse(offcut.from());
            entering.add(from(piece, board));
        }
        for (Board piece : kept)
            entering.add(from(piece, piece.history().flatMap(History::board).orElse(piece.id())));
        return entering;
    }

    private Board from(Board piece, String board) {
        Optional<String> mark = piece.history().flatMap(History::mark);
        return piece.toBuilder()
                .onRack(new History(mark, Optional.empty(), Optional.of(begun.name()), Optional.of(board)))
                .build();
    }

    private List<Settlement.Taken> taken() {
        Set<String> stack = ids(begun.stack());
        List<Settlement.Taken> taken = new ArrayList<>();
        for (int i = 0; i < rack.size(); i++) {
            String id = rack.get(i).id();
            if (consumed.contains(id) && !stack.contains(id)) taken.add(new Settlement.Taken(i, rack.get(i)));
        }
        return taken;
    }

    private static Board entered(Board piece, Labels labels, String since) {
        String id = labels.id(piece);
        String mark = labels.mark(piece, id);
        History from = piece.history().orElse(History.UNKNOWN);
        return piece.toBuilder()
                .id(id)
                .onRack(new History(Optional.of(mark), Optional.of(since), from.job(), from.board()))
                .build();
    }
}
