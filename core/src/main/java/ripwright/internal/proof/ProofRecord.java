package ripwright.internal.proof;

import java.util.List;

/**
 * What a proof rests on, for somebody else to go over without the programs that found it. Whoever lists all sets of boards
 * finds that each costs at least so much, or breaks a row, or was tried and has a tree all of whose leaves are closed. Sets
 * and branches number types as the proof does.
 *
 * @param rows what prices say about all sets of boards
 * @param sets the sets no row says enough about
 * @param money what no plan costs less than
 */
public record ProofRecord(List<Row> rows, List<Tried> sets, long money) {
    /** Keeps copies of the lists. */
    public ProofRecord {
        rows = List.copyOf(rows);
        sets = List.copyOf(sets);
    }

    /**
     * What prices say: the boards that are cut must bring in so much.
     *
     * @param prices of a blank of each part type, in scaled money
     * @param need what the whole bill comes to
     * @param worths what a board of each type brings in at most, offcuts counted and labor taken off; none below zero
     */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    record Row(long[] prices, long need, long[] worths) {}

    /**
     * A set that was tried.
     *
     * @param many how many boards it has of each type
     * @param root why no plan that cuts just these is cheaper
     */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    record Tried(int[] many, Node root) {}

    /** Why the boards of a set, with the branches that lead there, make no cheaper plan. */
    sealed interface Node permits Fork, Closed, Barred, Leaf {}

    /** Whatever is made takes one of these ways. */
    record Fork(List<Way> ways) implements Node {
        /** Keeps a copy of the list. */
        Fork {
            ways = List.copyOf(ways);
        }
    }

    /** One way on from a fork, and what comes of it. */
    record Way(List<Branch> branches, Node node) {
        /** Keeps a copy of the list. */
        Way {
            branches = List.copyOf(branches);
        }
    }

    /**
     * Prices of which the boards do not bring in enough.
     *
     * @param prices of a blank of each part type, in scaled money
     * @param branches some of those that lead there
     * @param more what each of them adds to the price of its blank on its board, less than nothing for a branch that says at
     *     most; a price that falls below zero counts as zero
     * @param worths what each board of the set brings in at most, its branches taken into account; none below zero
     */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    record Closed(long[] prices, List<Branch> branches, long[] more, long[] worths) implements Node {
        /** Keeps a copy of the list. */
        Closed {
            branches = List.copyOf(branches);
        }
    }

    /** A board does not give all these blanks together, as many as the branches say it gives at least. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    record Barred(int board, int[] made) implements Node {}

    /** Leaves of which there is no more to say. */
    enum Leaf implements Node {
        /** The branches leave a board nothing between its least and its most. */
        TORN,
        /** Nothing is known. */
        OPEN
    }
}
