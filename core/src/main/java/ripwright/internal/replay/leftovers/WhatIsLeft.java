package ripwright.internal.replay.leftovers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.ReplayIndex;
import ripwright.plan.Offcut;
import ripwright.plan.TestBlank;

/** What is left of every consumed board, its sections and its strips, test blanks and offcuts told apart. */
public final class WhatIsLeft {
    private final Map<String, Remains> remains = new LinkedHashMap<>(); // by the id of the board, section or strip

    public WhatIsLeft(ReplayIndex pieces, Findings findings) {
        Map<String, List<TestBlank>> blanks = new HashMap<>();
        for (TestBlank blank : pieces.plan().testBlanks())
            blanks.computeIfAbsent(blank.from(), from -> new ArrayList<>()).add(blank);
        Map<String, List<Offcut>> offcuts = new HashMap<>();
        for (Offcut offcut : pieces.plan().offcuts())
            offcuts.computeIfAbsent(offcut.from(), from -> new ArrayList<>()).add(offcut);

        ReplayLeftovers leftovers = new ReplayLeftovers(pieces);
        OffcutListing listing = new OffcutListing(pieces.job(), findings);
        for (PlacedBoard board : pieces.boards()) {
            Map<String, List<ReplayLeftover>> left = new LinkedHashMap<>();
            left.put(board.id(), leftovers.of(board));
            for (PlacedSection section : board.sections()) {
                left.put(section.id(), leftovers.of(section).stream().toList());
                section.strips().forEach(strip -> left.put(strip.id(), leftovers.of(strip)));
            }
            left.forEach((of, pieceLeftovers) -> remains.putIfAbsent(
                    of,
                    new RemainsSearch(
                                    of,
                                    pieceLeftovers,
                                    blanks.getOrDefault(of, List.of()),
                                    offcuts.getOrDefault(of, List.of()),
                                    board.openedForTestWood(),
                                    pieces,
                                    listing)
                            .best()));
        }
    }

    public List<Remains> all() {
        return List.copyOf(remains.values());
    }

    public Optional<Remains> of(String piece) {
        return Optional.ofNullable(remains.get(piece));
    }
}
