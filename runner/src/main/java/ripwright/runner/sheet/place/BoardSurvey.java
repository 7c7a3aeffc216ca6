package ripwright.runner.sheet.place;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import ripwright.measure.Length;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.runner.sheet.place.BoardMap.PlacedSection;
import ripwright.runner.sheet.place.BoardMap.PlacedStrip;
import ripwright.runner.sheet.place.Piece.Fate;
import ripwright.runner.sheet.place.SawCut.Way;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.EndTrim;

/** Puts every piece and every cut of one board in its place, by chapter 3 of the contract. Asked once. */
final class BoardSurvey {
    private final Board board;
    private final CutBoard cut;
    private final PlanIndex index;
    private final long ripKerf;
    private final long crosscutKerf;
    private final List<PlacedSection> sections = new ArrayList<>();
    private final List<PlacedStrip> strips = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<SawCut> cuts = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();

    BoardSurvey(Board board, CutBoard cut, Saw saw, PlanIndex index) {
        this.board = board;
        this.cut = cut;
        this.index = index;
        this.ripKerf = saw.ripKerf().nanometers();
        this.crosscutKerf = saw.crosscutKerf().nanometers();
    }

    BoardMap map() {
        List<Span> wanted = cut.sections().stream()
                .map(section -> new Span(
                        Fate.BLANK,
                        section.id(),
                        section.from().nanometers(),
                        section.to().nanometers()))
                .toList();
        crosscut(board.id(), face(0, board.length().nanometers()), wanted, Way.ACROSS_BOARD);
        pieces.removeIf(piece -> piece.fate() == Fate.BLANK); // the sections, cut further below
        cut.sections().forEach(this::section);
        return new BoardMap(board, sections, strips, pieces, cuts, unplaced);
    }

    private Region face(long from, long to) {
        return new Region(from, to, 0, widthAt(from), widthAt(to));
    }

    private long widthAt(long x) {
        return board.widthAt(new Length(x)).nanometers();
    }

    /** Parts a region crosswise into the wanted pieces, what is listed of its leftovers, waste and kerfs. */
    private void crosscut(String id, Region region, List<Span> wanted, Way way) {
        Crosscuts crosscuts = new Crosscuts(id, region.from(), region.to(), wanted, crosscutKerf);
        Leftovers leftovers =
                leftovers(crosscuts, id, (offcut, span) -> looksLike(offcut, region.between(span.from(), span.to())));
        if (!leftovers.missing().isEmpty()) leftovers = leftovers(crosscuts, id, (offcut, span) -> true);
        unplaced.addAll(leftovers.missing());
        List<Span> parts = crosscuts.parts(leftovers.found());
        for (Span part : parts) pieces.add(new Piece(part.fate(), part.id(), region.between(part.from(), part.to())));
        for (Span kerf : crosscuts.kerfs(parts))
            cuts.add(new SawCut(way, firstMaking(parts, kerf), region.between(kerf.from(), kerf.to())));
    }

    private Leftovers leftovers(Crosscuts crosscuts, String id, BiPredicate<Offcut, Span> fits) {
        return new Leftovers(
                crosscuts.gaps(), index.testBlanksFrom(id), index.offcutsFrom(id), crosscutKerf, clear(), fits);
    }

    /** The first step that makes a piece beside that kerf: a cut two pieces share is made with the first. */
    private OptionalInt firstMaking(List<Span> parts, Span kerf) {
        return parts.stream()
                .filter(part -> part.fate() != Fate.WASTE)
                .filter(part -> part.to() == kerf.from() || part.from() == kerf.to())
                .map(Span::id)
                .map(index::making)
                .flatMapToInt(OptionalInt::stream)
                .min();
    }

    private Leftovers.Clear clear() {
        List<Long> others = board.defects().stream()
                .flatMap(defect -> Stream.of(defect.from(), defect.to()))
                .map(Length::nanometers)
                .toList();
        return new Leftovers.Clear(
                board.endTrim().near().nanometers(),
                board.length().nanometers() - board.endTrim().far().nanometers(),
                others);
    }

    /** Whether an offcut has the raw ends and as many defects as the wood there; it may have been turned end for end. */
    private boolean looksLike(Offcut offcut, Region region) {
        Length near = region.from() == 0 ? board.endTrim().near() : Length.ZERO;
        Length far =
                region.to() == board.length().nanometers() ? board.endTrim().far() : Length.ZERO;
        EndTrim raw = offcut.piece().endTrim();
        return (raw.equals(new EndTrim(near, far)) || raw.equals(new EndTrim(far, near)))
                && offcut.piece().defects().size() == defectsIn(region);
    }

