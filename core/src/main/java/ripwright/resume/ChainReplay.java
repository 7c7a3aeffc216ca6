package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.replay.Fault;
import ripwright.replay.Replay;

/**
 * Holds a resumed plan against the boards the job began with: from them, through what was done and what went wrong, to the
 * last part. Both plans are replayed; the pieces in hand are checked to be apart from each other in their boards by the kerfs,
 * and to be what the resumed job says of them; every blank of the rest is laid back into the board it comes from; and made,
 * to be made and short must be the whole bill. Keeps no state; safe on any thread. An interruption is not looked at.
 */
public final class ChainReplay {
    private final Job job;
    private final Plan plan;
    private final Report report;
    private final Resume resume;
    private final Resumed resumed;
    private final ChainIds ids;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, Integer> count = new HashMap<>(); // part -> made, to be made or short
    private final Map<String, TreeSet<String>> boards = new HashMap<>(); // part -> boards its blanks come from

    private ChainReplay(Job job, Plan plan, Report report, Resumed resumed, ChainIds ids) {
        this.job = job;
        this.plan = plan;
        this.report = report;
        this.resumed = resumed;
        this.ids = ids;
        resume = new Resume(job, plan, report, ids);
    }

    /**
     * All that does not hold; empty when the chain holds.
     *
     * @param job the job as it was begun
     * @param plan its plan, which holds
     * @param resumed the rest and its plan
     * @throws WrongReportException when the report does not agree with {@code plan}
     */
    public static List<Fault> faults(Job job, Plan plan, Report report, Resumed resumed) {
        return faults(job, plan, report, resumed, ChainIds.of(job, plan));
    }

    /**
     * The same of a job that was resumed itself.
     *
     * @param ids those that the chain has used up to {@code plan}
     * @throws WrongReportException when the report does not agree with {@code plan}
     */
    public static List<Fault> faults(Job job, Plan plan, Report report, Resumed resumed, ChainIds ids) {
        ChainReplay chain = new ChainReplay(job, plan, report, resumed, ids);
        chain.check();
        return List.copyOf(chain.faults);
    }

    private void check() {
        faults.addAll(Replay.faults(job, plan));
        faults.addAll(Replay.faults(resumed.job(), resumed.plan()));
        MeasureCheck hand = new MeasureCheck(job, resume, resumed.job(), faults);
        hand.check();
        made();
        for (CutBoard cut : resumed.plan().boards())
            hand.piece(cut.board()).ifPresent(piece -> toBeMade(hand, piece, cut));
        resumed.plan().shortages().forEach(shortage -> count.merge(shortage.part(), shortage.count(), Integer::sum));
        billIsWhole();
        partsAreAsReported();
        boardsAreKeptTo();
        new IdsCheck(resume, resumed, ids, faults).check();
    }

    private void made() {
        for (SizeNow piece : resume.pieces())
            if (piece.made()) count(partOf(piece.planned().name()), piece.board());
    }

    private void count(String part, String board) {
        count.merge(part, 1, Integer::sum);
        boards.computeIfAbsent(part, key -> new TreeSet<>()).add(board);
    }

    private String partOf(String blank) {
        return plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .filter(one -> one.id().equals(blank))
                .map(Blank::part)
                .findFirst()
                .orElse("");
    }

    private void toBeMade(MeasureCheck hand, SizeNow piece, CutBoard cut) {
        for (Section section : cut.sections())
            for (Strip strip : section.strips())
                for (Blank blank : strip.blanks()) {
                    count(blank.part(), piece.board());
                    part(resumed.job(), blank.part())
                            .ifPresent(part -> hand.layBack(piece, section, strip, blank, part));
                }
    }

    private static Optional<Part> part(Job job, String name) {
        return job.parts().stream().filter(part -> part.name().equals(name)).findFirst();
    }

    private void billIsWhole() {
        for (Part part : job.parts()) {
            int all = count.getOrDefault(part.name(), 0);
            if (all != part.count())
                faults.add(new Fault(
                        part.name(),
                        "made, to be made and short are " + all + "; the bill wants " + part.count() + ".",
                        "resume.bill"));
        }
    }

    /** What is still to be made is as the bill has it, or as the report says it must be now. */
    private void partsAreAsReported() {
        Map<String, Part> due = new LinkedHashMap<>();
        for (Part part : job.parts()) due.put(part.name(), part);
        for (Change change : report.changes())
            if (change instanceof Change.Wanted wanted)
                due.computeIfPresent(
                        wanted.part(),
                        (name, part) -> Part.of(
                                        name,
                                        wanted.length().orElse(part.length()),
                                        wanted.width().orElse(part.width()),
                                        part.thickness())
                                .species(part.species())
                                .face(part.face())
                                .sneakUp(part.sneakUp())
                                .edgeAllowance(part.edgeAllowance())
                                .fitted(part.fitted())
                                .build());
        for (Part part : resumed.job().parts()) {
            Part wanted = due.get(part.name());
            boolean same = wanted != null
                    && wanted.blankLength().equals(part.blankLength())
                    && wanted.blankWidth().equals(part.blankWidth())
                    && wanted.length().equals(part.length())
                    && wanted.thickness().equals(part.thickness())
                    && wanted.species().equals(part.species())
                    && wanted.face() == part.face()
                    && wanted.fitted() == part.fitted();
            if (!same)
                faults.add(new Fault(part.name(), "it is not what the bill and the report want.", "resume.bill"));
        }
    }

    private void boardsAreKeptTo() {
        Map<String, TreeSet<String>> groups = new HashMap<>();
        for (Part part : job.parts()) {
            TreeSet<String> from = boards.getOrDefault(part.name(), new TreeSet<>());
            part.together()
                    .ifPresent(group -> groups.computeIfAbsent(group, key -> new TreeSet<>())
                            .addAll(from));
            for (String board : from)
                if (!part.mayComeFrom(board))
                    faults.add(new Fault(part.name(), "it comes from board " + board + ".", "2.boards"));
        }
        groups.forEach((group, from) -> {
            if (from.size() > 1)
                faults.add(new Fault(
                        group,
                        "its parts come from " + String.join(" and ", from) + "; all are due from one board.",
                        "2.together"));
        });
    }
}
