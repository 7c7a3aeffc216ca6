package ripwright.runner.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.measure.Unit;
import ripwright.plan.CutBoard;
import ripwright.resume.HeldPiece;
import ripwright.resume.Resumed;
import ripwright.resume.SizeNow;
import ripwright.stock.Board;

/** What is in hand when a job is resumed, in the words of the shop: a strip is a strip, whatever list it is written in. */
final class InHand {
    private static final int MOST_NAMED = 8;

    private final Resumed rest;

    InHand(Resumed rest) {
        this.rest = rest;
    }

    /** Lines by their names: what was cut from boards and can still be used, and what of it goes to the rack unused. */
    Map<String, String> lines() {
        Map<HeldPiece.Kind, List<String>> sorts = new EnumMap<>(HeldPiece.Kind.class);
        for (Board board : rest.job().boards()) {
            SizeNow piece = rest.pieces().get(board.id());
            if (piece == null || piece.planned().kind() == HeldPiece.Kind.BOARD) continue;
            sorts.computeIfAbsent(piece.planned().kind(), key -> new ArrayList<>())
                    .add(board.id() + " (" + size(board) + ")");
        }
        Map<String, String> lines = new LinkedHashMap<>();
        if (!sorts.isEmpty())
            lines.put(
                    "in hand",
                    sorts.entrySet().stream()
                            .map(sort ->
                                    some(words(sort.getKey(), sort.getValue().size()), sort.getValue()))
                            .collect(Collectors.joining("\n" + " ".repeat(RestSummary.MARGIN))));
        List<String> kept = kept();
        if (!kept.isEmpty()) lines.put("to the rack", some("unused", kept) + ", once the job is settled");
        return lines;
    }

    private List<String> kept() {
        Set<String> cut = rest.plan().boards().stream().map(CutBoard::board).collect(Collectors.toSet());
        List<String> kept = new ArrayList<>();
        for (Board board : rest.job().rack()) {
            SizeNow piece = rest.pieces().get(board.id());
            boolean ofThisJob = piece != null && piece.planned().kind() != HeldPiece.Kind.BOARD;
            if (ofThisJob && !board.testOnly() && !cut.contains(board.id())) kept.add(board.id());
        }
        return kept;
    }

    private static String words(HeldPiece.Kind kind, int count) {
        String more = count == 1 ? "" : "s";
        return switch (kind) {
            case BOARD -> "board" + more;
            case SECTION -> "section" + more;
            case STRIP -> "strip" + more;
            case BLANK -> "blank" + more + " not as planned";
            case TEST_BLANK -> "test blank" + more;
            case OFFCUT -> "offcut" + more;
            case REST -> "piece" + more + " left over";
        };
    }

    private static String some(String word, List<String> names) {
        int more = names.size() - MOST_NAMED;
        String named = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
        return word + " " + named + (more > 0 ? " and " + more + " more" : "");
    }

    private String size(Board board) {
        Unit units = rest.job().units();
        return units.nearest(board.width()) + " x " + units.nearest(board.length()) + " " + units.symbol();
    }
}
