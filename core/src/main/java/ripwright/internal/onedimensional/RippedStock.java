package ripwright.internal.onedimensional;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import ripwright.internal.geometry.Layout;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.stock.Edge;

/**
 * Ripped boards without defects, and the parts that are cut from them: strips to be filled along their length alone, which
 * is a cutting stock problem in one dimension. A job may hold several of these that share nothing. Parts and boards are
 * counted by types of its own, lengths in ticks, every blank and board one kerf longer than it is. Where a job's lengths
 * have no tick in common that is coarse enough, blanks are rounded up and boards down: every strip can be cut then, but
 * not every strip that could be cut is known.
 */
public final class RippedStock {
    private static final int MOST_TICKS = 1 << 14;

    /**
     * A filled strip.
     *
     * @param boardType the type of its board
     * @param partTypes the types of its blanks, each as often as there are of it
     */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    public record Strip(int boardType, int[] partTypes) {}

    private final JobNumbers numbers;
    private final int[][] parts; // parts[k]: places in the bill of the parts of type k
    private final int[][] boards; // boards[s]: places of the boards of type s
    private final int[] wanted; // wanted[k]: blanks of type k
    private final int[] ticks; // ticks[k]: of one
    private final int[] room; // room[s]: ticks of a board of type s
    private final long[] cost; // cost[s]: of one, in millionths
    private final boolean[][] takes; // takes[s][k]: whether a board of type s gives blanks of type k
    private final boolean alone;

    private RippedStock(JobNumbers numbers, ItemTypes types, List<Integer> partTypes, List<Integer> boardTypes) {
        this.numbers = numbers;
        parts = partTypes.stream().map(types::partsOf).toArray(int[][]::new);
        boards = boardTypes.stream().map(types::boardsOf).toArray(int[][]::new);
        wanted = partTypes.stream().mapToInt(types::wanted).toArray();
        long[] sizes = Arrays.stream(parts)
                .mapToLong(those -> numbers.parts[those[0]].length + numbers.crosscutKerf)
                .toArray();
        long[] rooms = Arrays.stream(boards)
                .mapToLong(those -> room(numbers.boards[those[0]]))
                .toArray();
        TickGrid grid = new TickGrid(sizes, Arrays.stream(rooms).max().orElseThrow(), MOST_TICKS);
        ticks = Arrays.stream(sizes).mapToInt(grid::of).toArray();
        room = Arrays.stream(rooms).mapToInt(grid::in).toArray();
        cost = Arrays.stream(boards).mapToLong(those -> numbers.cost(those[0])).toArray();
        takes = new boolean[boards.length][parts.length];
        for (int s = 0; s < boards.length; s++)
            for (int k = 0; k < parts.length; k++) takes[s][k] = fits(k, s) && ticks[k] <= room[s];
        alone = fromTheseAlone();
    }

    private boolean fits(int partType, int boardType) {
        return numbers.parts[parts[partType][0]].fits[boards[boardType][0]];
    }

    private long room(BoardNumbers board) {
        return board.to - board.from + numbers.crosscutKerf;
    }

    /** Whether no board but these gives any of the parts. */
    private boolean fromTheseAlone() {
        boolean[] these = new boolean[numbers.boards.length];
        for (int[] those : boards) for (int b : those) these[b] = true;
        for (int[] those : parts)
            for (int b = 0; b < these.length; b++) if (numbers.parts[those[0]].fits[b] && !these[b]) return false;
        return true;
    }

