package ripwright.runner.sheet.place;

import java.util.List;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Board;

/**
 * One consumed board with all that is cut from it, every piece and every cut in its place.
 *
 * @param board the board
 * @param sections its sections, by where they start
 * @param strips its strips, section by section, in the order they come off
 * @param pieces every patch of it and what becomes of it; sections and strips are made of these
 * @param cuts every cut
 * @param unplaced ids of listed pieces for which no place was found; none in a plan that was replayed
 */
public record BoardMap(
        Board board,
        List<PlacedSection> sections,
        List<PlacedStrip> strips,
        List<Piece> pieces,
        List<SawCut> cuts,
        List<String> unplaced) {
    /** Keeps copies of the lists. */
    public BoardMap {
        sections = List.copyOf(sections);
        strips = List.copyOf(strips);
        pieces = List.copyOf(pieces);
        cuts = List.copyOf(cuts);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * A section in its place.
     *
     * @param section the section
     * @param region the whole of it, edges as they were
     * @param reference y of its reference edge once straightened, in nanometers
     */
    public record PlacedSection(Section section, Region region, long reference) {}

    /**
     * A strip in its place.
     *
     * @param strip the strip
     * @param section the id of its section
     * @param region the whole of it
     */
    public record PlacedStrip(Strip strip, String section, Region region) {}
}
