package ripwright.runner.sheet.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Piece;
import ripwright.runner.sheet.place.Region;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** Every piece of a plan by its id, with what it is cut from. */
final class Pieces {
    private final Map<String, Board> boards = new HashMap<>();
    private final Map<String, SectionOf> sections = new HashMap<>();
    private final Map<String, StripOf> strips = new HashMap<>();
    private final Map<String, BlankOf> blanks = new HashMap<>();
    private final Map<String, Offcut> offcuts = new HashMap<>();
    private final Map<String, TestBlank> testBlanks = new HashMap<>();
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, Region> places = new HashMap<>();
    private final Map<String, Region> across = new HashMap<>(); // strip -> where it lies

    /**
     * A section and its board's id.
     *
     * @param section the section
     * @param board the id
     */
    record SectionOf(Section section, String board) {}

    /**
     * A strip and its section.
     *
     * @param strip the strip
     * @param section the section
     */
    record StripOf(Strip strip, SectionOf section) {}

    /**
     * A blank and its strip.
     *
     * @param blank the blank
     * @param strip the strip
     */
    record BlankOf(Blank blank, StripOf strip) {}

    Pieces(Job job, Plan plan, List<BoardMap> maps) {
        job.boards().forEach(board -> boards.put(board.id(), board));
        job.parts().forEach(part -> parts.put(part.name(), part));
        plan.offcuts().forEach(offcut -> offcuts.put(offcut.id(), offcut));
        plan.testBlanks().forEach(test -> testBlanks.put(test.id(), test));
        plan.boards().forEach(this::add);
        for (BoardMap map : maps) {
            map.strips().forEach(placed -> across.put(placed.strip().id(), placed.region()));
            map.pieces().stream()
                    .filter(piece -> piece.fate() != Piece.Fate.WASTE)
                    .forEach(piece -> places.put(piece.id(), piece.region()));
        }
    }

    private void add(CutBoard board) {
        for (Section section : board.sections()) {
            SectionOf sectionOf = new SectionOf(section, board.board());
            sections.put(section.id(), sectionOf);
            for (Strip strip : section.strips()) {
                StripOf stripOf = new StripOf(strip, sectionOf);
                strips.put(strip.id(), stripOf);
                strip.blanks().forEach(blank -> blanks.put(blank.id(), new BlankOf(blank, stripOf)));
            }
        }
    }

    Optional<Board> board(String id) {
        return Optional.ofNullable(boards.get(id));
    }

    Optional<SectionOf> section(String id) {
        return Optional.ofNullable(sections.get(id));
    }

    Optional<StripOf> strip(String id) {
        return Optional.ofNullable(strips.get(id));
    }

    Optional<BlankOf> blank(String id) {
        return Optional.ofNullable(blanks.get(id));
    }

    Optional<Offcut> offcut(String id) {
        return Optional.ofNullable(offcuts.get(id));
    }

    Optional<TestBlank> testBlank(String id) {
        return Optional.ofNullable(testBlanks.get(id));
    }

    Optional<Part> part(String name) {
        return Optional.ofNullable(parts.get(name));
    }

    /** Where a blank, an offcut or a test blank lies on its board. */
    Optional<Region> place(String id) {
        return Optional.ofNullable(places.get(id));
    }

    /** An offcut or a test blank in words: how long it is, and what becomes of it. */
    String leftover(String id, Tape tape) {
        return offcut(id)
                .map(offcut -> tape.read(offcut.piece().length()) + " long, for the rack")
                .or(() -> testBlank(id).map(test -> tape.read(test.length()) + " long, test blank"))
                .orElse("");
    }

    /** Whether the reference edge of that section is straight before it is touched. */
    boolean straightAlready(String section) {
        return section(section)
                .flatMap(placed -> board(placed.board())
                        .map(board -> board.straightEdges() == 2
                                || (board.straightEdges() == 1
                                        && placed.section().referenceEdge() == Edge.LEFT)))
                .orElse(false);
    }

    /** Where a strip lies on its board. */
    Optional<Region> across(StripOf strip) {
        return Optional.ofNullable(across.get(strip.strip().id()));
    }

    /** The board a piece is cut from, or the board itself. */
    Optional<Board> boardOf(String id) {
        if (boards.containsKey(id)) return board(id);
        if (sections.containsKey(id)) return section(id).flatMap(section -> board(section.board()));
        if (strips.containsKey(id))
            return strip(id).flatMap(strip -> board(strip.section().board()));
        if (blanks.containsKey(id))
            return blank(id).flatMap(blank -> boardOf(blank.strip().strip().id()));
        return offcut(id)
                .map(Offcut::from)
                .or(() -> testBlank(id).map(TestBlank::from))
                .flatMap(this::boardOf);
    }

    String boardId(String piece) {
        return boardOf(piece).map(Board::id).orElse("");
    }
}