    private long defectsIn(Region region) {
        return board.defects().stream().filter(defect -> lies(defect, region)).count();
    }

    private static boolean lies(Defect defect, Region region) {
        return defect.from().nanometers() < region.to()
                && defect.to().nanometers() > region.from()
                && defect.left().nanometers() < Math.max(region.right(), region.rightAtEnd())
                && defect.right().nanometers() > region.left();
    }

    private void section(Section section) {
        long from = section.from().nanometers();
        long to = section.to().nanometers();
        Region whole = face(from, to);
        long loss = section.edgeLoss().nanometers();
        Across across = new Across(section.referenceEdge(), whole);
        sections.add(new PlacedSection(section, whole, across.y(loss)));
        if (loss > 0) {
            long kerf = Math.min(ripKerf, loss);
            waste(section, across.band(0, loss - kerf));
            cuts.add(new SawCut(Way.STRAIGHTEN, index.straightening(section.id()), across.band(loss - kerf, loss)));
        }
        long done = loss; // how far from the reference edge, as it was, the wood is spoken for
        for (Strip strip : section.strips()) {
            long start = loss + strip.offset().nanometers();
            if (start > done) rip(across.band(done, start), strip, section);
            done = start + strip.width().nanometers();
            strip(strip, section, across.band(start, done));
        }
        if (!board.ripped()) beside(section, across, done);
        if (section.referenceEdge() == Edge.RIGHT)
            waste(section, new Region(from, to, across.width(), whole.right(), whole.rightAtEnd()));
    }

    /** The kerf before a strip belongs to the rip that made the one before it. */
    private void rip(Region kerf, Strip strip, Section section) {
        int i = section.strips().indexOf(strip);
        OptionalInt step = i == 0
                ? OptionalInt.empty()
                : index.making(section.strips().get(i - 1).id());
        cuts.add(new SawCut(Way.RIP, step, kerf));
    }

    private void strip(Strip strip, Section section, Region region) {
        strips.add(new PlacedStrip(strip, section.id(), region));
        List<Span> wanted = strip.blanks().stream()
                .map(blank -> new Span(
                        Fate.BLANK,
                        blank.id(),
                        blank.from().nanometers(),
                        blank.from().plus(blank.length()).nanometers()))
                .toList();
        crosscut(strip.id(), region, wanted, Way.ACROSS_STRIP);
    }

    /** The last kerf and the wood beside it, out to the far edge. */
    private void beside(Section section, Across across, long done) {
        long left = across.width() - done;
        long kerf = Math.min(ripKerf, left);
        OptionalInt step = section.strips().isEmpty()
                ? OptionalInt.empty()
                : index.making(section.strips().get(section.strips().size() - 1).id());
        if (kerf > 0) cuts.add(new SawCut(Way.RIP, step, across.band(done, done + kerf)));
        boolean listed = !index.testBlanksFrom(section.id()).isEmpty()
                || !index.offcutsFrom(section.id()).isEmpty();
        if (left > kerf) crosscut(section.id(), across.rest(done + kerf), List.of(), Way.ACROSS_STRIP);
        else if (listed) unplaced.addAll(listedOf(section.id()));
        if (left <= kerf) waste(section, across.rest(Math.min(done + kerf, across.width())));
    }

    private List<String> listedOf(String piece) {
        return Stream.concat(
                        index.testBlanksFrom(piece).stream().map(test -> test.id()),
                        index.offcutsFrom(piece).stream().map(offcut -> offcut.id()))
                .toList();
    }

    private void waste(Section section, Region region) {
        boolean none = region.length() == 0 || Math.max(region.right(), region.rightAtEnd()) <= region.left();
        if (!none) pieces.add(new Piece(Fate.WASTE, section.id(), region));
    }

    /** Measures across a section from its reference edge. */
    private record Across(Edge reference, Region whole) {
        /** The section's width: that of its narrow end. */
        long width() {
            return whole.width();
        }

        long y(long fromReference) {
            return reference == Edge.LEFT ? fromReference : width() - fromReference;
        }

        Region band(long start, long end) {
            long a = Math.max(0, y(start));
            long b = Math.max(0, y(end));
            return Region.of(whole.from(), whole.to(), Math.min(a, b), Math.max(a, b));
        }

        /** All from there to the far edge, as rough and sloped as it is. */
        Region rest(long start) {
            if (reference == Edge.RIGHT) return band(start, width());
            return new Region(whole.from(), whole.to(), start, whole.right(), whole.rightAtEnd());
        }
    }
}
