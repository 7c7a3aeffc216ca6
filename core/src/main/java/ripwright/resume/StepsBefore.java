package ripwright.resume;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.internal.meant.PlannedPieces;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;

/** What a step, or a piece it makes, has behind it: the steps without which there is none. */
final class StepsBefore {
    private static final Set<Does> PREPARING = EnumSet.of(Does.MILL, Does.STRAIGHTEN, Does.RIP, Does.SQUARE);
    private static final Set<Does> AFTER_PREPARING = EnumSet.of(Does.STRAIGHTEN, Does.RIP, Does.TEST, Does.TRIM);
    private static final Set<Does> SQUARING = EnumSet.of(Does.SQUARE);
    private static final Set<Does> EDGES = EnumSet.of(Does.MILL, Does.STRAIGHTEN);

    private final PlannedPieces pieces;
    private final Map<String, Step> makers = new HashMap<>();
    private final Map<String, List<Step>> preparing =
            new HashMap<>(); // piece -> its mill, straighten, rip, square steps

    StepsBefore(PlannedPieces pieces) {
        this.pieces = pieces;
        for (Step step : pieces.plan().steps()) {
            for (String made : step.makes()) makers.putIfAbsent(made, step);
            if (PREPARING.contains(step.does()))
                preparing
                        .computeIfAbsent(step.piece(), key -> new ArrayList<>())
                        .add(step);
        }
    }

    /**
     * A step that must have been, or at least have made a certain piece.
     *
     * @param step the step
     * @param piece the piece; empty when the whole step must have been
     */
    record Need(Step step, Optional<String> piece) {}

    /** The step that makes that piece, if one does. */
    Optional<Step> maker(String piece) {
        return Optional.ofNullable(makers.get(piece));
    }

    /** What must have been before that step can be done. */
    Set<Need> of(Step step) {
        Set<Need> needed = from(step);
        if (AFTER_PREPARING.contains(step.does())) earlier(step, step.piece(), PREPARING, needed);
        if (step.does() == Does.BLANK) earlier(step, step.piece(), SQUARING, needed);
        if (step.does() == Does.TEST) step.setting().ifPresent(setting -> allThatProve(setting, step, needed));
        return needed;
    }

    /** What must have been before that step can make that piece. */
    Set<Need> of(Step step, String piece) {
        if (step.does() != Does.RIP) return of(step);
        Set<Need> needed = from(step);
        earlier(step, step.piece(), EDGES, needed);
        for (Strip strip : pieces.section(step.piece()).map(Section::strips).orElse(List.of())) {
            if (strip.id().equals(piece)) break;
            made(strip.id(), needed);
        }
        return needed;
    }

    private Set<Need> from(Step step) {
        Set<Need> needed = new LinkedHashSet<>();
        made(step.piece(), needed);
        pieces.sectionOf(step.piece()).ifPresent(section -> earlier(step, section.id(), EnumSet.of(Does.MILL), needed));
        return needed;
    }

    private void made(String piece, Set<Need> needed) {
        maker(piece).ifPresent(maker -> needed.add(new Need(maker, Optional.of(piece))));
    }

    /** A test counts for all test blanks that prove its setting, so all are there, not only the one it names. */
    private void allThatProve(String setting, Step step, Set<Need> needed) {
        for (TestBlank blank : pieces.plan().testBlanks()) {
            if (!blank.proves().contains(setting)) continue;
            maker(blank.id())
                    .filter(maker -> maker.n() < step.n())
                    .ifPresent(maker -> needed.add(new Need(maker, Optional.of(blank.id()))));
            earlier(step, blank.id(), PREPARING, needed);
        }
    }

    /** Rips are needed for the strips they make alone. */
    private void earlier(Step step, String piece, Set<Does> kinds, Set<Need> needed) {
        for (Step before : preparing.getOrDefault(piece, List.of())) {
            if (before.n() >= step.n()) return;
            if (!kinds.contains(before.does())) continue;
            if (before.does() != Does.RIP) needed.add(new Need(before, Optional.empty()));
            else
                for (String strip : before.makes())
                    if (pieces.strip(strip).isPresent()) needed.add(new Need(before, Optional.of(strip)));
        }
    }
}
