package ripwright.internal.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ripwright.bill.Part;
import ripwright.stock.Board;

/** Which boards of a job are alike, and which parts: programs that price them need not tell these apart. */
public final class ItemTypes {
    private final int[][] boards; // boards[k]: those of kind k
    private final int[] typeOfBoard;
    private final int[][] parts; // parts[k]: those of kind k
    private final int[] typeOfPart;
    private final int[] wanted; // wanted[k]: blanks of kind k on the bill

    /** Sorts the boards and parts of a job into kinds. */
    public ItemTypes(JobNumbers numbers) {
        boolean defects = false;
        for (BoardNumbers board : numbers.boards) defects |= board.defects.length > 0;
        Map<Object, List<Integer>> boardKinds = new LinkedHashMap<>();
        for (BoardNumbers board : numbers.boards) add(boardKinds, key(numbers, board), board.index);
        Map<Object, List<Integer>> partKinds = new LinkedHashMap<>();
        for (PartNumbers part : numbers.parts) add(partKinds, key(numbers, part, defects), part.index);
        boards = arrays(boardKinds);
        parts = arrays(partKinds);
        typeOfBoard = inverse(boards, numbers.boards.length);
        typeOfPart = inverse(parts, numbers.parts.length);
        wanted = new int[parts.length];
        for (PartNumbers part : numbers.parts) wanted[typeOfPart[part.index]] += part.count;
    }

    private static void add(Map<Object, List<Integer>> kinds, Object key, int index) {
        kinds.computeIfAbsent(key, k -> new ArrayList<>()).add(index);
    }

    private static Object key(JobNumbers numbers, BoardNumbers board) {
        Board b = board.stock;
        return List.of(
                b.species(),
                b.thickness(),
                b.millsTo(),
                b.width(),
                b.widthAtFarEnd(),
                b.length(),
                b.crook(),
                b.straightEdges(),
                b.edgeLoss(),
                b.endTrim(),
                b.defects(),
                b.ripped(),
                b.fromRack(),
                takenBy(numbers, b),
                numbers.job().price(b).stripTrailingZeros());
    }

    private static Object key(JobNumbers numbers, PartNumbers part, boolean defects) {
        Part p = numbers.job().parts().get(part.index);
        return List.of(
                part.length,
                part.width,
                p.thickness(),
                p.species(),
                defects && part.show,
                part.group,
                part.feet,
                p.boards());
    }

    /** The places of the parts that come from certain boards only, of which that board is one. */
    private static List<Integer> takenBy(JobNumbers numbers, Board board) {
        List<Part> parts = numbers.job().parts();
        return IntStream.range(0, parts.size())
                .filter(p -> parts.get(p).boards().contains(board.id()))
                .boxed()
                .toList();
    }

    private static int[][] arrays(Map<Object, List<Integer>> kinds) {
        return kinds.values().stream()
                .map(those -> those.stream().mapToInt(i -> i).toArray())
                .toArray(int[][]::new);
    }

    private static int[] inverse(int[][] kinds, int size) {
        int[] kindOf = new int[size];
        for (int k = 0; k < kinds.length; k++) for (int i : kinds[k]) kindOf[i] = k;
        return kindOf;
    }

    /** How many kinds of boards there are. */
    public int boards() {
        return boards.length;
    }

    /** The boards of a kind, by their places in {@code job.boards()}; not to be changed. */
    public int[] boardsOf(int kind) {
        return boards[kind];
    }

    /** The kind of a board. */
    public int typeOfBoard(int board) {
        return typeOfBoard[board];
    }

    /** How many kinds of parts there are. */
    public int parts() {
        return parts.length;
    }

    /** The parts of a kind, by their places in {@code job.parts()}; not to be changed. */
    public int[] partsOf(int kind) {
        return parts[kind];
    }

    /** The kind of a part. */
    public int typeOfPart(int part) {
        return typeOfPart[part];
    }

    /** How many blanks of a kind the bill wants. */
    public int wanted(int kind) {
        return wanted[kind];
    }
}