    /** All there are in a job, largest first; parts of {@code together} groups are in none. */
    public static List<RippedStock> all(JobNumbers numbers) {
        ItemTypes types = new ItemTypes(numbers);
        List<Integer> boards = IntStream.range(0, types.boards())
                .filter(s -> clearStrip(numbers.boards[types.boardsOf(s)[0]]))
                .boxed()
                .toList();
        List<Integer> open = new ArrayList<>();
        for (int k = 0; k < types.parts(); k++) if (numbers.parts[types.partsOf(k)[0]].group < 0) open.add(k);
        List<RippedStock> all = new ArrayList<>();
        boolean[] found = new boolean[types.boards()];
        while (!open.isEmpty()) {
            List<Integer> parts = new ArrayList<>(List.of(open.remove(0)));
            List<Integer> theirs = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                for (int s : boards) {
                    if (found[s] || !fits(numbers, types, parts.get(i), s)) continue;
                    found[s] = true;
                    theirs.add(s);
                    for (int k : open) if (fits(numbers, types, k, s)) parts.add(k);
                    open.removeIf(k -> fits(numbers, types, k, s));
                }
            }
            if (!theirs.isEmpty()) all.add(new RippedStock(numbers, types, parts, theirs));
        }
        all.sort(Comparator.comparing(stock -> -Arrays.stream(stock.wanted).sum()));
        return all;
    }

    private static boolean clearStrip(BoardNumbers board) {
        return board.ripped && board.defects.length == 0 && board.to > board.from;
    }

    private static boolean fits(JobNumbers numbers, ItemTypes types, int partType, int boardType) {
        return numbers.parts[types.partsOf(partType)[0]].fits[types.boardsOf(boardType)[0]];
    }

    /** Whether no other board of the job gives any of these parts. */
    public boolean alone() {
        return alone;
    }

    /** How many types of parts there are. */
    public int parts() {
        return parts.length;
    }

    /** How many types of boards there are. */
    public int boards() {
        return boards.length;
    }

    /** How many blanks of each type are wanted. */
    public int[] wanted() {
        return wanted.clone();
    }

    /** How many boards of each type there are. */
    public int[] copies() {
        return Arrays.stream(boards).mapToInt(those -> those.length).toArray();
    }

    /** Ticks that a blank of a type takes, its kerf included. */
    public int ticks(int partType) {
        return ticks[partType];
    }

    /** Ticks that a board of a type has, a kerf included. */
    public int room(int boardType) {
        return room[boardType];
    }

    /** What a board of a type costs, in millionths of the currency. */
    public long cost(int boardType) {
        return cost[boardType];
    }

    /** What the length of a blank costs on the board where it is cheapest, in millionths. */
    public double leastCost(int partType) {
        return IntStream.range(0, boards.length)
                .filter(s -> takes[s][partType])
                .mapToDouble(s -> (double) cost[s] / room[s] * ticks[partType])
                .min()
                .orElse(0);
    }

    /** Whether a board of a type gives blanks of a type. */
    public boolean takes(int boardType, int partType) {
        return takes[boardType][partType];
    }

    /** The parts of a type, by their places in the bill; not to be changed. */
    public int[] partsOf(int partType) {
        return parts[partType];
    }

    /** Layouts of the job's boards for those strips, no more of any type than there are boards and blanks wanted. */
    public List<PricedLayout> layouts(List<Strip> strips) {
        int[] left = numbers.wanted();
        int[] used = new int[boards.length];
        List<PricedLayout> layouts = new ArrayList<>();
        for (Strip strip : strips) {
            int board = boards[strip.boardType()][used[strip.boardType()]++];
            layouts.add(numbers.priced(layout(board, strip, left)));
        }
        return layouts;
    }

    /** Longest blanks first, so that those too short for the crosscut limit come last. */
    private Layout layout(int board, Strip strip, int[] left) {
        int[] those = new int[strip.partTypes().length];
        for (int i = 0; i < those.length; i++) {
            those[i] = Arrays.stream(parts[strip.partTypes()[i]])
                    .filter(p -> left[p] > 0)
                    .findFirst()
                    .orElseThrow();
            left[those[i]]--;
        }
        List<Integer> longestFirst = Arrays.stream(those)
                .boxed()
                .sorted(Comparator.comparing((Integer p) -> -numbers.parts[p].length)
                        .thenComparing(p -> p))
                .toList();
        List<Layout.Blank> blanks = new ArrayList<>();
        long x = numbers.boards[board].from;
        for (int p : longestFirst) {
            blanks.add(new Layout.Blank(p, x));
            x += numbers.parts[p].length + numbers.crosscutKerf;
        }
        BoardNumbers cut = numbers.boards[board];
        return new Layout(
                board,
                List.of(new Layout.Section(
                        cut.from, cut.to, Edge.LEFT, 0, List.of(new Layout.Strip(cut.widthNear, blanks)))));
    }
}
