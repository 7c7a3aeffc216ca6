package ripwright.internal.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;

/** That {@link ProofCheck} has teeth: one proof with branches, spoiled in every place it rests on. */
public class ProofTeethTest {
    private static final Job JOB = ProofRecheckTest.plain(new SplittableRandom(146), 21, 9);
    private static final ProofRecord SOUND = needed();

    /** The proof without the sets that its rows say enough about. */
    private static ProofRecord needed() {
        ProofRecord whole = ProofRecheckTest.proof(JOB, ProofRecheckTest.A_LOT).rests();
        ProofRecord least = whole;
        for (ProofRecord.Tried tried : whole.sets())
            if (faults(without(least, tried)).isEmpty()) least = without(least, tried);
        return least;
    }

    private static List<String> faults(ProofRecord record) {
        return new ProofCheck(JOB).faults(record);
    }

    private static ProofRecord without(ProofRecord record, ProofRecord.Tried tried) {
        List<ProofRecord.Tried> others = new ArrayList<>(record.sets());
        others.remove(tried);
        return new ProofRecord(record.rows(), others, record.money());
    }

    /** The sound record with a change made in just one node of the sort, for every node of it. */
    private static <T extends ProofRecord.Node> void eachSpoiled(
            Class<T> sort, Function<T, ProofRecord.Node> change, String fault) {
        int spoiled = 0;
        for (ProofRecord.Tried tried : SOUND.sets()) {
            List<ProofRecord.Node> roots = changed(tried.root(), sort, change);
            for (ProofRecord.Node root : roots) {
                List<ProofRecord.Tried> sets = new ArrayList<>(SOUND.sets());
                sets.set(sets.indexOf(tried), new ProofRecord.Tried(tried.many(), root));
                assertThat(faults(new ProofRecord(SOUND.rows(), sets, SOUND.money())))
                        .anyMatch(found -> found.contains(fault));
                spoiled++;
            }
        }
        assertThat(spoiled).isPositive();
    }

    private static <T extends ProofRecord.Node> List<ProofRecord.Node> changed(
            ProofRecord.Node node, Class<T> sort, Function<T, ProofRecord.Node> change) {
        List<ProofRecord.Node> all = new ArrayList<>();
        if (sort.isInstance(node)) all.add(change.apply(sort.cast(node)));
        if (!(node instanceof ProofRecord.Fork fork)) return all;
        for (int w = 0; w < fork.ways().size(); w++) {
            for (ProofRecord.Node other : changed(fork.ways().get(w).node(), sort, change)) {
                List<ProofRecord.Way> ways = new ArrayList<>(fork.ways());
                ways.set(w, new ProofRecord.Way(ways.get(w).branches(), other));
                all.add(new ProofRecord.Fork(ways));
            }
        }
        return all;
    }

    /** The fork with one way changed, or left out where none comes of it: the first that may be taken at all. */
    private static ProofRecord.Fork with(
            ProofRecord.Fork fork, Function<ProofRecord.Way, List<ProofRecord.Way>> change) {
        List<ProofRecord.Way> ways = new ArrayList<>(fork.ways());
        int open = 0;
        while (ways.get(open).node() == ProofRecord.Leaf.TORN) open++;
        ways.addAll(change.apply(ways.remove(open)));
        return new ProofRecord.Fork(ways);
    }

    @Test
    void a_sound_record_is_not_refused() {
        assertThat(SOUND.sets()).isNotEmpty();
        assertThat(faults(SOUND)).isEmpty();
    }

    @Test
    void a_row_that_needs_one_coin_more_is_refused() {
        for (int r = 0; r < SOUND.rows().size(); r++) {
            List<ProofRecord.Row> rows = new ArrayList<>(SOUND.rows());
            ProofRecord.Row row = rows.get(r);
            rows.set(r, new ProofRecord.Row(row.prices(), row.need() + 1, row.worths()));
            assertThat(faults(new ProofRecord(rows, SOUND.sets(), SOUND.money())))
                    .anyMatch(fault -> fault.contains("is needed; the bill comes to"));
        }
    }

    @Test
    void a_row_with_another_price_is_refused() {
        for (int r = 0; r < SOUND.rows().size(); r++) {
            List<ProofRecord.Row> rows = new ArrayList<>(SOUND.rows());
            long[] prices = rows.get(r).prices().clone();
            prices[r % prices.length]++;
            rows.set(
                    r,
                    new ProofRecord.Row(prices, rows.get(r).need(), rows.get(r).worths()));
            assertThat(faults(new ProofRecord(rows, SOUND.sets(), SOUND.money())))
                    .isNotEmpty();
        }
    }

