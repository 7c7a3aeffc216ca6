package ripwright.internal.replay.leftovers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.job.Job;
import ripwright.plan.Offcut;
import ripwright.plan.TestBlank;
import ripwright.plan.TestBlank.Source;
import ripwright.stock.Board;

/**
 * Finds how the test blanks of one board, section or strip were cut from its leftovers. A plan names the piece a test
 * blank is cut from, not the place, so every way of placing them is tried, and the one that leaves the listed offcuts
 * is the plan's. Exact for as many test blanks as one piece ever gives; stops at {@link #MOST_WAYS} ways.
 */
public final class RemainsSearch {
    private static final int MOST_WAYS = 20_000;
    private static final int MOST_TEST_BLANKS = 64;

    private final String of;
    private final List<ReplayLeftover> leftovers;
    private final List<TestBlank> blanks; // those alike stand together, as which of them lies where is all the same
    private final List<TestBlank> beyondCounting;
    private final List<Offcut> listed;
    private final boolean openedForTestWood;
    private final Job job;
    private final boolean saysNewThings;
    private final long length; // of a test blank
    private final long kerf;
    private final OffcutListing listing;

    private final List<List<TestBlank>> placed; // placed.get(i): the test blanks cut from leftover i
    private final List<TestBlank> unplaced = new ArrayList<>();
    private int ways;
    private Optional<Remains> best = Optional.empty();

    RemainsSearch(
            String of,
            List<ReplayLeftover> leftovers,
            List<TestBlank> blanks,
            List<Offcut> listed,
            boolean openedForTestWood,
            ReplayIndex pieces,
            OffcutListing listing) {
        this.of = of;
        this.leftovers = leftovers;
        List<TestBlank> sorted = blanks.stream()
                .sorted(Comparator.comparing(TestBlank::width).thenComparing(TestBlank::source))
                .toList();
        this.blanks = sorted.subList(0, Math.min(sorted.size(), MOST_TEST_BLANKS));
        this.beyondCounting = sorted.subList(this.blanks.size(), sorted.size());
        this.listed = listed;
        this.openedForTestWood = openedForTestWood;
        this.job = pieces.job();
        this.saysNewThings = pieces.saysNewThings();
        this.length = job.testRip().length().nanometers();
        this.kerf = pieces.crosscutKerf();
        this.listing = listing;
        this.placed = leftovers.stream()
                .map(leftover -> (List<TestBlank>) new ArrayList<TestBlank>())
                .toList();
    }

    /** The remains that explain most of what the plan says. */
    Remains best() {
        ways = 0;
        best = Optional.empty();
        unplaced.clear();
        unplaced.addAll(beyondCounting);
        place(0, 0);
        return best.orElseThrow();
    }

    /**
     * Places test blank {@code next} and those after it; one like the test blank before goes no further to the near
     * end.
     */
    private void place(int next, int first) {
        if (next == blanks.size()) {
            cutDown(0, new ArrayList<>());
            return;
        }
        TestBlank blank = blanks.get(next);
        boolean followed = next + 1 < blanks.size() && alike(blank, blanks.get(next + 1));
        for (int i = first; i < leftovers.size() && ways < MOST_WAYS; i++) {
            if (!hasRoom(leftovers.get(i), placed.get(i).size() + 1)) continue;
            placed.get(i).add(blank);
            place(next + 1, followed ? i : 0);
            placed.get(i).remove(placed.get(i).size() - 1);
        }
        if (ways >= MOST_WAYS) return;
        unplaced.add(blank);
        place(next + 1, followed ? leftovers.size() : 0);
        unplaced.remove(unplaced.size() - 1);
    }

    private static boolean alike(TestBlank one, TestBlank other) {
        return one.width().equals(other.width()) && one.source() == other.source();
    }

    private boolean hasRoom(ReplayLeftover piece, int count) {
        return !Tolerance.less(piece.length() + kerf, count * (length + kerf));
    }

