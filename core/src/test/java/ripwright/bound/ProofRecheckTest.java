package ripwright.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.Coins;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Layout;
import ripwright.pattern.PricedLayout;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.LayoutCheck;
import ripwright.testing.LayoutCost;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Every floor that a proof gives, gone over from its rows and columns by {@link ProofCheck}; and that has teeth. */
class ProofRecheckTest {
    private static final Money A_LOT = Money.of(new BigDecimal("10000"));
    private static final Money GRAIN = Money.of(new BigDecimal("0.000101")); // what a proof does not tell apart
    private static final int QUESTIONS = 2_000;
    private static final int QUESTIONS_WITH_MONEY = 60; // such proofs end unevenly late

    private static Job plain(SplittableRandom random, int parts, int boards) {
        JobSize size = new JobSize(random.nextInt(3, parts + 1), random.nextInt(1, boards + 1));
        return RandomJobs.random(random, size, Features.NONE);
    }

    private static Proof.Recorded proof(Job job, Money known) {
        boolean money = job.labor().isPresent() || job.salvage().signum() > 0;
        Patience stop = new Patience(() -> false, money ? QUESTIONS_WITH_MONEY : QUESTIONS);
        return new Proof(Floor.ofWholeBill(new JobNumbers(job), () -> false), stop).recorded(known);
    }

    /** Goes over a proof, and whether what it says is what its record says; how many nodes of each sort that took. */
    private static Map<Class<?>, Integer> recheck(Job job, Money known) {
        Proof.Recorded proof = proof(job, known);
        ProofCheck check = new ProofCheck(job);
        assertThat(check.faults(proof.rests())).isEmpty();
        Money below = new Coins(job).money(proof.rests().coins());
        assertThat(proof.answer().bound()).isLessThanOrEqualTo(below.plus(GRAIN));
        List<Layout> layouts =
                proof.answer().layouts().stream().map(PricedLayout::layout).toList();
        if (!layouts.isEmpty()) {
            LayoutCheck cut = new LayoutCheck(job, layouts);
            assertThat(cut.faults()).isEmpty();
            assertThat(cut.complete()).isTrue();
        }
        if (!proof.answer().proven()) return check.seen();
        Money cost = layouts.isEmpty() ? known : new LayoutCost(job, layouts).net();
        assertThat(cost.minus(GRAIN)).isLessThanOrEqualTo(below);
        return check.seen();
    }

    @Test
    void proofs_of_plain_jobs_hold() {
        Map<Class<?>, Integer> seen = new HashMap<>();
        Seeds.each(160, (random, size) -> {
            Job job = plain(random, 18, 8);
            recheck(job, A_LOT).forEach((sort, n) -> seen.merge(sort, n, Integer::sum));
        });
        assertThat(seen)
                .containsKeys(
                        ProofRecord.Fork.class,
                        ProofRecord.Closed.class,
                        ProofRecord.Barred.class,
                        ProofRecord.Leaf.class);
    }

    @Test
    void proofs_of_boards_filled_without_a_rest_hold() {
        Seeds.each(40, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(4, 15), random.nextInt(1, 6));
            Features features = Features.some(random, Feature.TRIMS, Feature.EDGES, Feature.RIPPED);
            Constructed job = ConstructedJobs.constructed(random, drawn, features);
            if (choices(job.job()) > 5_000) return;
            recheck(job.job(), random.nextBoolean() ? A_LOT : job.best());
        });
    }

    private static double choices(Job job) {
        return job.parts().stream().mapToDouble(part -> part.count() + 1).reduce(1, (a, b) -> a * b);
    }

    @Test
    void proofs_hold_whatever_boards_and_parts_are_like() {
        Set<Feature> money = EnumSet.of(Feature.SALVAGE, Feature.LABOR, Feature.SHORT_STOCK);
        Feature[] some = EnumSet.complementOf(EnumSet.copyOf(money)).toArray(Feature[]::new);
        Seeds.each(120, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 13), random.nextInt(1, 6));
            recheck(RandomJobs.random(random, drawn, Features.some(random, some)), A_LOT);
        });
    }

    @Test
    void proofs_hold_where_offcuts_and_labor_count() {
        Feature[] some = {
            Feature.SALVAGE,
            Feature.LABOR,
            Feature.DEFECTS,
            Feature.TRIMS,
            Feature.EDGES,
            Feature.RIPPED,
            Feature.RACK,
            Feature.SPECIES,
            Feature.ROUGH,
            Feature.THICKNESSES,
            Feature.SAW_LIMITS,
            Feature.TOGETHER,
            Feature.SNEAK_UP,
            Feature.EDGE_ALLOWANCE
        };
        Seeds.each(60, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 8), random.nextInt(1, 3));
            recheck(RandomJobs.random(random, drawn, Features.some(random, some), 8), A_LOT);
        });
    }

    /** Crook and taper leave nothing that fetches money of a length at which something turns; without salvage they may. */
    @Test
    void proofs_hold_where_labor_counts_on_crooked_and_tapered_boards() {
        Feature[] some = {Feature.TAPER, Feature.CROOK, Feature.TRIMS, Feature.SAW_LIMITS, Feature.DEFECTS};
        Seeds.each(30, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 7), random.nextInt(1, 4));
            Set<Feature> on = new HashSet<>(Features.some(random, some).on());
            on.add(Feature.LABOR);
            recheck(RandomJobs.random(random, drawn, new Features(on), 8), A_LOT);
        });
    }

    // That it has teeth: one proof with branches, spoiled in every place it rests on.

    private static final Job JOB = plain(new SplittableRandom(146), 21, 9);
    private static final ProofRecord SOUND = needed();

    /** The proof without the sets that its rows say enough about. */
    private static ProofRecord needed() {
        ProofRecord whole = proof(JOB, A_LOT).rests();
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
        return new ProofRecord(record.rows(), others, record.coins());
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
                assertThat(faults(new ProofRecord(SOUND.rows(), sets, SOUND.coins())))
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
            assertThat(faults(new ProofRecord(rows, SOUND.sets(), SOUND.coins())))
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
            assertThat(faults(new ProofRecord(rows, SOUND.sets(), SOUND.coins())))
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
            assertThat(faults(new ProofRecord(rows, SOUND.sets(), SOUND.coins())))
                    .anyMatch(fault -> fault.contains("a layout brings"));
        }
    }

    @Test
    void a_floor_above_the_optimum_is_refused() {
        long more = SOUND.coins() / 1_000;
        assertThat(faults(new ProofRecord(SOUND.rows(), SOUND.sets(), SOUND.coins() + more)))
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
        return new Branch(branch.board(), branch.partKind(), branch.atLeast(), many);
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
                        leaf.branches().stream().map(ProofRecheckTest::further).toList(),
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
