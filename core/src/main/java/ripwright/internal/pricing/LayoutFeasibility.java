package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import ripwright.internal.knapsack.Multisets;

/**
 * Whether one board gives just these blanks: tries every choice of one to three section lengths that strips of these
 * blanks come to, and for each every way to spread the strips of each width over the sections. A longer section holds
 * whatever a shorter one does, so of the last section only the longest length there is room for is tried. Exact for clear
 * boards that are alike along their length; for others it tries the most a section could have.
 */
public final class LayoutFeasibility {
    private static final int MOST_STEPS = 2_000_000;
    private static final int MOST_PAIRS = 300_000; // of a choice of a width's blanks and a part of it

    private final BoardClass wood;
    private final BoardProfile shape;
    private final List<Width> widths = new ArrayList<>();
    private final List<int[][]> minimal = new ArrayList<>(); // minimal.get(i)[j]: strips of width i in each section
    private int[] lengths = {};
    private final BooleanSupplier abort;
    private int steps;

    /** A width of which there are blanks: {@code fits[k][m]} is the shortest length at which k strips hold choice m. */
    @SuppressWarnings("ArrayRecordComponent") // a row of tables, never compared
    private record Width(int v, Multisets choices, int[] types, int[] ticks, int[][] fits) {
        int all() {
            return choices.size() - 1;
        }
    }

    /**
     * For one board.
     *
     * @param made how many blanks of each part type it is to give
     * @param abort asked very often; {@link PricingStopped} is thrown as soon as it says so
     */
    LayoutFeasibility(BoardClass wood, BoardProfile shape, int[] made, BooleanSupplier abort) {
        this.abort = abort;
        this.wood = wood;
        this.shape = shape;
        for (int v = 0; v < wood.widths.length; v++) width(v, made);
    }

    private void width(int v, int[] made) {
        int[] places = java.util.stream.IntStream.range(0, wood.partTypes[v].length)
                .filter(i -> made[wood.partTypes[v][i]] > 0)
                .toArray();
        if (places.length == 0) return;
        int[] types = Arrays.stream(places).map(i -> wood.partTypes[v][i]).toArray();
        int[] copies = Arrays.stream(types).map(k -> made[k]).toArray();
        if (gaveUp() || Multisets.pairs(copies, MOST_PAIRS) > MOST_PAIRS) {
            steps = MOST_STEPS + 1;
            return;
        }
        Multisets choices = new Multisets(copies);
        long[] sums = new long[choices.size()];
        choices.sums(Arrays.stream(places).mapToLong(i -> wood.blankTicks[v][i]).toArray(), sums);
        int[] ticks = Arrays.stream(sums).mapToInt(Math::toIntExact).toArray();
        int most = (int) (wood.sums.sum(wood.sums.count() - 1) / wood.strips[v]);
        int[][] fits = new int[most + 1][];
        fits[0] = new int[ticks.length];
        Arrays.fill(fits[0], Integer.MAX_VALUE);
        fits[0][0] = 0;
        for (int k = 1; k <= most; k++) fits[k] = withOneMore(choices, ticks, fits[k - 1]);
        widths.add(new Width(v, choices, types, ticks, fits));
    }

    private int[] withOneMore(Multisets choices, int[] ticks, int[] before) {
        int[] now = before.clone();
        for (int m = 0; m < now.length; m++) {
            if (m % 64 == 0) goOn();
            for (int part = 0; part >= 0; part = choices.nextPart(m, part))
                now[m] = Math.min(now[m], Math.max(ticks[part], before[m - part]));
        }
        return now;
    }

    private void goOn() {
        if (abort.getAsBoolean()) throw new PricingStopped();
    }

    /** Whether the search ended without an answer. */
    boolean gaveUp() {
        return steps > MOST_STEPS;
    }

    /** The sections of a layout that gives the blanks: their lengths in ticks and their strips. */
    Optional<List<Pattern.Section>> find() {
        if (gaveUp()) return Optional.empty();
        int[] candidates = candidates();
        for (int a = candidates.length - 1; a >= 0 && !gaveUp(); a--) {
            int left = shape.length - candidates[a];
            if (left < 0) continue;
            if (tried(candidates[a])) return Optional.of(sections());
            for (int b = within(candidates, Math.min(left, candidates[a])); b >= 0 && !gaveUp(); b--) {
                int c = within(candidates, Math.min(left - candidates[b], candidates[b]));
                if (c < 0 ? tried(candidates[a], candidates[b]) : tried(candidates[a], candidates[b], candidates[c]))
                    return Optional.of(sections());
            }
        }
        return Optional.empty();
    }

    private static int within(int[] candidates, int most) {
        int i = Arrays.binarySearch(candidates, most);
        return i >= 0 ? i : -i - 2;
    }

    private int[] candidates() {
        TreeSet<Integer> all = new TreeSet<>();
        for (Width width : widths) for (int t : width.ticks) if (t > 0) all.add(Math.max(t, wood.shortest));
        return all.stream().mapToInt(t -> t).filter(t -> t <= wood.longest).toArray();
    }

