package ripwright.internal.pieces;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Leftover;
import ripwright.internal.geometry.SawWork;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Board;

/** All that is cut from boards, under the ids of the plan, and the rip settings it takes. */
public final class CutPieces {
    private final Job job;
    private final PlanIds ids;
    private final List<RipSetting> settings = new ArrayList<>();
    private final Map<Long, Integer> settingOfWidth = new HashMap<>();
    private final SortedMap<Integer, List<SectionCut>> sections = new TreeMap<>();

    /** Names what {@code layouts} cut, in the order of the job. */
    public CutPieces(Job job, List<Layout> layouts, PlanIds ids) {
        this.job = job;
        this.ids = ids;
        List<Layout> sorted =
                layouts.stream().sorted(Comparator.comparingInt(Layout::board)).toList();
        nameSettings(sorted);
        for (Layout layout : sorted)
            if (sections.put(layout.board(), sections(layout)) != null)
                throw new IllegalArgumentException("The board in place " + layout.board() + " is cut twice.");
    }

    /** The rip settings, widest first. */
    public List<RipSetting> settings() {
        return Collections.unmodifiableList(settings);
    }

    /** The place of a strip's setting in {@link #settings}; -1 for stock ripped before. */
    public int settingOf(StripCut strip) {
        return strip.strip().setting().isEmpty() ? -1 : settingOfWidth.getOrDefault(strip.width(), -1);
    }

    /** The sections of the board in that place, by where they start; none when it is not cut. */
    public List<SectionCut> sectionsOf(int board) {
        return sections.getOrDefault(board, List.of());
    }

    /** All sections, in the order of the job. */
    public List<SectionCut> sections() {
        return sections.values().stream().flatMap(List::stream).toList();
    }

    public boolean cuts(int board) {
        return sections.containsKey(board);
    }

    /** How the board in that place is cut, as the plan has it. */
    public CutBoard board(int board) {
        return new CutBoard(
                job.board(board).id(),
                sectionsOf(board).stream().map(SectionCut::section).toList());
    }

    /** The id of what it is left of. */
    public String source(int board, Leftover leftover) {
        return switch (leftover.of()) {
            case BOARD -> job.board(board).id();
            case SECTION -> section(board, leftover).id();
            case STRIP ->
                section(board, leftover).strips().get(leftover.strip()).id();
        };
    }

    /** The place of the setting whose rips free it; -1 when it is there before the first. */
    public int freedBy(int board, Leftover leftover) {
        if (leftover.of() == Leftover.Of.BOARD) return -1;
        List<StripCut> strips = section(board, leftover).strips();
        return settingOf(strips.get(leftover.of() == Leftover.Of.SECTION ? strips.size() - 1 : leftover.strip()));
    }

    private SectionCut section(int board, Leftover leftover) {
        return sectionsOf(board).get(leftover.section());
    }

    private void nameSettings(List<Layout> layouts) {
        SortedMap<Long, NavigableSet<Long>> thicknesses = new TreeMap<>(Comparator.reverseOrder());
        Map<Long, Integer> strips = new HashMap<>();
        Set<Long> some = new HashSet<>(); // widths with a blank
        Set<Long> tested = new HashSet<>(); // and with one whose width must be proved
        for (Layout layout : layouts) {
            Board board = job.board(layout.board());
            if (board.ripped()) continue;
            for (Layout.Section section : layout.sections())
                for (Layout.Strip strip : section.strips()) {
                    thicknesses
                            .computeIfAbsent(strip.width(), width -> new TreeSet<>())
                            .add(board.millsTo().nanometers());
                    strips.merge(strip.width(), 1, Integer::sum);
                    for (Layout.Blank blank : strip.blanks()) {
                        some.add(strip.width());
                        if (job.parts().get(blank.part()).tested()) tested.add(strip.width());
                    }
                }
        }
        thicknesses.forEach((width, those) -> {
            settingOfWidth.put(width, settings.size());
            boolean proved = tested.contains(width) || !some.contains(width);
            settings.add(new RipSetting(
                    ids.next(PlanIds.Kind.SETTING), width, those, strips.getOrDefault(width, 0), proved));
        });
    }

    private List<SectionCut> sections(Layout layout) {
        Board board = job.board(layout.board());
        List<SectionCut> cuts = new ArrayList<>();
        for (Layout.Section section : layout.sections()) {
            String id = ids.section(board);
            List<StripCut> strips = strips(board, section);
            Section named = new Section(
                    id,
                    new Length(section.from()),
                    new Length(section.to()),
                    section.referenceEdge(),
                    new Length(section.edgeLoss()),
                    strips.stream().map(StripCut::strip).toList());
            cuts.add(new SectionCut(board, named, strips, SawWork.straightened(board, section)));
        }
        return cuts;
    }

    private List<StripCut> strips(Board board, Layout.Section section) {
        List<StripCut> strips = new ArrayList<>();
        long offset = 0;
        for (Layout.Strip strip : section.strips()) {
            Optional<String> setting = board.ripped() ? Optional.empty() : Optional.of(settingId(strip.width()));
            String id = ids.next(PlanIds.Kind.STRIP);
            Strip named = new Strip(id, new Length(offset), new Length(strip.width()), setting, blanks(strip));
            List<Part> parts = strip.blanks().stream()
                    .map(blank -> job.parts().get(blank.part()))
                    .toList();
            boolean last = strips.size() == section.strips().size() - 1;
            strips.add(new StripCut(named, parts, strip.width(), last));
            offset += strip.width() + job.saw().ripKerf().nanometers();
        }
        return strips;
    }

    private String settingId(long width) {
        return settings.get(settingOfWidth.getOrDefault(width, -1)).id();
    }

    private List<Blank> blanks(Layout.Strip strip) {
        List<Blank> blanks = new ArrayList<>();
        for (Layout.Blank blank : strip.blanks()) {
            Part part = job.parts().get(blank.part());
            blanks.add(
                    new Blank(ids.next(PlanIds.Kind.BLANK), part.name(), new Length(blank.from()), part.blankLength()));
        }
        return blanks;
    }
}
