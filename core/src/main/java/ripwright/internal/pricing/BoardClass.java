package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import ripwright.bill.Part;
import ripwright.internal.knapsack.NormalPatterns;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;
import ripwright.measure.OnePlace;

/**
 * Boards that share one pricing problem: they take the same parts, and their offcuts fetch the same for their area. And the
 * grids it is solved on. Every blank, section and board is lengthened by one crosscut kerf, every strip and section widened
 * by one rip kerf; then n pieces fit a room exactly when their sizes add up to no more than it, and kerfs are seen no more.
 * Where sizes have no common measure within the most ticks there may be, sizes and room are both rounded down: every layout
 * that fits in nanometers fits in ticks, so the pricing is a relaxation and its values are upper bounds.
 */
public final class BoardClass {
    private static final int MOST_LENGTH_TICKS = 1 << 14;
    private static final int MOST_SECTIONS = 3;

    final JobNumbers numbers;
    final int[] boardTypes;
    final BoardNumbers[] boards; // boards[i]: one of boardTypes[i]
    final double offcutRate; // money for a square nanometer of offcut from a section
    final long lengthTick; // nanometers
    final int length; // ticks of the longest board
    final int spill; // ticks by which a leftover may be longer than its ticks say: 0 where all lengths are exact
    final int crosscutTicks; // of the kerf, rounded down
    final int unseenInStrip; // ticks by which blanks may fall short of their strip and still end with it
    final int unseenInBoard; // the same of sections and their board
    final int keepTicks; // a room that many ticks longer than what is cut from it may leave an offcut
    final int[] widths; // widths[v]: place in numbers.widths
    final long[] strips; // strips[v]: nanometers across, with a kerf
    final NormalPatterns sums; // of strips, as wide as the widest board
    final int[][] partTypes; // partTypes[v]: those of that width, shortest first
    final int[][] blankTicks; // blankTicks[v][i]: along, with a kerf, of partTypes[v][i]
    final int shortest; // ticks of a section at least
    final int longest; // and at most

    private BoardClass(
            JobNumbers numbers, ItemTypes types, ScaledMoney money, ScaledLabor charges, List<Integer> boardTypes) {
        this.numbers = numbers;
        this.boardTypes = boardTypes.stream().mapToInt(k -> k).toArray();
        boards = boardTypes.stream()
                .map(k -> numbers.boards[types.boardsOf(k)[0]])
                .toArray(BoardNumbers[]::new);
        offcutRate = boards[0].milledSalvageRate * money.perMillionth();
        int[][] byWidth = new int[numbers.widths.length][];
        for (int w = 0; w < byWidth.length; w++) byWidth[w] = taken(types, w);
        widths = java.util.stream.IntStream.range(0, byWidth.length)
                .filter(w -> byWidth[w].length > 0)
                .toArray();
        partTypes = Arrays.stream(widths).mapToObj(w -> byWidth[w]).toArray(int[][]::new);
        long kerf = numbers.crosscutKerf;
        long longestRoom = Arrays.stream(boards).mapToLong(this::room).max().orElseThrow();
        long widest = Arrays.stream(boards)
                .mapToLong(board -> Math.max(board.widthNear, board.widthFar) + numbers.ripKerf)
                .max()
                .orElseThrow();
        lengthTick = lengthTick(types, charges, longestRoom);
        length = Math.toIntExact(longestRoom / lengthTick);
        spill = straight() && Arrays.stream(criticalLengths(types)).allMatch(size -> size % lengthTick == 0) ? 0 : 1;
        crosscutTicks = (int) (kerf / lengthTick);
        keepTicks = (int) Math.min(Integer.MAX_VALUE / 2, (numbers.keepLength + kerf) / lengthTick);
        strips = Arrays.stream(widths)
                .mapToLong(w -> numbers.widths[w] + numbers.ripKerf)
                .toArray();
        sums = new NormalPatterns(strips, widest);
        blankTicks = new int[widths.length][];
        for (int v = 0; v < widths.length; v++)
            blankTicks[v] = Arrays.stream(partTypes[v])
                    .map(k -> (int) Math.min(Integer.MAX_VALUE / 2, sizeOf(types, k) / lengthTick))
                    .toArray();
        int nothing = (int) (OnePlace.NANOMETERS / lengthTick);
        boolean measured = Arrays.stream(sizes(types)).allMatch(size -> size % lengthTick == 0);
        unseenInStrip = nothing + (measured ? 0 : mostBlanks());
        unseenInBoard = nothing + (spill == 0 ? 0 : MOST_SECTIONS);
        shortest = (int) Math.min(Integer.MAX_VALUE / 2, (numbers.shortestRip + kerf) / lengthTick);
        longest = numbers.longestRip >= longestRoom ? length : (int) ((numbers.longestRip + kerf) / lengthTick);
    }

