package ripwright.settle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ripwright.job.Job;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.stock.History;

/**
 * Books a finished plan against its job's stack and the rack as it lies now: what the plan cuts leaves, what it leaves
 * enters. Whether the plan is right is for replay. A pass over the boards.
 */
public final class Settling {
    private final Job job;
    private final Plan plan;
    private final List<Board> rack;
    private final Set<String> consumed = new LinkedHashSet<>(); // ids, in the plan's order

    /** Of that plan of {@code job}, on that rack, which need not be the one the job was read with. */
    public Settling(Job job, Plan plan, List<Board> rack) {
        this.job = job;
        this.plan = plan;
        this.rack = List.copyOf(rack);
        for (CutBoard board : plan.boards()) consumed.add(board.board());
    }

    /** The ids of what the plan cuts and neither the stack nor the rack has. */
    public List<String> missing() {
        Set<String> there = new HashSet<>();
        for (Board board : job.stack()) there.add(board.id());
        for (Board offcut : rack) there.add(offcut.id());
        return consumed.stream().filter(id -> !there.contains(id)).toList();
    }

    /** The job as far as it concerns the plan: on the rack only what the plan takes from there, as it is now. */
    public Job job() {
        List<Board> used = new ArrayList<>();
        for (Settlement.Taken taken : taken()) used.add(taken.offcut());
        boolean nothing = job.stack().isEmpty() && used.isEmpty();
        return new Job(
                job.name(),
                job.units(),
                job.saw(),
                job.testRip(),
                job.keep(),
                job.prices(),
                job.salvage(),
                job.labor(),
                job.stack(),
                nothing ? job.rack() : used,
                job.parts(),
                job.limits());
    }

    /** The boards of the stack that the plan leaves whole. */
    public List<Board> left() {
        return job.stack().stream()
                .filter(board -> !consumed.contains(board.id()))
                .toList();
    }

    /** The boards of the stack that the plan cuts. */
    public List<Board> cut() {
        return job.stack().stream()
                .filter(board -> consumed.contains(board.id()))
                .toList();
    }

    /**
     * What is booked. Offcuts keep the ids and marks that the plan gives them, unless these are taken.
     *
     * @param used the ids of all offcuts there ever were on the rack
     * @param since the day, as the shop writes it
     */
    public Settlement settlement(Set<String> used, String since) {
        List<Settlement.Taken> taken = taken();
        Set<String> gone = new HashSet<>();
        for (Settlement.Taken leaving : taken) gone.add(leaving.offcut().id());
        Labels labels = new Labels(
                rack.stream().filter(offcut -> !gone.contains(offcut.id())).toList(), used, plan.offcuts());
        List<Board> entered = new ArrayList<>();
        for (Offcut offcut : plan.offcuts()) entered.add(entered(offcut, labels, since));
        return new Settlement(cut(), taken, entered);
    }

    private List<Settlement.Taken> taken() {
        Set<String> stack = new HashSet<>();
        for (Board board : job.stack()) stack.add(board.id());
        List<Settlement.Taken> taken = new ArrayList<>();
        for (int i = 0; i < rack.size(); i++) {
            String id = rack.get(i).id();
            if (consumed.contains(id) && !stack.contains(id)) taken.add(new Settlement.Taken(i, rack.get(i)));
        }
        return taken;
    }

    private Board entered(Offcut offcut, Labels labels, String since) {
        Board piece = offcut.piece();
        String id = labels.id(piece);
        String mark = labels.mark(piece, id);
        String board = piece.history().flatMap(History::board).orElse(offcut.from());
        return piece.toBuilder()
                .id(id)
                .onRack(new History(Optional.of(mark), Optional.of(since), Optional.of(plan.job()), Optional.of(board)))
                .build();
    }
}
