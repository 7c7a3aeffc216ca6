package ripwright.internal.pieces;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import ripwright.job.Job;
import ripwright.stock.Board;

/**
 * Hands out the ids of a plan: no two alike, none a board's, and none with a {@code #}, so that an offcut may enter the
 * rack under its own. Where boards are called like S7 themselves, strips are called ST7 instead, and so on.
 */
public final class PlanIds {
    /** What is numbered through the whole plan. */
    public enum Kind {
        SETTING("F", "FENCE"),
        STRIP("S", "ST"),
        BLANK("B", "BL"),
        TEST_BLANK("T", "TB"),
        MARK("K", "MK");

        private final String letter;
        private final String otherwise;

        Kind(String letter, String otherwise) {
            this.letter = letter;
            this.otherwise = otherwise;
        }

        private String prefix(Job job) {
            return job.boards().stream().anyMatch(board -> isNumbered(board.id())) ? otherwise : letter;
        }

        private boolean isNumbered(String id) {
            return id.length() > letter.length()
                    && id.regionMatches(true, 0, letter, 0, letter.length())
                    && id.chars().skip(letter.length()).allMatch(digit -> digit >= '0' && digit <= '9');
        }
    }

    /** Leaves room under the 300 characters an id may have. */
    private static final int LONGEST_STEM = 280;

    private final Set<String> taken = new HashSet<>();
    private final Map<String, Integer> last = new HashMap<>();
    private final Map<Kind, String> prefixes = new EnumMap<>(Kind.class);

    public PlanIds(Job job) {
        for (Board board : job.boards()) taken.add(board.id());
        for (Kind kind : Kind.values()) prefixes.put(kind, kind.prefix(job));
    }

    /** The next of that kind. */
    public String next(Kind kind) {
        return numbered(prefixes.getOrDefault(kind, kind.letter));
    }

    private String numbered(String prefix) {
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
    public String offcut(Board board) {
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
