package ripwright.runner.sheet.place;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ripwright.plan.Offcut;
import ripwright.plan.TestBlank;
import ripwright.runner.sheet.place.Piece.Fate;

/**
 * Finds where the listed leftovers of a piece lie. A plan names only the piece a test blank or an offcut is left of, and its
 * size; the contract says the rest: a test blank is cut from either end of a leftover or from the first clear wood behind a
 * raw end, and what remains is an offcut of exactly the size listed. Tries every such place, in the order of the plan, until
 * all are found, or gives the trial that found most.
 */
final class Leftovers {
    private static final int MOST_TRIALS = 50_000;

    private final List<Span> gaps; // the leftovers, kerfs beside them already off
    private final List<TestBlank> tests;
    private final List<Offcut> offcuts;
    private final long kerf;
    private final Clear clear;
    private final BiPredicate<Offcut, Span> fits; // whether an offcut can be the wood there, its length apart
    private final boolean[] used; // used[i]: offcuts.get(i) has its place in this trial
    private final List<Span> trial = new ArrayList<>();
    private List<Span> best = List.of();
    private int trials;

    /**
     * Where clear wood may start and end.
     *
     * @param from x where the raw near end's trim stops
     * @param to x where the raw far end's trim starts
     * @param others x of the ends of defects
     */
    record Clear(long from, long to, List<Long> others) {}

    Leftovers(
            List<Span> gaps,
            List<TestBlank> tests,
            List<Offcut> offcuts,
            long kerf,
            Clear clear,
            BiPredicate<Offcut, Span> fits) {
        this.gaps = gaps;
        this.tests = tests;
        this.offcuts = offcuts;
        this.kerf = kerf;
        this.clear = clear;
        this.fits = fits;
        this.used = new boolean[offcuts.size()];
        place(0, 0);
    }

    /** The listed pieces that were found, by where they start. */
    List<Span> found() {
        return best;
    }

    /** The ids of those that were not. */
    List<String> missing() {
        List<String> ids = best.stream().map(Span::id).toList();
        return Stream.concat(tests.stream().map(TestBlank::id), offcuts.stream().map(Offcut::id))
                .filter(id -> !ids.contains(id))
                .toList();
    }

    /** Whether all are placed, the leftovers from {@code gap} on taking the test blanks from {@code test} on. */
    private boolean place(int gap, int test) {
        if (trial.size() > best.size()) best = List.copyOf(trial);
        if (best.size() == tests.size() + offcuts.size()) return true;
        if (gap == gaps.size() || ++trials > MOST_TRIALS) return false;
        Span whole = gaps.get(gap);
        for (int count = 0; count <= tests.size() - test; count++) {
            for (int near : splits(count)) {
                for (long start : near > 0 ? starts(whole) : List.of(whole.from())) {
                    for (long end : near < count ? ends(whole) : List.of(whole.to())) {
                        if (cut(gap, test, near, count - near, start, end)) return true;
                    }
                }
            }
        }
        return false;
    }

    /** Cuts test blanks off both ends of the clear wood of a leftover, and goes on with the next leftover. */
    private boolean cut(int gap, int test, int near, int far, long start, long end) {
        int before = trial.size();
        int next = test;
        long from = start;
        for (int i = 0; i < near; i++) {
            long to = from + tests.get(next).length().nanometers();
            trial.add(new Span(Fate.TEST_BLANK, tests.get(next++).id(), from, to));
            from = to + kerf;
        }
        long to = end;
        for (int i = 0; i < far; i++) {
            long left = to - tests.get(next).length().nanometers();
            trial.add(new Span(Fate.TEST_BLANK, tests.get(next++).id(), left, to));
            to = left - kerf;
        }
        Span whole = gaps.get(gap);
        boolean inside = from - kerf <= whole.to() + Crosscuts.TOLERANCE
                && to + kerf >= whole.from() - Crosscuts.TOLERANCE
                && (near == 0 || far == 0 || from - kerf <= to);
        boolean done = inside && rest(gap, next, from, to);
        while (!done && trial.size() > before) trial.remove(trial.size() - 1);
        return done;
    }

    private boolean rest(int gap, int test, long from, long to) {
        if (to > from) {
            for (int i = 0; i < used.length; i++) {
                Span span = new Span(Fate.OFFCUT, offcuts.get(i).id(), from, to);
                if (used[i] || !matches(offcuts.get(i), span)) continue;
                used[i] = true;
                trial.add(span);
                if (place(gap + 1, test)) return true;
                trial.remove(trial.size() - 1);
                used[i] = false;
            }
        }
        return place(gap + 1, test);
    }

    private boolean matches(Offcut offcut, Span span) {
        return Math.abs(offcut.piece().length().nanometers() - span.length()) <= Crosscuts.TOLERANCE
                && fits.test(offcut, span);
    }

    /** How many of the test blanks come from the near end: all, none, or some. */
    private static List<Integer> splits(int count) {
        return IntStream.concat(IntStream.of(count), IntStream.range(0, count))
                .boxed()
                .toList();
    }

    private List<Long> starts(Span whole) {
        return Stream.concat(Stream.of(Math.max(whole.from(), clear.from()), whole.from()), clear.others().stream())
                .filter(x -> x >= whole.from() && x < whole.to())
                .distinct()
                .toList();
    }

    private List<Long> ends(Span whole) {
        return Stream.concat(Stream.of(Math.min(whole.to(), clear.to()), whole.to()), clear.others().stream())
                .filter(x -> x > whole.from() && x <= whole.to())
                .distinct()
                .toList();
    }
}
