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
 * counted by kinds of its own, lengths in ticks, every blank and board one kerf longer than it is. Where a job's lengths
 * have no tick in common that is coarse enough, blanks are rounded up and boards down: every strip can be cut then, but
 * not every strip that could be cut is known.
 */
public final class RippedStock {
    private static final int MOST_TICKS = 1 << 14;

    /**
     * A filled strip.
     *
     * @param boardKind the kind of its board
     * @param partKinds the kinds of its blanks, each as often as there are of it
     */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    public record Strip(int boardKind, int[] partKinds) {}

    private final JobNumbers numbers;
    private final int[][] parts; // parts[k]: places in the bill of the parts of kind k
    private final int[][] boards; // boards[s]: places of the boards of kind s
    private final int[] wanted; // wanted[k]: blanks of kind k
    private final int[] ticks; // ticks[k]: of one
    private final int[] room; // room[s]: ticks of a board of kind s
    private final long[] cost; // cost[s]: of one, in millionths
    private final boolean[][] takes; // takes[s][k]: whether a board of kind s gives blanks of kind k
    private final boolean alone;

    private RippedStock(JobNumbers numbers, ItemTypes kinds, List<Integer> partKinds, List<Integer> boardKinds) {
        this.numbers = numbers;
        parts = partKinds.stream().map(kinds::partsOf).toArray(int[][]::new);
        boards = boardKinds.stream().map(kinds::boardsOf).toArray(int[][]::new);
        wanted = partKinds.stream().mapToInt(kinds::wanted).toArray();
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

    private boolean fits(int partKind, int boardKind) {
        return numbers.parts[parts[partKind][0]].fits[boards[boardKind][0]];
    }

    private long room(BoardNumbers board) {
        return board.span() + numbers.crosscutKerf;
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
        ItemTypes kinds = new ItemTypes(numbers);
        List<Integer> boards = IntStream.range(0, kinds.boards())
                .filter(s -> clearStrip(numbers.boards[kinds.boardsOf(s)[0]]))
                .boxed()
                .toList();
        List<Integer> open = new ArrayList<>();
        for (int k = 0; k < kinds.parts(); k++) if (numbers.parts[kinds.partsOf(k)[0]].group < 0) open.add(k);
        List<RippedStock> all = new ArrayList<>();
        boolean[] found = new boolean[kinds.boards()];
        while (!open.isEmpty()) {
            List<Integer> parts = new ArrayList<>(List.of(open.remove(0)));
            List<Integer> theirs = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                for (int s : boards) {
                    if (found[s] || !fits(numbers, kinds, parts.get(i), s)) continue;
                    found[s] = true;
                    theirs.add(s);
                    for (int k : open) if (fits(numbers, kinds, k, s)) parts.add(k);
                    open.removeIf(k -> fits(numbers, kinds, k, s));
                }
            }
            if (!theirs.isEmpty()) all.add(new RippedStock(numbers, kinds, parts, theirs));
        }
        all.sort(Comparator.comparing(stock -> -Arrays.stream(stock.wanted).sum()));
        return all;
    }

    private static boolean clearStrip(BoardNumbers board) {
        return board.ripped && board.defects.length == 0 && board.span() > 0;
    }

    private static boolean fits(JobNumbers numbers, ItemTypes kinds, int partKind, int boardKind) {
        return numbers.parts[kinds.partsOf(partKind)[0]].fits[kinds.boardsOf(boardKind)[0]];
    }

    /** Whether no other board of the job gives any of these parts. */
    public boolean alone() {
        return alone;
    }

    /** How many kinds of parts there are. */
    public int parts() {
        return parts.length;
    }

    /** How many kinds of boards there are. */
    public int boards() {
        return boards.length;
    }

    /** How many blanks of each kind are wanted. */
    public int[] wanted() {
        return wanted.clone();
    }

    /** How many boards of each kind there are. */
    public int[] copies() {
        return Arrays.stream(boards).mapToInt(those -> those.length).toArray();
    }

    /** Ticks that a blank of a kind takes, its kerf included. */
    public int ticks(int partKind) {
        return ticks[partKind];
    }

    /** Ticks that a board of a kind has, a kerf included. */
    public int room(int boardKind) {
        return room[boardKind];
    }

    /** What a board of a kind costs, in millionths of the currency. */
    public long cost(int boardKind) {
        return cost[boardKind];
    }

    /** What the length of a blank costs on the board where it is cheapest, in millionths. */
    public double leastCost(int partKind) {
        return IntStream.range(0, boards.length)
                .filter(s -> takes[s][partKind])
                .mapToDouble(s -> (double) cost[s] / room[s] * ticks[partKind])
                .min()
                .orElse(0);
    }

    /** Whether a board of a kind gives blanks of a kind. */
    public boolean takes(int boardKind, int partKind) {
        return takes[boardKind][partKind];
    }

    /** The parts of a kind, by their places in the bill; not to be changed. */
    public int[] partsOf(int partKind) {
        return parts[partKind];
    }

    /** Layouts of the job's boards for those strips, no more of any kind than there are boards and blanks wanted. */
    public List<PricedLayout> layouts(List<Strip> strips) {
        int[] left = numbers.wanted();
        int[] used = new int[boards.length];
        List<PricedLayout> layouts = new ArrayList<>();
        for (Strip strip : strips) {
            int board = boards[strip.boardKind()][used[strip.boardKind()]++];
            layouts.add(numbers.priced(layout(board, strip, left)));
        }
        return layouts;
    }

    /** Longest blanks first, so that those too short for the crosscut limit come last. */
    private Layout layout(int board, Strip strip, int[] left) {
        int[] those = new int[strip.partKinds().length];
        for (int i = 0; i < those.length; i++) {
            those[i] = Arrays.stream(parts[strip.partKinds()[i]])
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
        BoardNumbers cut = numbers.boards[board];
        long x = cut.spanFrom(cut.begin);
        for (int p : longestFirst) {
            blanks.add(new Layout.Blank(p, x));
            x += numbers.parts[p].length + numbers.crosscutKerf;
        }
        return new Layout(
                board,
                List.of(new Layout.Section(
                        cut.begin, cut.end, Edge.LEFT, 0, List.of(new Layout.Strip(cut.widthNear, blanks)))));
    }
}