    /** Cuts leftover {@code next} and those after it in every way. */
    private void cutDown(int next, List<CutDown> chosen) {
        if (next == leftovers.size()) {
            ways++;
            offer(remains(chosen));
            return;
        }
        if (placed.get(next).isEmpty()) {
            // All of them at once, so that the stack grows with the test blanks and not with the leftovers.
            int end = next;
            while (end < leftovers.size() && placed.get(end).isEmpty())
                chosen.addAll(CutDown.all(leftovers.get(end++), 0, length, kerf));
            cutDown(end, chosen);
            chosen.subList(next, chosen.size()).clear();
            return;
        }
        for (CutDown way : CutDown.all(leftovers.get(next), placed.get(next).size(), length, kerf)) {
            if (ways >= MOST_WAYS) return;
            chosen.add(way);
            cutDown(next + 1, chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void offer(Remains remains) {
        if (best.isEmpty() || remains.faults() < best.get().faults()) best = Optional.of(remains);
        else if (remains.faults() == best.get().faults())
            best = Optional.of(best.get()
                    .withCuts(
                            Math.min(best.get().fewestCuts(), remains.fewestCuts()),
                            Math.max(best.get().mostCuts(), remains.mostCuts())));
    }

    private Remains remains(List<CutDown> chosen) {
        List<Remains.Taken> taken = new ArrayList<>();
        List<ReplayLeftover> kept = new ArrayList<>();
        List<ReplayLeftover> missing = new ArrayList<>();
        List<ReplayLeftover> waste = new ArrayList<>();
        List<Offcut> unexplained = new ArrayList<>(listed);
        int fewestCuts = 0;
        int mostCuts = 0;
        for (int i = 0; i < leftovers.size(); i++) {
            CutDown way = chosen.get(i);
            fewestCuts += way.fewestCuts();
            mostCuts += way.mostCuts();
            taken.addAll(taken(leftovers.get(i), placed.get(i), way));
            if (way.rest().isEmpty()) continue;
            ReplayLeftover rest = way.rest().get();
            ReplayLeftover.Worth worth = rest.worth(job);
            boolean found = worth != ReplayLeftover.Worth.WASTE && removeListingOf(rest, unexplained);
            if (found || worth == ReplayLeftover.Worth.KEPT) kept.add(rest);
            else waste.add(rest);
            if (!found && worth == ReplayLeftover.Worth.KEPT) missing.add(rest);
        }
        List<Remains.Mistaken> mistaken = mistaken(unexplained, missing);
        return new Remains(
                of, taken, List.copyOf(unplaced), kept, mistaken, missing, unexplained, waste, fewestCuts, mostCuts);
    }

    /**
     * Pairs each listed offcut that is nowhere with the unlisted leftover most like it; both are then accounted for.
     */
    private List<Remains.Mistaken> mistaken(List<Offcut> unexplained, List<ReplayLeftover> missing) {
        List<Remains.Mistaken> mistaken = new ArrayList<>();
        for (Offcut offcut : List.copyOf(unexplained)) {
            Optional<Remains.Mistaken> meant = missing.stream()
                    .map(leftover ->
                            new Remains.Mistaken(offcut, leftover, listing.differences(offcut.piece(), leftover)))
                    .min(Comparator.comparingInt(pair -> pair.differences().size()));
            if (meant.isEmpty()) break;
            mistaken.add(meant.get());
            unexplained.remove(offcut);
            missing.remove(meant.get().leftover());
        }
        return mistaken;
    }

    private boolean removeListingOf(ReplayLeftover rest, List<Offcut> candidates) {
        for (int i = 0; i < candidates.size(); i++)
            if (listing.differences(candidates.get(i).piece(), rest).isEmpty()) {
                candidates.remove(i);
                return true;
            }
        return false;
    }

    private List<Remains.Taken> taken(ReplayLeftover from, List<TestBlank> group, CutDown way) {
        List<Remains.Taken> taken = new ArrayList<>();
        List<TestBlank> widestFirst = group.stream()
                .sorted(Comparator.comparing(TestBlank::width).reversed())
                .toList();
        for (int i = 0; i < widestFirst.size(); i++)
            taken.add(new Remains.Taken(
                    widestFirst.get(i),
                    from,
                    way.blanks().get(i),
                    dueSource(from, widestFirst.get(i), widestFirst.subList(0, i), widestFirst),
                    saysNewThings));
        return taken;
    }

    /**
     * Where a test blank cut from {@code from} comes from. Where several come from wood that would have been kept, one
     * at least is fresh; what is then left may have been waste.
     */
    private Source dueSource(ReplayLeftover from, TestBlank blank, List<TestBlank> before, List<TestBlank> all) {
        Board board = from.frame().board();
        if (board.fromRack() && openedForTestWood) return Source.RACK;
        if (board.testOnly()) return Source.FRESH;
        if (board.fromRack() && blank.source() == Source.RACK && !saysNewThings) return Source.RACK;
        ReplayLeftover.Worth worth = openedForTestWood ? ReplayLeftover.Worth.KEPT : from.worth(job);
        if (worth == ReplayLeftover.Worth.WASTE) return Source.WASTE;
        if (worth == ReplayLeftover.Worth.EITHER) return blank.source() == Source.RACK ? Source.FRESH : blank.source();
        if (saysNewThings) return Source.FRESH;
        boolean oneIsFresh = all.stream().anyMatch(other -> other.source() == Source.FRESH);
        boolean mayBeWaste = oneIsFresh || !before.isEmpty();
        return blank.source() == Source.WASTE && mayBeWaste ? Source.WASTE : Source.FRESH;
    }
}
