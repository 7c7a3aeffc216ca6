package ripwright.settle;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ripwright.stock.Board;

/**
 * Gives offcuts that enter the rack ids that none ever had and marks that none has now: those of the plan where they are
 * free, for these are on the sheet and in chalk already.
 */
final class Labels {
    /** Longer marks are not chalked on wood. */
    private static final int LONGEST_MARK = 16;

    /** Leaves room under the 300 characters an id may have. */
    private static final int LONGEST_STEM = 280;

    private final Set<String> ids; // taken, or kept for an offcut of the plan
    private final Set<String> marks = new HashSet<>(); // keys of the same
    private final Set<String> freeIds = new HashSet<>(); // of the plan, not yet given
    private final Set<String> freeMarks = new HashSet<>(); // keys of the same

    /** Beside what stays on the rack, for those offcuts of the plan; {@code used} ids were somebody's once. */
    Labels(List<Board> staying, Set<String> used, List<Board> planned) {
        ids = new HashSet<>(used);
        for (Board offcut : staying) {
            ids.add(offcut.id());
            marks.add(Settlement.markKey(offcut));
        }
        for (Board offcut : planned) {
            if (!ids.contains(offcut.id()) && offcut.id().indexOf('#') < 0) freeIds.add(offcut.id());
            String mark = Settlement.markKey(offcut);
            if (!marks.contains(mark)) freeMarks.add(mark);
        }
        ids.addAll(freeIds);
        marks.addAll(freeMarks);
    }

    /** The piece's own, or that with a number. */
    String id(Board piece) {
        if (freeIds.remove(piece.id())) return piece.id();
        String stem = stem(piece.id().replace('#', '.'));
        int n = 2;
        while (!ids.add(stem + "-" + n)) n++;
        return stem + "-" + n;
    }

    /** The piece's own; else the id it has been given, where that is short; else a number. */
    String mark(Board piece, String id) {
        if (freeMarks.remove(Settlement.markKey(piece))) return Settlement.mark(piece);
        boolean isShort = id.codePointCount(0, id.length()) <= LONGEST_MARK;
        if (isShort && marks.add(Settlement.markKey(id))) return id;
        int n = 1;
        while (!marks.add(Settlement.markKey("K" + n))) n++;
        return "K" + n;
    }

    private static String stem(String id) {
        return id.codePointCount(0, id.length()) <= LONGEST_STEM
                ? id
                : id.substring(0, id.offsetByCodePoints(0, LONGEST_STEM));
    }
}
