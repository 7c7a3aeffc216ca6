package ripwright.internal.replay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;

/**
 * A job and its plan with everything to be found by its id. An id that stands for two things finds the first; the rules
 * for ids complain about the other. Boards that are not the job's are left out; the rules for boards complain about
 * them.
 */
public final class ReplayIndex {
    private final Job job;
    private final Plan plan;
    private final Map<String, Board> jobBoards = new HashMap<>();
    private final Map<String, Integer> linesOfBill = new HashMap<>();
    private final NavigableSet<Long> widths = new TreeSet<>(); // of blanks, as the bill has them
    private final List<PlacedBoard> boards = new ArrayList<>();
    private final List<PlacedSection> allSections = new ArrayList<>();
    private final List<PlacedStrip> allStrips = new ArrayList<>();
    private final List<PlacedBlank> allBlanks = new ArrayList<>();
    private final Map<String, PlacedBoard> boardsById = new LinkedHashMap<>();
    private final Map<String, PlacedSection> sections = new LinkedHashMap<>();
    private final Map<String, PlacedStrip> strips = new LinkedHashMap<>();
    private final Map<String, PlacedBlank> blanks = new LinkedHashMap<>();
    private final Map<String, Setting> settings = new LinkedHashMap<>();
    private final Map<String, TestBlank> testBlanks = new LinkedHashMap<>();
    private final Map<String, Offcut> offcuts = new LinkedHashMap<>();

    public ReplayIndex(Job job, Plan plan) {
        this.job = job;
        this.plan = plan;
        for (Board board : job.boards()) jobBoards.putIfAbsent(board.id(), board);
        for (int i = 0; i < job.parts().size(); i++)
            linesOfBill.putIfAbsent(job.parts().get(i).name(), i);
        for (Part part : job.parts()) widths.add(part.blankWidth().nanometers());
        for (CutBoard cut : plan.boards()) jobBoard(cut.board()).ifPresent(board -> place(board, cut.sections()));
        plan.settings().forEach(setting -> settings.putIfAbsent(setting.id(), setting));
        plan.testBlanks().forEach(blank -> testBlanks.putIfAbsent(blank.id(), blank));
        plan.offcuts().forEach(offcut -> offcuts.putIfAbsent(offcut.id(), offcut));
    }

    /** Whether both are the same in the plan's file, whose decimals do not tell apart two widths that the bill does. */
    public boolean hidesWidths(Length one, Length other) {
        long hidden = Tolerance.ofPrint(job.units());
        long width = one.nanometers();
        return one.equals(other)
                && widths.subSet(width - hidden, true, width + hidden, true).size() > 1;
    }

    private void place(Board board, List<Section> cutFromIt) {
        BoardFrame frame = new BoardFrame(board);
        List<PlacedSection> placed = cutFromIt.stream()
                .map(section -> new PlacedSection(section, frame))
                .toList();
        PlacedBoard placedBoard = new PlacedBoard(frame, placed);
        boards.add(placedBoard);
        boardsById.putIfAbsent(board.id(), placedBoard);
        placed.forEach(this::place);
    }

    private void place(PlacedSection section) {
        allSections.add(section);
        sections.putIfAbsent(section.id(), section);
        for (PlacedStrip strip : section.strips()) {
            allStrips.add(strip);
            strips.putIfAbsent(strip.id(), strip);
            for (PlacedBlank blank : strip.blanks()) {
                allBlanks.add(blank);
                blanks.putIfAbsent(blank.id(), blank);
            }
        }
    }

    public Job job() {
        return job;
    }

    public Plan plan() {
        return plan;
    }

    public long ripKerf() {
        return job.saw().ripKerf().nanometers();
    }

    public long crosscutKerf() {
        return job.saw().crosscutKerf().nanometers();
    }

    /**
     * Whether the job says anything that older jobs could not; the plans of those are held to what the contract said then
     * of figures and of where test wood comes from.
     */
    public boolean saysNewThings() {
        return over() > 0
                || job.boards().stream().anyMatch(board -> board.testOnly() || board.squareEnds() > 0)
                || job.parts().stream()
                        .anyMatch(part -> !part.tested() || !part.tenon().sum().isZero());
    }

    /** What each end of a section is left long by; 0 where sections are cut to the length of their parts. */
    public long over() {
        return job.breakdown().over().nanometers();
    }

    /** A board of the job, consumed or not. */
    Optional<Board> jobBoard(String id) {
        return Optional.ofNullable(jobBoards.get(id));
    }

    public Optional<Part> part(String name) {
        return lineOfBill(name).map(job.parts()::get);
    }

    public Optional<Integer> lineOfBill(String part) {
        return Optional.ofNullable(linesOfBill.get(part));
    }

    /** The consumed boards, as listed. */
    public List<PlacedBoard> boards() {
        return Collections.unmodifiableList(boards);
    }

    public List<PlacedSection> sections() {
        return Collections.unmodifiableList(allSections);
    }

    public List<PlacedStrip> strips() {
        return Collections.unmodifiableList(allStrips);
    }

    public List<PlacedBlank> blanks() {
        return Collections.unmodifiableList(allBlanks);
    }

    public Optional<PlacedBoard> board(String id) {
        return Optional.ofNullable(boardsById.get(id));
    }

    public Optional<PlacedSection> section(String id) {
        return Optional.ofNullable(sections.get(id));
    }

    public Optional<PlacedStrip> strip(String id) {
        return Optional.ofNullable(strips.get(id));
    }

    public Optional<PlacedBlank> blank(String id) {
        return Optional.ofNullable(blanks.get(id));
    }

    public Optional<Setting> setting(String id) {
        return Optional.ofNullable(settings.get(id));
    }

    public Optional<TestBlank> testBlank(String id) {
        return Optional.ofNullable(testBlanks.get(id));
    }

    public Optional<Offcut> offcut(String id) {
        return Optional.ofNullable(offcuts.get(id));
    }

    /** The consumed board that a piece with that id is of, or comes from. */
    public Optional<Board> boardOf(String piece) {
        return board(piece)
                .map(PlacedBoard::board)
                .or(() -> section(piece).map(PlacedSection::board))
                .or(() -> strip(piece).map(PlacedStrip::board));
    }
}
