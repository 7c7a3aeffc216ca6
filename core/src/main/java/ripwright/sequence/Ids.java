package ripwright.sequence;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import ripwright.job.Job;
import ripwright.stock.Board;

/**
 * Hands out the ids of a plan: no two alike, none a board's, and none with a {@code #}, so that an offcut may enter the
 * rack under its own.
 */
final class Ids {
    /** Leaves room under the 300 characters an id may have. */
    private static final int LONGEST_STEM = 280;

    private final Set<String> taken = new HashSet<>();
    private final Map<String, Integer> last = new HashMap<>();

    Ids(Job job) {
        for (Board board : job.boards()) taken.add(board.id());
    }

    /** The next free one that starts with {@code prefix} and goes on with a number, from 1. */
    String numbered(String prefix) {
        String id;
        do {
            id = prefix + last.merge(prefix, 1, Integer::sum);
        } while (!taken.add(id));
        return id;
    }

    /** The next section of a board: {@code board/1} and so on. */
    String section(Board board) {
        return numbered(stem(board) + "/");
    }

    /** The next offcut of a board: {@code board/A} and so on. */
    String offcut(Board board) {
        String stem = stem(board) + "/";
        String id;
        do {
            id = stem + letters(last.merge(stem + "A", 1, Integer::sum));
        } while (!taken.add(id));
        return id;
    }

    private static String stem(Board board) {
        String id = board.id().replace('#', '.');
        if (id.codePointCount(0, id.length()) <= LONGEST_STEM) return id;
        return id.substring(0, id.offsetByCodePoints(0, LONGEST_STEM));
    }

    /** A to Z, then AA and so on: 1 is A. */
    private static String letters(int number) {
        StringBuilder letters = new StringBuilder();
        for (int rest = number; rest > 0; rest = (rest - 1) / 26) letters.insert(0, (char) ('A' + (rest - 1) % 26));
        return letters.toString();
    }
}
