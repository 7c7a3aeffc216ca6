package ripwright.resume;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.internal.meant.PlannedPieces;
import ripwright.replay.Fault;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Board;

/** Holds the ids of a resumed plan against those that the chain has used: a label printed once stays true. */
final class IdsCheck {
    private static final String RULE = "resume.ids";

    private final Resume resume;
    private final Resumed resumed;
    private final ChainIds before;
    private final List<Fault> faults;

    IdsCheck(Resume resume, Resumed resumed, ChainIds before, List<Fault> faults) {
        this.resume = resume;
        this.resumed = resumed;
        this.before = before;
        this.faults = faults;
    }

    void check() {
        piecesInHandKeepTheirs();
        piecesToBeMadeHaveWhatTheyHad();
    }

    /** One piece in hand, not a mere leftover of it, is called as it was; leftovers as nothing was. */
    private void piecesInHandKeepTheirs() {
        Set<String> due = new HashSet<>();
        Set<String> kept = new HashSet<>();
        for (SizeNow piece : resume.pieces()) {
            String name = HandIds.plain(piece.planned().name());
            if (piece.planned().kind() != Kind.REST) due.add(name);
            if (piece.id().equals(name)) kept.add(name);
            else if (before.used(piece.id())) fault(piece.id(), "it is another piece than the one that is called so.");
        }
        due.removeAll(kept);
        for (String name : due) fault(name, "it is in hand, and called otherwise.");
    }

    private void piecesToBeMadeHaveWhatTheyHad() {
        Map<String, SizeNow> pieces = new HashMap<>();
        for (SizeNow piece : resume.pieces()) pieces.put(piece.id(), piece);
        ChainIds now = before.now(pieces);
        Set<String> inHand = new HashSet<>();
        for (Board board : resumed.job().boards()) inHand.add(board.id());
        Map<String, ChainIds.Place> places = now.places(resumed.job(), resumed.plan());
        for (String id : new PlannedPieces(resumed.job(), resumed.plan()).ids()) {
            Optional<String> had =
                    Optional.ofNullable(places.get(id)).flatMap(now::earlier).filter(name -> !inHand.contains(name));
            if (had.isPresent() && !had.get().equals(id)) fault(id, "it was to be called " + had.get() + " before.");
            if (had.isEmpty() && now.used(id)) fault(id, "an earlier plan calls another piece so.");
        }
    }

    private void fault(String piece, String what) {
        faults.add(new Fault(piece, what, RULE));
    }
}
