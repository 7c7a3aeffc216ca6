package ripwright.json.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * A plan's lists as tables for spreadsheets. Lengths are numbers of the job's unit, as in a plan's file. It never changes once
 * made; safe on any thread.
 */
public final class PlanTables {
    private final Plan plan;
    private final Map<String, Board> boards;
    private final CsvOut.Style style;
    private final String unit; // as it stands behind the head of a column

    /** Of {@code plan}, which answers {@code job}. */
    public PlanTables(Job job, Plan plan, CsvOut.Style style) {
        this.plan = plan;
        this.boards = job.boards().stream().collect(Collectors.toMap(Board::id, Function.identity()));
        this.style = style;
        this.unit = " (" + plan.units().symbol() + ")";
    }

    /** All tables, each by what its file's name ends in. */
    public Map<String, byte[]> all() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put(".cuts.csv", cuts());
        all.put(".settings.csv", settings());
        all.put(".offcuts.csv", offcuts());
        all.put(".short.csv", shortages());
        return all;
    }

    private List<String> heads(String... names) {
        List<String> heads = new ArrayList<>();
        for (String name : names) heads.add(name.replace("*", unit));
        return heads;
    }

    private BigDecimal number(Length length) {
        return plan.units().number(length);
    }

    /** A row for every blank, and for every strip that carries none, each with the section and the board it comes from. */
    private byte[] cuts() {
        List<String> heads = heads(
                "board",
                "species",
                "thickness*",
                "section",
                "section from*",
                "section to*",
                "reference edge",
                "edge loss*",
                "strip",
                "setting",
                "offset*",
                "strip width*",
                "blank",
                "part",
                "blank from*",
                "blank length*");
        return CsvOut.bytes(style, heads, out -> {
            for (CutBoard cut : plan.boards())
                for (Section section : cut.sections())
                    for (Strip strip : section.strips()) {
                        if (strip.blanks().isEmpty()) cut(out, cut, section, strip, Optional.empty());
                        for (Blank blank : strip.blanks()) cut(out, cut, section, strip, Optional.of(blank));
                    }
        });
    }

    private void cut(CsvOut out, CutBoard cut, Section section, Strip strip, Optional<Blank> blank) {
        Optional<Board> board = Optional.ofNullable(boards.get(cut.board()));
        out.row(
                cut.board(),
                board.map(Board::species).map(Species::name),
                board.map(Board::millsTo).map(this::number),
                section.id(),
                number(section.from()),
                number(section.to()),
                section.referenceEdge().name().toLowerCase(Locale.ROOT),
                number(section.edgeLoss()),
                strip.id(),
                strip.setting(),
                number(strip.offset()),
                number(strip.width()),
                blank.map(Blank::id),
                blank.map(Blank::part),
                blank.map(Blank::from).map(this::number),
                blank.map(Blank::length).map(this::number));
    }

    /** Rip settings, widest first, then stop settings, longest first. */
    private byte[] settings() {
        List<String> heads = heads("saw", "setting", "position*", "pieces", "proved on", "test wood from");
        return CsvOut.bytes(style, heads, out -> {
            for (Setting setting : plan.settings())
                out.row(
                        "rip",
                        setting.id(),
                        number(setting.width()),
                        strips(setting),
                        setting.test().map(Setting.Test::blank),
                        setting.test().map(test -> test.source().name().toLowerCase(Locale.ROOT)));
            stops().forEach((stop, pieces) -> out.row("crosscut", "", number(stop), pieces, "", ""));
        });
    }

    private int strips(Setting setting) {
        return plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .mapToInt(strip -> strip.setting().equals(Optional.of(setting.id())) ? 1 : 0)
                .sum();
    }

    /** How many blanks are cut at each stop. */
    private Map<Length, Integer> stops() {
        List<String> blanks = plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .map(Blank::id)
                .toList();
        Map<Length, Integer> stops = new LinkedHashMap<>();
        for (Step step : plan.steps())
            step.stop()
                    .ifPresent(stop -> stops.merge(
                            stop,
                            (int) step.makes().stream().filter(blanks::contains).count(),
                            Integer::sum));
        return stops;
    }

    /** Its columns are those of a stack, so that it is read as one. */
    private byte[] offcuts() {
        List<String> heads = heads(
                "board",
                "chalk mark",
                "from",
                "species",
                "thickness*",
                "width*",
                "width at far end*",
                "length*",
                "straight edges",
                "crook*",
                "edge loss*",
                "end trim near*",
                "end trim far*",
                "defect",
                "defect from*",
                "defect to*",
                "defect left*",
                "defect right*",
                "defect blocks");
        return CsvOut.bytes(style, heads, out -> plan.offcuts().forEach(offcut -> offcut(out, offcut)));
    }

    private void offcut(CsvOut out, Offcut offcut) {
        Board piece = offcut.piece();
        List<Object> cells = new ArrayList<>(List.of(
                piece.id(),
                piece.history().flatMap(History::mark),
                offcut.from(),
                piece.species().name(),
                number(piece.thickness()),
                number(piece.width()),
                number(piece.widthAtFarEnd()),
                number(piece.length()),
                piece.straightEdges(),
                number(piece.crook()),
                number(piece.edgeLoss()),
                number(piece.endTrim().near()),
                number(piece.endTrim().far())));
        int own = cells.size();
        for (Defect defect : piece.defects()) {
            cells.addAll(List.of(
                    defect.kind(),
                    number(defect.from()),
                    number(defect.to()),
                    number(defect.left()),
                    number(defect.right()),
                    defect.blocks().name().toLowerCase(Locale.ROOT)));
            out.row(cells.toArray());
            cells = new ArrayList<>(java.util.Collections.nCopies(own, ""));
        }
        if (piece.defects().isEmpty()) {
            cells.addAll(List.of("", "", "", "", "", ""));
            out.row(cells.toArray());
        }
    }

    private byte[] shortages() {
        List<String> heads =
                heads("part", "count", "buy (board feet)", "species", "thickness*", "shortest*", "narrowest*");
        return CsvOut.bytes(style, heads, out -> {
            for (Shortage shortage : plan.shortages()) {
                Shortage.Buy buy = shortage.buy();
                String wood = buy.species().stream().map(Species::name).collect(Collectors.joining(" or "));
                out.row(
                        shortage.part(),
                        shortage.count(),
                        buy.boardFeet(),
                        wood.isEmpty() ? "any" : wood,
                        number(buy.thickness()),
                        number(buy.shortest()),
                        number(buy.narrowest()));
            }
        });
    }
}
