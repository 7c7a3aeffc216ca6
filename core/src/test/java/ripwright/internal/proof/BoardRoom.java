package ripwright.internal.proof;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import ripwright.bill.Part;
import ripwright.internal.model.ItemTypes;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;

/**
 * What room a board has for blanks, by the contract alone, in nanometers. Defects are left out, and every section of a
 * tapered board is as wide as the widest place that is long enough.
 */
public final class BoardRoom {
    final Board board;
    final int[][] widths; // types of the blanks it takes, one row a width
    final long[] width; // width[v]: of those of widths[v]
    final long[] length; // length[k]: of a blank of type k
    final long room; // along the grain, between the end trims
    final long crosscutKerf;
    final long ripKerf;
    final long shortestSection;
    final long longestSection;

    BoardRoom(Job job, ItemTypes types, Board board) {
        this.board = board;
        crosscutKerf = job.saw().crosscutKerf().nanometers();
        ripKerf = job.saw().ripKerf().nanometers();
        shortestSection = job.saw().shortestRip().map(Length::nanometers).orElse(1L);
        long most = job.saw().longestRip().map(Length::nanometers).orElse(Long.MAX_VALUE);
        room = board.length().nanometers()
                - board.endTrim().near().nanometers()
                - board.endTrim().far().nanometers();
        longestSection = Math.min(most, room);
        length = new long[types.parts()];
        TreeMap<Long, TreeSet<Integer>> byWidth = new TreeMap<>();
        for (int k = 0; k < length.length; k++) {
            Part part = job.parts().get(types.partsOf(k)[0]);
            length[k] = part.blankLength().nanometers();
            if (takes(part))
                byWidth.computeIfAbsent(part.blankWidth().nanometers(), w -> new TreeSet<>())
                        .add(k);
        }
        width = byWidth.keySet().stream().mapToLong(w -> w).toArray();
        widths = byWidth.values().stream()
                .map(those -> those.stream().mapToInt(k -> k).toArray())
                .toArray(int[][]::new);
    }

    private boolean takes(Part part) {
        boolean wide = !board.ripped() || part.blankWidth().equals(board.width());
        boolean tied = !part.boards().isEmpty() && !part.boards().contains(board.id());
        boolean wood = part.species().isEmpty() || part.species().contains(board.species());
        return wide && !tied && wood && part.thickness().equals(board.millsTo());
    }

    /** All blanks there are of the types that the board takes none of. */
    int[] barred() {
        return IntStream.range(0, length.length)
                .filter(k -> Arrays.stream(widths).flatMapToInt(Arrays::stream).noneMatch(t -> t == k))
                .toArray();
    }

    /** How long so many blanks are end to end, a kerf between any two. */
    long along(BillChoices choices, int choice) {
        long along = -crosscutKerf;
        for (int k = 0; k < length.length; k++) along += choices.many(choice, k) * (length[k] + crosscutKerf);
        return along;
    }

    /** What a section of that length has for strips and the kerfs between them, wherever it lies best. */
    long usable(long section) {
        return sectionWidth(section) - referenceLoss(section) - (board.straightEdges() == 2 ? 0 : edgeLoss());
    }

    long sectionWidth(long section) {
        long near = board.width().nanometers();
        long far = board.widthAtFarEnd().nanometers();
        long from = near > far
                ? board.endTrim().near().nanometers()
                : board.endTrim().far().nanometers(); // from the wide end
        BigInteger narrows = BigInteger.valueOf(Math.abs(near - far)).multiply(BigInteger.valueOf(from + section));
        BigInteger[] loss =
                narrows.divideAndRemainder(BigInteger.valueOf(board.length().nanometers()));
        return Math.max(near, far) - loss[0].longValueExact() - loss[1].signum();
    }

    /** What the reference edge loses; of edges that differ the left one is the straight one. */
    long referenceLoss(long section) {
        if (board.straightEdges() > 0) return 0;
        BigInteger whole = BigInteger.valueOf(board.length().nanometers()).pow(2);
        BigInteger[] crook = BigInteger.valueOf(board.crook().nanometers())
                .multiply(BigInteger.valueOf(section).pow(2))
                .divideAndRemainder(whole);
        return Math.max(edgeLoss(), crook[0].longValueExact() + crook[1].signum());
    }

    private long edgeLoss() {
        return board.edgeLoss().nanometers();
    }
}
