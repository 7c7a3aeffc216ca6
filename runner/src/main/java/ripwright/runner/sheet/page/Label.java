package ripwright.runner.sheet.page;

import java.util.List;

/**
 * A label to stick on a blank.
 *
 * @param id the blank's
 * @param part what it becomes
 * @param size finished
 * @param remarks where it comes from, and what is still to be done to it
 */
public record Label(String id, String part, String size, List<String> remarks) {
    /** Keeps a copy of the list. */
    public Label {
        remarks = List.copyOf(remarks);
    }
}