    @Test
    void a_row_on_which_a_board_brings_in_less_than_a_layout_is_refused() {
        ProofCheck check = new ProofCheck(JOB);
        for (int r = 0; r < SOUND.rows().size(); r++) {
            ProofRecord.Row row = SOUND.rows().get(r);
            long worth = check.worth(0, row.prices(), check.wanted);
            if (worth == 0) continue; // all prices are
            List<ProofRecord.Row> rows = new ArrayList<>(SOUND.rows());
            long[] worths = row.worths().clone();
            worths[0] = worth - 1;
            rows.set(r, new ProofRecord.Row(row.prices(), row.need(), worths));
            assertThat(faults(new ProofRecord(rows, SOUND.sets(), SOUND.money())))
                    .anyMatch(fault -> fault.contains("a layout brings"));
        }
    }

    @Test
    void a_floor_above_the_optimum_is_refused() {
        long more = SOUND.money() / 1_000;
        assertThat(faults(new ProofRecord(SOUND.rows(), SOUND.sets(), SOUND.money() + more)))
                .isNotEmpty();
    }

    @Test
    void a_proof_that_left_out_a_set_is_refused() {
        for (ProofRecord.Tried tried : SOUND.sets())
            assertThat(faults(without(SOUND, tried)))
                    .contains("set " + Arrays.toString(tried.many()) + " breaks no row and was not tried");
    }

    @Test
    void a_leaf_left_open_is_refused() {
        eachSpoiled(ProofRecord.Closed.class, leaf -> ProofRecord.Leaf.OPEN, "left open");
        eachSpoiled(ProofRecord.Barred.class, leaf -> ProofRecord.Leaf.OPEN, "left open");
    }

    @Test
    void a_leaf_that_says_its_branches_are_torn_is_refused() {
        eachSpoiled(ProofRecord.Closed.class, leaf -> ProofRecord.Leaf.TORN, "nothing is torn");
    }

    @Test
    void a_fork_without_one_of_its_ways_is_refused() {
        eachSpoiled(ProofRecord.Fork.class, fork -> with(fork, way -> List.of()), "no way for");
    }

    @Test
    void a_branch_one_further_is_refused() {
        eachSpoiled(
                ProofRecord.Fork.class,
                fork -> with(fork, way -> {
                    List<Branch> branches = new ArrayList<>(way.branches());
                    branches.add(further(branches.remove(branches.size() - 1)));
                    return List.of(new ProofRecord.Way(branches, way.node()));
                }),
                "no way for");
    }

    private static Branch further(Branch branch) {
        int many = branch.atLeast() ? branch.many() + 1 : branch.many() - 1;
        return new Branch(branch.board(), branch.partType(), branch.atLeast(), many);
    }

    @Test
    void a_leaf_closed_by_no_prices_is_refused() {
        eachSpoiled(
                ProofRecord.Closed.class,
                leaf -> new ProofRecord.Closed(
                        new long[leaf.prices().length], leaf.branches(), new long[leaf.more().length], leaf.worths()),
                " lacks, ");
    }

    @Test
    void a_leaf_closed_by_prices_above_what_its_boards_are_worth_is_refused() {
        eachSpoiled(
                ProofRecord.Closed.class,
                leaf -> new ProofRecord.Closed(
                        Arrays.stream(leaf.prices())
                                .map(price -> price + (1L << 44))
                                .toArray(),
                        leaf.branches(),
                        leaf.more(),
                        leaf.worths()),
                "a layout brings");
    }

    @Test
    void a_leaf_closed_by_branches_that_do_not_lead_there_is_refused() {
        eachSpoiled(
                ProofRecord.Closed.class,
                leaf -> new ProofRecord.Closed(
                        leaf.prices(),
                        leaf.branches().stream().map(ProofTeethTest::further).toList(),
                        leaf.more(),
                        leaf.worths()),
                "does not lead here");
    }

    @Test
    void a_board_that_gives_what_it_is_said_not_to_give_is_refused() {
        eachSpoiled(
                ProofRecord.Barred.class,
                leaf -> {
                    int[] fewer = leaf.made().clone();
                    int k = IntStream.range(0, fewer.length)
                            .filter(i -> fewer[i] > 0)
                            .findFirst()
                            .orElseThrow();
                    fewer[k]--;
                    return new ProofRecord.Barred(leaf.board(), fewer);
                },
                "the board gives all of");
    }
}
