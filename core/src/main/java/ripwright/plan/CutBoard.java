package ripwright.plan;

import java.util.List;

/**
 * How one consumed board is cut.
 *
 * @param board its id
 * @param sections its sections, by where they start; none when it is opened for test wood alone
 */
public record CutBoard(String board, List<Section> sections) {
    /** Keeps a copy of the list. */
    public CutBoard {
        sections = List.copyOf(sections);
    }
}
