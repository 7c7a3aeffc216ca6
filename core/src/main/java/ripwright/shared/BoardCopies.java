package ripwright.shared;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ripwright.stock.Board;

/** Boards that are listed as several of one measure: {@code lath#1}, {@code lath#2}. Nobody tells them apart. */
final class BoardCopies {
    private BoardCopies() {}

    /** The id without the number of the copy. */
    static String stem(String id) {
        int sign = id.lastIndexOf('#');
        return sign < 0 ? id : id.substring(0, sign);
    }

    /** What is left of a stack, its copies numbered anew from 1, as the entry with their count will stand for them. */
    static List<Board> renumbered(List<Board> left) {
        Map<String, Integer> counts = new HashMap<>();
        for (Board board : left) if (isCopy(board)) counts.merge(stem(board.id()), 1, Integer::sum);
        Map<String, Integer> next = new HashMap<>();
        List<Board> renumbered = new ArrayList<>();
        for (Board board : left) {
            if (!isCopy(board)) {
                renumbered.add(board);
                continue;
            }
            String stem = stem(board.id());
            boolean alone = counts.getOrDefault(stem, 0) == 1;
            String id = alone ? stem : stem + "#" + next.merge(stem, 1, Integer::sum);
            renumbered.add(board.toBuilder().id(id).build());
        }
        return renumbered;
    }

    private static boolean isCopy(Board board) {
        return board.id().indexOf('#') >= 0;
    }
}
