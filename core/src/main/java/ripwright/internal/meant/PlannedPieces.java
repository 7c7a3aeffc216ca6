package ripwright.internal.meant;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ripwright.internal.replay.leftovers.TestBlankPlaces;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;

/** Everything a plan names, by its id. */
public final class PlannedPieces {
    private final Job job;
    private final Plan plan;
    private final Map<String, Board> boards = new HashMap<>();
    private final Map<String, CutBoard> cutBoards = new HashMap<>();
    private final Map<String, Section> sections = new HashMap<>();
    private final Map<String, Strip> strips = new HashMap<>();
    private final Map<String, Section> sectionOfStrip = new HashMap<>();
    private final Map<String, Blank> blanks = new HashMap<>();
    private final Map<String, String> stripOfBlank = new HashMap<>();
    private final Map<String, TestBlank> testBlanks = new HashMap<>();
    private final Map<String, Offcut> offcuts = new HashMap<>();
    private final Map<String, Setting> settings = new HashMap<>();
    private final TestBlankPlaces places;

    /** Of that plan of that job. */
    public PlannedPieces(Job job, Plan plan) {
        this.job = job;
        this.plan = plan;
        for (Board board : job.boards()) boards.put(board.id(), board);
        for (CutBoard cut : plan.boards()) add(cut);
        plan.testBlanks().forEach(blank -> testBlanks.put(blank.id(), blank));
        plan.offcuts().forEach(offcut -> offcuts.put(offcut.id(), offcut));
        plan.settings().forEach(setting -> settings.put(setting.id(), setting));
        places = new TestBlankPlaces(job, plan);
    }

    private void add(CutBoard cut) {
        cutBoards.put(cut.board(), cut);
        for (Section section : cut.sections()) {
            sections.put(section.id(), section);
            for (Strip strip : section.strips()) {
                strips.put(strip.id(), strip);
                sectionOfStrip.put(strip.id(), section);
                for (Blank blank : strip.blanks()) {
                    blanks.put(blank.id(), blank);
                    stripOfBlank.put(blank.id(), strip.id());
                }
            }
        }
    }

    public Plan plan() {
        return plan;
    }

    public Optional<Board> board(String id) {
        return Optional.ofNullable(boards.get(id));
    }

    public Optional<CutBoard> cutBoard(String id) {
        return Optional.ofNullable(cutBoards.get(id));
    }

    public Optional<Section> section(String id) {
        return Optional.ofNullable(sections.get(id));
    }

    public Optional<Strip> strip(String id) {
        return Optional.ofNullable(strips.get(id));
    }

    public Optional<Section> sectionOf(String strip) {
        return Optional.ofNullable(sectionOfStrip.get(strip));
    }

    public Optional<Blank> blank(String id) {
        return Optional.ofNullable(blanks.get(id));
    }

    public Optional<String> stripOf(String blank) {
        return Optional.ofNullable(stripOfBlank.get(blank));
    }

    public Optional<TestBlank> testBlank(String id) {
        return Optional.ofNullable(testBlanks.get(id));
    }

    public Optional<TestBlankPlaces.Place> placeOf(TestBlank blank) {
        return places.of(blank.id());
    }

    public Optional<Offcut> offcut(String id) {
        return Optional.ofNullable(offcuts.get(id));
    }

    public Optional<Setting> setting(String id) {
        return Optional.ofNullable(settings.get(id));
    }

    /** Of all sections, strips, blanks, test blanks and offcuts. */
    public Set<String> ids() {
        Set<String> ids = new TreeSet<>(sections.keySet());
        ids.addAll(strips.keySet());
        ids.addAll(blanks.keySet());
        ids.addAll(testBlanks.keySet());
        ids.addAll(offcuts.keySet());
        return ids;
    }

    /** Whether the plan has a piece of that id at all, other than a board. */
    public boolean names(String id) {
        return List.of(sections, strips, blanks, testBlanks, offcuts).stream().anyMatch(map -> map.containsKey(id));
    }

    /** Which boards the blanks of a part come from, by the part's name. */
    public Map<String, Set<String>> boardsOfParts() {
        Map<String, Set<String>> of = new HashMap<>();
        for (CutBoard cut : plan.boards())
            for (Section section : cut.sections())
                for (Strip strip : section.strips())
                    for (Blank blank : strip.blanks())
                        of.computeIfAbsent(blank.part(), key -> new TreeSet<>()).add(cut.board());
        return of;
    }

    public Set<String> stripsOf(String section) {
        Set<String> ids = new TreeSet<>();
        section(section).ifPresent(those -> those.strips().forEach(strip -> ids.add(strip.id())));
        return ids;
    }

    /** What a section gives up at its edge, exactly as it is due, where the file rounded it. */
    public long exactLoss(Length loss, long due) {
        long printed = loss.nanometers();
        long off = job.units().nanometers() / 1_000_000; // as much as two roundings to six decimals come to
        return Math.abs(printed - due) <= off ? due : printed;
    }
}
