package ripwright;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import ripwright.bound.Floor;
import ripwright.bound.Proof;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.PricedLayout;
import ripwright.solve.Champion;

/** The floor under a job's plans: found on a thread of its own beside the search, and raised by a proof on small jobs. */
final class Underneath {
    private static final int MOST_PARTS_PROVEN = 60;
    private static final double SECONDS = 6; // for the floor, and again for the proof, where no time is given

    private final Job job;
    private final JobNumbers numbers;
    private final Clock clock;
    private final boolean counted; // whether recuts are counted, so that no clock is to matter
    private final CompletableFuture<Floor> wholeBill;
    private @Nullable Money raised; // by a proof

    Underneath(JobNumbers numbers, Clock clock, Options options) {
        this.numbers = numbers;
        this.clock = clock;
        job = numbers.job();
        counted = options.mostRecuts() > 0;
        wholeBill = CompletableFuture.supplyAsync(
                () -> Floor.ofWholeBill(numbers, clock.until(end(0))), Underneath::inBackground);
    }

    private static void inBackground(Runnable work) {
        Thread thread = new Thread(work, "ripwright-floor");
        thread.setDaemon(true);
        thread.start();
    }

    private double end(double begin) {
        if (counted) return begin + 10 * SECONDS;
        return clock.limited() ? clock.seconds() : begin + SECONDS;
    }

    /** Whether a proof is worth trying. */
    boolean provable() {
        return wanted() <= MOST_PARTS_PROVEN;
    }

    int wanted() {
        return Arrays.stream(numbers.wanted()).sum();
    }

    /** The floor under plans that make the whole bill, as far as it is known now. */
    BigDecimal known() {
        if (!wholeBill.isDone() || wholeBill.isCompletedExceptionally()) return BigDecimal.ZERO;
        return printed(wholeBill.join().value()).roundedDown();
    }

    /** The cheapest answer, where a proof finds one that is cheaper; else the same. Raises the floor as far as it comes. */
    Champion proven(Champion best) {
        if (!provable() || best.blanks() < wanted() || best.cost().compareTo(known()) <= 0) return best;
        Money net = Money.of(BigDecimal.valueOf(best.net(), 6));
        Proof.Answer answer = new Proof(wholeBill.join(), clock.until(end(clock.elapsed()))).under(net);
        raised = answer.bound();
        if (answer.layouts().isEmpty()) return best;
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[numbers.boards()];
        for (PricedLayout layout : answer.layouts()) layouts[layout.layout().board()] = layout;
        return Champion.of(numbers, layouts);
    }

    /** The floor under all plans that make as much as that answer. */
    Money under(Champion best) {
        if (best.blanks() < wanted()) {
            double end = clock.limited() ? clock.elapsed() + 0.1 * clock.seconds() : end(clock.elapsed());
            return printed(Floor.ofFeet(numbers, best.feet(), () -> clock.elapsed() > end)
                    .value());
        }
        Money found = wholeBill.join().value();
        return printed(raised == null || found.compareTo(raised) > 0 ? found : raised);
    }

    /** Where only stock costs, what is printed of it is rounded half up, and so may be what is under it. */
    private Money printed(Money floor) {
        boolean stockAlone = job.labor().isEmpty() && job.salvage().signum() == 0;
        return stockAlone ? Money.of(floor.rounded()) : floor;
    }
}
