package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.resume.HeldPiece.Kind;

/**
 * What pieces in hand are called: as the plan calls them; the others where several are left of one strip, and a leftover
 * without an id, with a number behind, from the marked end on. No two alike, none as another of the chain, none with a {@code #}.
 */
final class HandIds {
    private static final int LONGEST_STEM = 290; // of the 300 characters an id may have

    private final ChainIds used;
    private final Map<String, Optional<HeldPiece>> named = new HashMap<>(); // the piece that is called so
    private final Map<HeldPiece, String> ids = new HashMap<>();
    private final Map<String, HeldPiece> pieces = new HashMap<>();

    HandIds(List<HeldPiece> held, ChainIds used) {
        this.used = used;
        Map<String, List<HeldPiece>> alike = new HashMap<>();
        for (HeldPiece piece : held)
            alike.computeIfAbsent(piece.name(), key -> new ArrayList<>()).add(piece);
        alike.forEach((name, left) -> named.put(name, bearer(left)));
        Map<String, Integer> last = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (HeldPiece piece : held) if (bearsItsName(piece)) name(piece, plain(piece.name()), taken);
        for (HeldPiece piece : held) {
            if (bearsItsName(piece)) continue;
            String id;
            do {
                int n = last.merge(piece.name(), 1, Integer::sum);
                id = plain(piece.name()) + "." + n;
            } while (used.used(id));
            name(piece, id, taken);
        }
    }

    /** Of several pieces that are left of one the first that more is to be cut from; else a leftover, if it is the only one. */
    private static Optional<HeldPiece> bearer(List<HeldPiece> left) {
        Optional<HeldPiece> itself =
                left.stream().filter(piece -> piece.kind() != Kind.REST).findFirst();
        return itself.or(() -> left.size() == 1 ? Optional.of(left.get(0)) : Optional.empty());
    }

    private boolean bearsItsName(HeldPiece piece) {
        boolean endOfBoard = piece.kind() == Kind.REST
                && piece.wood().right().isEmpty()
                && piece.wood().left() == 0;
        return !endOfBoard
                && named.getOrDefault(piece.name(), Optional.empty())
                        .filter(piece::equals)
                        .isPresent();
    }

    private void name(HeldPiece piece, String wanted, Set<String> taken) {
        String id = wanted;
        for (int n = 2; (!id.equals(wanted) && used.used(id)) || !taken.add(id); n++) id = wanted + "." + n;
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

    Optional<HeldPiece> piece(String id) {
        return Optional.ofNullable(pieces.get(id));
    }
}
