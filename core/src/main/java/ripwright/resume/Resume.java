package ripwright.resume;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
import ripwright.internal.meant.AsMeant;
import ripwright.internal.meant.PlanRenamed;
import ripwright.internal.meant.PlannedPieces;
import ripwright.internal.sequence.Sequencer;
import ripwright.job.Job;
import ripwright.job.Problem;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.saw.Labor;
import ripwright.stock.Board;

/**
 * What is in hand after some steps of a plan and what else a report says, and the job that is left: its stack and rack are
 * the pieces in hand, its bill the parts not made yet. A plan of that job is the plan of the rest; nothing that is good is
 * cut again. A few passes over the plan. It never changes once made; safe on any thread.
 */
public final class Resume {
    private final Job job;
    private final ChainIds ids;
    private final PlannedPieces pieces;
    private final PiecesInHand bench;
    private final List<SizeNow> now;
    private final RestOfBill bill;

    /**
     * Of that job and a plan that holds for it, as {@link ripwright.replay.Replay} has it: of any other what comes out is left
     * open, be it an exception.
     *
     * @throws WrongReportException when the report does not agree with the plan, with all in which it does not
     */
    public Resume(Job job, Plan plan, Report report) {
        this(job, plan, report, ChainIds.of(job, plan));
    }

    /**
     * The same of a job that was resumed itself: no piece gets an id that means another one already.
     *
     * @param ids those the chain has used, as {@link Resumed} has them
     * @throws WrongReportException when the report does not agree with the plan, with all in which it does not
     */
    public Resume(Job job, Plan plan, Report report, ChainIds ids) {
        this.job = job;
        this.ids = ids;
        pieces = new PlannedPieces(job, new AsMeant(job, plan).plan());
        bench = new PiecesInHand(job, pieces);
        List<Problem> problems = new ArrayList<>();
        if (!report.job().equals(plan.job()))
            problems.add(
                    new Problem("job", "\"" + report.job() + "\" is not the job of the plan, \"" + plan.job() + "\"."));
        DoneSteps done = new DoneSteps(pieces, report.done(), report.made());
        problems.addAll(done.problems());
        if (!done.problems().isEmpty()) throw new WrongReportException(problems);
        Map<String, Piece> places =
                report.made().isEmpty() ? Map.of() : asPlanned(plan).places();
        for (DoneSteps.Work work : done.work())
            if (work.whole()) bench.does(work.step());
            else bench.doesInPart(work.step(), places);
        Mishaps mishaps = new Mishaps(job, pieces, bench.held(), report.changes(), ids);
        now = mishaps.now();
        bill = new RestOfBill(job, pieces, now, report.changes());
        problems.addAll(mishaps.problems());
        problems.addAll(bill.problems());
        if (!problems.isEmpty()) throw new WrongReportException(problems);
    }

    /** All that the plan makes, as if all of it were done. */
    private PiecesInHand asPlanned(Plan plan) {
        PiecesInHand all = new PiecesInHand(job, pieces);
        for (Step step : plan.steps()) all.does(step);
        return all;
    }

    /** Every piece there was when the last step was done, as it is now. */
    public List<SizeNow> pieces() {
        return now;
    }

    /** How many of which parts are made and good. */
    public Map<String, Integer> made() {
        return bill.made();
    }

    /** The parts not made yet, as they must be now. */
    public List<Part> wanted() {
        return bill.wanted();
    }

    List<Losses> dust() {
        return bench.dust();
    }

    List<HeldPiece> held() {
        return bench.held();
    }

