package ripwright.solve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.bill.Part;
import ripwright.bound.Floor;
import ripwright.bound.Proof;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Layout;
import ripwright.pattern.PricedLayout;
import ripwright.stock.Board;

/**
 * An answer made board by board: the surest of the layouts a floor rests on are kept, the parts that are left are priced
 * again on the boards that are left, and so on; the last few parts go to the proof, which cuts them as cheaply as can be.
 *
 * @see "C. Joncour et al., Column generation based primal heuristics, Electronic Notes in Discrete Mathematics 36 (2010)
 *     695-702; from memory"
 */
final class Dive {
    private static final int MOST_PARTS_FOR_PROOF = 24;
    private static final long NANOSECONDS_FOR_PROOF = 1_000_000_000L; // what it finds by then is good enough
    private static final double SURE = 0.95; // a weight as good as a whole
    private static final double NOISE = 0.25; // against weights from 0 to 1

    private final JobNumbers numbers;
    private final Greedy greedy;
    private final Floor floor;
    private final BooleanSupplier stop;

    Dive(JobNumbers numbers, Greedy greedy, Floor floor, BooleanSupplier stop) {
        this.numbers = numbers;
        this.greedy = greedy;
        this.floor = floor;
        this.stop = stop;
    }

    /** Down to the last part; what could not be priced is cut greedily. */
    Champion answer(Champion known, SplittableRandom random) {
        @Nullable PricedLayout[] kept = new @Nullable PricedLayout[numbers.boards()];
        int[] missing = numbers.wanted();
        Rest rest = Rest.of(numbers, kept, missing);
        Floor here = floor;
        while (!stop.getAsBoolean()) {
            if (Arrays.stream(missing).sum() <= MOST_PARTS_FOR_PROOF) {
                finish(rest, here, known, kept);
                break;
            }
            if (keep(rest, here, kept, missing, random) == 0) break;
            if (Arrays.stream(missing).allMatch(count -> count == 0)) break;
            Rest next = Rest.of(numbers, kept, missing);
            if (next.boards.isEmpty()) break;
            rest = next;
            here = Floor.ofWholeBill(new JobNumbers(rest.job()), stop);
        }
        return greedy.completed(kept, random);
    }

    /** Keeps every sure layout, and the surest one whatever it weighs; how many. */
    private static int keep(
            Rest rest, Floor here, @Nullable PricedLayout[] kept, int[] missing, SplittableRandom random) {
        record Ranked(PricedLayout layout, double weight, double rank) {}
        List<Ranked> ranked = new ArrayList<>();
        for (Floor.WeightedLayout one : here.layouts()) {
            if (one.weight() < 1e-6) continue;
            double noise = NOISE * random.nextDouble();
            ranked.add(new Ranked(one.layout(), one.weight(), one.weight() + noise));
        }
        ranked.sort(Comparator.comparingDouble(Ranked::rank).reversed());
        int count = 0;
        for (Ranked one : ranked) {
            if (count > 0 && one.weight() < SURE) continue;
            PricedLayout layout = rest.inWhole(one.layout());
            int board = layout.layout().board();
            if (kept[board] != null || !Rounding.taken(layout, missing)) continue;
            kept[board] = layout;
            count++;
        }
        return count;
    }

    private void finish(Rest rest, Floor here, Champion known, @Nullable PricedLayout[] kept) {
        long spent = 0;
        for (PricedLayout layout : kept) if (layout != null) spent += layout.net();
        if (known.net() <= spent) return;
        Money left = Money.of(BigDecimal.valueOf(known.net() - spent, 6));
        long begun = System.nanoTime();
        BooleanSupplier enough = () -> stop.getAsBoolean() || System.nanoTime() - begun > NANOSECONDS_FOR_PROOF;
        for (PricedLayout layout : new Proof(here, enough).under(left).layouts()) {
            PricedLayout whole = rest.inWhole(layout);
            kept[whole.layout().board()] = whole;
        }
    }

    /** The parts and boards that are left, as a job of their own. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Rest(JobNumbers whole, List<Integer> parts, List<Integer> boards, int[] missing) {
        static Rest of(JobNumbers whole, @Nullable PricedLayout[] kept, int[] missing) {
            List<Integer> parts = new ArrayList<>();
            for (int p = 0; p < missing.length; p++) if (missing[p] > 0) parts.add(p);
            List<Integer> boards = new ArrayList<>();
            for (int b = 0; b < kept.length; b++) if (kept[b] == null) boards.add(b);
            return new Rest(whole, parts, boards, missing.clone());
        }

        Job job() {
            Job all = whole.job();
            List<Board> stack = new ArrayList<>();
            List<Board> rack = new ArrayList<>();
            for (int b : boards) (all.board(b).fromRack() ? rack : stack).add(all.board(b));
            List<Part> bill = new ArrayList<>();
            for (int p : parts) bill.add(all.parts().get(p).times(missing[p]));
            return new Job(
                    all.name(),
                    all.units(),
                    all.saw(),
                    all.testRip(),
                    all.keep(),
                    all.prices(),
                    all.salvage(),
                    all.labor(),
                    stack,
                    rack,
                    bill,
                    all.limits());
        }

        /** The layout of a board of the rest, in the numbers of the whole job. */
        PricedLayout inWhole(PricedLayout layout) {
            List<Layout.Section> sections = layout.layout().sections().stream()
                    .map(section -> new Layout.Section(
                            section.from(),
                            section.to(),
                            section.referenceEdge(),
                            section.edgeLoss(),
                            section.strips().stream().map(this::inWhole).toList()))
                    .toList();
            return whole.priced(new Layout(boards.get(layout.layout().board()), sections));
        }

        private Layout.Strip inWhole(Layout.Strip strip) {
            return new Layout.Strip(
                    strip.width(),
                    strip.blanks().stream()
                            .map(blank -> new Layout.Blank(parts.get(blank.part()), blank.from()))
                            .toList());
        }
    }
}