    private boolean tried(int... lengths) {
        this.lengths = lengths;
        long[] room = new long[lengths.length];
        for (int s = 0; s < room.length; s++) {
            room[s] = shape.usable(lengths[s]) + wood.numbers.ripKerf;
            if (room[s] <= wood.numbers.ripKerf) return false;
        }
        minimal.clear();
        for (Width width : widths) {
            int[][] ways = ways(width, room);
            if (ways.length == 0) return false;
            minimal.add(ways);
        }
        chosen = new int[widths.size()];
        return spread(0, room);
    }

    private int[] chosen = {}; // chosen[i]: which of minimal.get(i)

    private boolean spread(int i, long[] room) {
        if (i == widths.size()) return true;
        if (steps++ > MOST_STEPS) return false;
        long strip = wood.strips[widths.get(i).v];
        int[][] ways = minimal.get(i);
        for (int j = 0; j < ways.length; j++) {
            boolean fits = true;
            for (int s = 0; s < room.length; s++) {
                room[s] -= ways[j][s] * strip;
                fits &= room[s] >= 0;
            }
            chosen[i] = j;
            if (fits && spread(i + 1, room)) return true;
            for (int s = 0; s < room.length; s++) room[s] += ways[j][s] * strip;
        }
        return false;
    }

    /** All counts of strips in each section that hold all blanks of a width, none that does with one less. */
    private int[][] ways(Width width, long[] room) {
        int n = lengths.length;
        int[] most = new int[3];
        for (int s = 0; s < n; s++) most[s] = (int) Math.min(width.fits.length - 1, room[s] / wood.strips[width.v]);
        List<int[]> ways = new ArrayList<>();
        for (int first = 0; first <= most[0]; first++) {
            for (int second = 0; second <= most[1]; second++) {
                int third = fewestInLast(width, first, second, most[n - 1]);
                if (third < 0) continue;
                int[] way = n == 1
                        ? new int[] {third}
                        : n == 2 ? new int[] {first, third} : new int[] {first, second, third};
                if (ways.stream().noneMatch(other -> noMore(other, way))) ways.add(way);
                if (n < 3) break;
            }
            if (n == 1) break;
        }
        return ways.toArray(int[][]::new);
    }

    private static boolean noMore(int[] a, int[] b) {
        for (int s = 0; s < a.length; s++) if (a[s] > b[s]) return false;
        return true;
    }

    /** The fewest strips in the last section that hold what so many in those before leave; -1 when there are too few. */
    private int fewestInLast(Width width, int first, int second, int most) {
        int n = lengths.length;
        int fewest = most + 1;
        int all = width.all();
        for (int a = 0; a >= 0; a = n > 1 ? width.choices.nextPart(all, a) : -1) {
            if (a % 64 == 0) goOn();
            if (n > 1 && width.fits[first][a] > lengths[0]) continue;
            for (int b = 0; b >= 0; b = n > 2 ? width.choices.nextPart(all - a, b) : -1) {
                steps++;
                if (n > 2 && width.fits[second][b] > lengths[1]) continue;
                while (fewest > 0 && width.fits[fewest - 1][all - a - b] <= lengths[n - 1]) fewest--;
            }
        }
        return fewest > most ? -1 : fewest;
    }

    private List<Pattern.Section> sections() {
        List<List<Pattern.Strip>> strips = new ArrayList<>();
        for (int s = 0; s < lengths.length; s++) strips.add(new ArrayList<>());
        for (int i = 0; i < widths.size(); i++) {
            Width width = widths.get(i);
            int[] way = minimal.get(i)[chosen[i]];
            int left = width.all();
            for (int s = 0; s < way.length; s++) {
                int part = partFor(width, way, s, left);
                left -= part;
                addStrips(width, way[s], lengths[s], part, strips.get(s));
            }
        }
        List<Pattern.Section> sections = new ArrayList<>();
        for (int s = 0; s < lengths.length; s++)
            if (!strips.get(s).isEmpty())
                sections.add(
                        new Pattern.Section(lengths[s] * wood.lengthTick - wood.numbers.crosscutKerf, strips.get(s)));
        return sections;
    }

    /** A part of {@code left} for section {@code s} whose rest the sections behind it hold. */
    private int partFor(Width width, int[] way, int s, int left) {
        if (s == way.length - 1) return left;
        for (int part = 0; part >= 0; part = width.choices.nextPart(left, part))
            if (width.fits[way[s]][part] <= lengths[s] && holds(width, way, s + 1, left - part)) return part;
        throw new IllegalStateException("No part of " + left + " fits section " + s + ".");
    }

    private boolean holds(Width width, int[] way, int s, int left) {
        if (s == way.length - 1) return width.fits[way[s]][left] <= lengths[s];
        for (int part = 0; part >= 0; part = width.choices.nextPart(left, part))
            if (width.fits[way[s]][part] <= lengths[s] && holds(width, way, s + 1, left - part)) return true;
        return false;
    }

    private void addStrips(Width width, int count, int length, int all, List<Pattern.Strip> into) {
        int left = all;
        for (int k = count; k > 0; k--) {
            int part = 0;
            while (width.ticks[part] > length || width.fits[k - 1][left - part] > length)
                part = width.choices.nextPart(left, part);
            into.add(new Pattern.Strip(
                    wood.numbers.widths[wood.widths[width.v]],
                    Arrays.stream(width.choices.types(part))
                            .mapToObj(i -> width.types[i])
                            .toList()));
            left -= part;
        }
    }
}
