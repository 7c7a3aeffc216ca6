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
    private final int[][] boards; // boards[k]: those of type k
    private final int[] typeOfBoard;
    private final int[][] parts; // parts[k]: those of type k
    private final int[] typeOfPart;
    private final int[] wanted; // wanted[k]: blanks of type k on the bill

    /** Sorts the boards and parts of a job into types. */
    public ItemTypes(JobNumbers numbers) {
        boolean defects = false;
        for (BoardNumbers board : numbers.boards) defects |= board.defects.length > 0;
        Map<Object, List<Integer>> boardTypes = new LinkedHashMap<>();
        for (BoardNumbers board : numbers.boards) add(boardTypes, key(numbers, board), board.index);
        Map<Object, List<Integer>> partTypes = new LinkedHashMap<>();
        for (PartNumbers part : numbers.parts) add(partTypes, key(numbers, part, defects), part.index);
        boards = arrays(boardTypes);
        parts = arrays(partTypes);
        typeOfBoard = inverse(boards, numbers.boards.length);
        typeOfPart = inverse(parts, numbers.parts.length);
        wanted = new int[parts.length];
        for (PartNumbers part : numbers.parts) wanted[typeOfPart[part.index]] += part.count;
    }

    private static void add(Map<Object, List<Integer>> types, Object key, int index) {
        types.computeIfAbsent(key, k -> new ArrayList<>()).add(index);
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

    private static int[][] arrays(Map<Object, List<Integer>> types) {
        return types.values().stream()
                .map(those -> those.stream().mapToInt(i -> i).toArray())
                .toArray(int[][]::new);
    }

    private static int[] inverse(int[][] types, int size) {
        int[] typeOf = new int[size];
        for (int k = 0; k < types.length; k++) for (int i : types[k]) typeOf[i] = k;
        return typeOf;
    }

    /** How many types of boards there are. */
    public int boards() {
        return boards.length;
    }

    /** The boards of a type, by their places in {@code job.boards()}; not to be changed. */
    public int[] boardsOf(int type) {
        return boards[type];
    }

    /** The type of a board. */
    public int typeOfBoard(int board) {
        return typeOfBoard[board];
    }

    /** How many types of parts there are. */
    public int parts() {
        return parts.length;
    }

    /** The parts of a type, by their places in {@code job.parts()}; not to be changed. */
    public int[] partsOf(int type) {
        return parts[type];
    }

    /** The type of a part. */
    public int typeOfPart(int part) {
        return typeOfPart[part];
    }

    /** How many blanks of a type the bill wants. */
    public int wanted(int type) {
        return wanted[type];
    }
}