    /** The boards of a job by what they take and fetch; boards no part of the bill fits are in none. */
    static List<BoardClass> all(JobNumbers numbers, ItemTypes types, ScaledMoney money, ScaledLabor charges) {
        Map<Object, List<Integer>> alike = new LinkedHashMap<>();
        for (int k = 0; k < types.boards(); k++) {
            BoardNumbers board = numbers.boards[types.boardsOf(k)[0]];
            if (board.to <= board.from) continue;
            List<Integer> takes = new ArrayList<>();
            boolean any = false;
            for (int p = 0; p < types.parts(); p++) {
                if (takes(numbers, board, types.partsOf(p)[0])) takes.add(p);
                any |= numbers.parts[types.partsOf(p)[0]].fits[board.index];
            }
            if (any)
                alike.computeIfAbsent(List.of(takes, board.milledSalvageRate), key -> new ArrayList<>())
                        .add(k);
        }
        return alike.values().stream()
                .map(boards -> new BoardClass(numbers, types, money, charges, boards))
                .toList();
    }

    private static boolean takes(JobNumbers numbers, BoardNumbers board, int part) {
        Part p = numbers.job().parts().get(part);
        return p.takes(board.stock.species())
                && p.mayComeFrom(board.stock.id())
                && p.thickness().equals(board.stock.millsTo());
    }

    /** Part types of a width that fit one of these boards, shortest first. */
    private int[] taken(ItemTypes types, int w) {
        List<Integer> those = new ArrayList<>();
        for (int k = 0; k < types.parts(); k++) {
            PartNumbers part = numbers.parts[types.partsOf(k)[0]];
            if (part.widthIndex != w) continue;
            if (Arrays.stream(boards).anyMatch(board -> part.fits[board.index])) those.add(k);
        }
        those.sort((a, b) -> Long.compare(sizeOf(types, a), sizeOf(types, b)));
        return those.stream().mapToInt(k -> k).toArray();
    }

    private long sizeOf(ItemTypes types, int partType) {
        return numbers.parts[types.partsOf(partType)[0]].length + numbers.crosscutKerf;
    }

    /** The room a board has along the grain, a kerf included. */
    long room(BoardNumbers board) {
        return board.to - board.from + numbers.crosscutKerf;
    }

    private long[] sizes(ItemTypes types) {
        return Arrays.stream(partTypes)
                .flatMapToInt(Arrays::stream)
                .mapToLong(k -> sizeOf(types, k))
                .toArray();
    }

    /**
     * Every length at which what a layout fetches can turn: between two of them it changes evenly, so that a best layout
     * has none that these do not measure. Crook and taper know no such lengths.
     */
    private long[] criticalLengths(ItemTypes types) {
        long kerf = numbers.crosscutKerf;
        LongStream rooms = Arrays.stream(boards).mapToLong(this::room);
        LongStream more = LongStream.of(kerf, numbers.keepLength + kerf);
        return LongStream.concat(Arrays.stream(sizesAndLimits(types)), LongStream.concat(rooms, more))
                .toArray();
    }

    private long[] sizesAndLimits(ItemTypes types) {
        long kerf = numbers.crosscutKerf;
        LongStream shortest = numbers.shortestRip > 1 ? LongStream.of(numbers.shortestRip + kerf) : LongStream.empty();
        LongStream longest =
                numbers.longestRip < Long.MAX_VALUE ? LongStream.of(numbers.longestRip + kerf) : LongStream.empty();
        return LongStream.concat(Arrays.stream(sizes(types)), LongStream.concat(shortest, longest))
                .toArray();
    }

    private boolean straight() {
        return Arrays.stream(boards).noneMatch(board -> board.crook > 0 || board.tapered());
    }

    /** One that measures all that counts where leftovers and cuts are worth money; else one that measures the blanks. */
    private long lengthTick(ItemTypes types, ScaledLabor charges, long longestRoom) {
        boolean money = offcutRate > 0 || charges.crosscut() > 0;
        long tick = new TickGrid(money ? criticalLengths(types) : sizesAndLimits(types), 0, 1).tick;
        if (longestRoom / tick <= MOST_LENGTH_TICKS) return tick;
        return new TickGrid(sizes(types), longestRoom, MOST_LENGTH_TICKS).tick;
    }

    /** How many blanks a strip has at most: where their sizes are rounded down, each can lose a tick. */
    private int mostBlanks() {
        int least = Arrays.stream(blankTicks)
                .flatMapToInt(Arrays::stream)
                .filter(ticks -> ticks > 0)
                .min()
                .orElse(1);
        return length / least;
    }

    /** Scaled money that a tick of leftover at the end of a strip fetches; 0 where it is too narrow to keep. */
    long endRate(int v) {
        long width = numbers.widths[widths[v]];
        return width < numbers.keepWidth ? 0 : ScaledMoney.ceil(offcutRate * width * lengthTick);
    }

    /** What such a leftover fetches beyond its ticks, less than nothing where a kerf is to be taken off. */
    long endExtra(int v) {
        return endRate(v) * (spill - crosscutTicks);
    }

    /** The longest a section of that many ticks can be, in nanometers; what it can leave is reckoned by it. */
    long longest(int ticks) {
        return (long) (ticks + spill) * lengthTick - numbers.crosscutKerf;
    }

    /** The shortest a section of that many ticks can be; what it loses to crook is reckoned by it. */
    long shortest(int ticks) {
        return Math.max(
                1,
                Math.max(
                        (long) ticks * lengthTick - numbers.crosscutKerf,
                        Math.min(numbers.shortestRip, longest(ticks))));
    }
}