    /** What is spent already. */
    public Spent spent() {
        Money stock = Money.ZERO;
        for (String id : bench.opened())
            stock = stock.plus(job.cost(pieces.board(id).orElseThrow()));
        BigDecimal minutes = bench.saws().minutes(job.laborOrUnpaid());
        BigDecimal labor =
                job.labor().map(Labor::perHour).orElse(BigDecimal.ZERO).multiply(minutes);
        Money inHand = Money.ZERO;
        HandStock stands = new HandStock(job, now, bill.wanted(), true);
        for (Board board : stands.rack())
            if (!pieces.board(board.id()).filter(Board::fromRack).isPresent())
                inHand = inHand.plus(BoardFeet.counted(board.area(), board.thickness())
                        .at(job.price(board))
                        .times(job.salvage()));
        return new Spent(
                List.copyOf(bench.opened()),
                stock,
                minutes,
                Money.of(labor.divide(new BigDecimal("60"), 9, RoundingMode.HALF_UP)),
                inHand);
    }

    /**
     * The rest of the job, planned by {@code planner}; empty when nothing is left to make, or nothing to make it of. Strips
     * that are as wide as a blank that is wanted are not ripped again, and parts that belong together stay on the board the
     * plan has them on, in one piece where they were to come from one; only where some part is short by that, this is let go, then
     * the rest. {@code planner} is called up to three times, on this thread; what it throws comes through.
     */
    public Optional<Resumed> planned(Function<Job, Plan> planner) {
        Optional<Resumed> best = planned(planner, true, true);
        if (best.isEmpty() || shortOfNoMoreThanLost(best.get().plan())) return best;
        HandStock stock = new HandStock(job, now, bill.wanted(), true);
        if (groups(stock, true, true).inOnePiece()) best = better(planned(planner, true, false), best);
        if (best.isEmpty() || shortOfNoMoreThanLost(best.get().plan())) return best;
        return better(planned(planner, false, false), best);
    }

    private static Optional<Resumed> better(Optional<Resumed> one, Optional<Resumed> other) {
        boolean is = one.isPresent() && (other.isEmpty() || better(one.get(), other.get()));
        return is ? one : other;
    }

    private boolean shortOfNoMoreThanLost(Plan plan) {
        Map<String, Integer> lost = impossible();
        return plan.shortages().stream()
                .allMatch(shortage -> lost.getOrDefault(shortage.part(), 0) == shortage.count());
    }

    private static boolean better(Resumed one, Resumed other) {
        return one.plan().tally().parts().compareTo(other.plan().tally().parts()) > 0;
    }

    /**
     * How many of which parts can no longer be made with those they belong to, as the board of these is used up. They stay in
     * the bill, so that a plan of the rest is short of them, and so is every later one.
     */
    public Map<String, Integer> impossible() {
        return groups(new HandStock(job, now, bill.wanted(), false), false, false)
                .impossible();
    }

    /** What is not made yet and what to buy for it, where nothing is in hand to make it of. */
    public List<Shortage> shortages() {
        if (bill.wanted().isEmpty()) return List.of();
        return new Sequencer(job.withParts(bill.wanted()), List.of(), Money.ZERO)
                .plan()
                .shortages();
    }

    private GroupBoards groups(HandStock stock, boolean asPlanned, boolean inOnePiece) {
        return new GroupBoards(job, pieces, now, stock.pieces(), bill.wanted(), asPlanned, inOnePiece);
    }

    private Optional<Resumed> planned(Function<Job, Plan> planner, boolean asPlanned, boolean inOnePiece) {
        HandStock stock = new HandStock(job, now, bill.wanted(), asPlanned);
        List<Part> parts = groups(stock, asPlanned, inOnePiece).parts();
        if (parts.isEmpty() || stock.pieces().isEmpty()) return Optional.empty();
        Job rest = job.toBuilder()
                .name(name(job.name()))
                .stack(stock.stack())
                .rack(stock.rack())
                .parts(parts)
                .build();
        ChainIds before = ids.now(stock.pieces());
        Plan planned = planner.apply(rest);
        Plan labeled = new PlanRenamed(before.renamed(rest, planned)).of(planned);
        return Optional.of(new Resumed(rest, labeled, stock.pieces(), before.with(rest, labeled)));
    }

    private static String name(String begun) {
        String more = ", resumed";
        return begun.endsWith(more) || begun.length() + more.length() > 300 ? begun : begun + more;
    }
}
