package ripwright.resume;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ripwright.resume.HeldPiece.Kind;

/**
 * What pieces in hand are called: as the plan calls them; where several are left of one strip, or a leftover has no id, with
 * a number behind, from the marked end on. No two alike, and none with a {@code #}.
 */
final class HandIds {
    private static final int LONGEST_STEM = 290; // of the 300 characters an id may have

    private final Map<HeldPiece, String> ids = new HashMap<>();
    private final Map<String, HeldPiece> pieces = new HashMap<>();

    HandIds(List<HeldPiece> held) {
        Map<String, Integer> of = new HashMap<>(); // name -> how many pieces have it
        for (HeldPiece piece : held) of.merge(piece.name(), 1, Integer::sum);
        Map<String, Integer> last = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (HeldPiece piece : held) if (bearsItsName(piece, of)) name(piece, plain(piece.name()), taken);
        for (HeldPiece piece : held) {
            if (bearsItsName(piece, of)) continue;
            int n = last.merge(piece.name(), 1, Integer::sum);
            name(piece, plain(piece.name()) + "." + n, taken);
        }
    }

    private static boolean bearsItsName(HeldPiece piece, Map<String, Integer> of) {
        boolean endOfBoard = piece.kind() == Kind.REST
                && piece.wood().right().isEmpty()
                && piece.wood().left() == 0;
        return of.getOrDefault(piece.name(), 0) == 1 && !endOfBoard;
    }

    private void name(HeldPiece piece, String wanted, Set<String> taken) {
        String id = wanted;
        for (int n = 2; !taken.add(id); n++) id = wanted + "." + n;
        ids.put(piece, id);
        pieces.put(id, piece);
    }

    /** That name, short enough for an id with something behind it. */
    static String plain(String name) {
        String id = name.replace('#', '.');
        if (id.codePointCount(0, id.length()) <= LONGEST_STEM) return id;
        return id.substring(0, id.offsetByCodePoints(0, LONGEST_STEM));
    }

    String of(HeldPiece piece) {
        return java.util.Objects.requireNonNull(ids.get(piece));
    }

    java.util.Optional<HeldPiece> piece(String id) {
        return java.util.Optional.ofNullable(pieces.get(id));
    }
}
