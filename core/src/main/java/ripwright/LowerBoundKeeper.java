package ripwright;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.PrintedBound;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.proof.OptimalityProof;
import ripwright.internal.search.Incumbent;
import ripwright.internal.search.Workers;
import ripwright.measure.Money;

/** The floor under a job's plans: found on a thread of its own beside the search, and raised by a proof on small jobs. */
final class LowerBoundKeeper {
    private static final int MOST_PARTS_PROVEN = 110;
    private static final int QUESTIONS = 20_000; // of the floor, and again of the proof, where no time is given
    private static final int QUESTIONS_WITH_MONEY = 300; // of the floor; offcuts and labor make each longer
    private static final int QUESTIONS_OF_PROOF_WITH_MONEY = 60;
    private static final int FEW_QUESTIONS = 100; // of a proof where recuts are counted
    private static final int FEW_QUESTIONS_WITH_MONEY = 6;

    private final JobNumbers numbers;
    private final Clock clock;
    private final boolean counted; // whether recuts are counted, so that no clock is to matter
    private final Workers workers;
    private final Future<LowerBound> wholeBill;
    private final PrintedBound printed;
    private volatile BigDecimal known = BigDecimal.ZERO; // the highest floor so far, to the cent
    private volatile BigDecimal reached = BigDecimal.ZERO; // what the best answer costs that makes the whole bill, or 0
    private volatile @Nullable Money raised; // by a proof

    LowerBoundKeeper(JobNumbers numbers, Clock clock, Options options, Workers workers) {
        this.numbers = numbers;
        this.clock = clock;
        this.workers = workers;
        printed = new PrintedBound(numbers.job());
        counted = options.mostRecuts() > 0;
        BooleanSupplier end = clock.limited() ? clock.until(clock.seconds()) : patience(questionsOfFloor());
        wholeBill = workers.begin(() -> LowerBound.ofWholeBill(
                numbers, () -> end.getAsBoolean() || met(), clock.until(clock.seconds()), this::raise));
    }

    /** Where no time is given it is counted how often is asked whether to end: the same on every machine. */
    private BooleanSupplier patience(int questions) {
        return new WorkBudget(clock.until(clock.seconds()), questions);
    }

    private int questionsOfFloor() {
        return numbers.boardsAlone() ? QUESTIONS : QUESTIONS_WITH_MONEY;
    }

    private int questionsOfProof() {
        if (counted) return numbers.boardsAlone() ? FEW_QUESTIONS : FEW_QUESTIONS_WITH_MONEY;
        return numbers.boardsAlone() ? QUESTIONS : QUESTIONS_OF_PROOF_WITH_MONEY;
    }

    /** Whether a proof is worth trying. */
    boolean provable() {
        return wanted() <= MOST_PARTS_PROVEN;
    }

    int wanted() {
        return Arrays.stream(numbers.wanted()).sum();
    }

    /** The floor under plans that make the whole bill, once it is found. */
    Optional<LowerBound> found() {
        return wholeBill.isDone() ? Optional.of(awaited()) : Optional.empty();
    }

    /** The same, waited for. */
    LowerBound awaited() {
        return workers.result(wholeBill);
    }

    private void raise(Money lowerBound) {
        known = printed.of(lowerBound).roundedDown();
    }

    /** The highest that is known of it so far, to the cent; 0 while nothing is. */
    BigDecimal known() {
        return known;
    }

    /** The search is at an answer that costs so much and makes the whole bill; 0 when it begins anew. */
    void reached(BigDecimal cost) {
        reached = cost;
    }

    /** Whether that answer costs no more than what is known of the floor. */
    boolean met() {
        return reached.signum() > 0 && reached.compareTo(known) <= 0;
    }

    private BooleanSupplier endOfProof(double share) {
        return clock.limited() && !counted ? clock.until(clock.seconds() * share) : patience(questionsOfProof());
    }

    /**
     * Begins on a thread of its own: the cheapest answer where a proof, which leaves test blanks out, finds one that is cheaper; else the same. Raises the
     * floor as far as it comes in that share of the time given.
     */
    Future<Incumbent> proven(Incumbent best, double share) {
        boolean worthwhile =
                provable() && best.blanks() == wanted() && best.cost().compareTo(known()) > 0;
        if (!worthwhile) return CompletableFuture.completedFuture(best);
        LowerBound lowerBound = awaited();
        return workers.begin(() -> proven(best, lowerBound, endOfProof(share)));
    }

    private Incumbent proven(Incumbent best, LowerBound lowerBound, BooleanSupplier end) {
        Money net = Money.of(BigDecimal.valueOf(best.net(), 6));
        OptimalityProof.Answer answer = new OptimalityProof(lowerBound, end, clock.until(clock.seconds())).under(net);
        raised = answer.bound();
        if (answer.layouts().isEmpty()) return best;
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[numbers.boards()];
        for (PricedLayout layout : answer.layouts()) layouts[layout.layout().board()] = layout;
        return Incumbent.of(numbers, layouts);
    }

    /** The floor under all plans that make as much as that answer. */
    Money under(Incumbent best) {
        return printed.of(best.blanks() < wanted() ? underSome(best.feet()) : underAll());
    }

    private Money underSome(long feet) {
        if (clock.stopped()) return Money.ZERO;
        double late = clock.elapsed() + 0.1 * clock.seconds();
        BooleanSupplier limit = () -> clock.stopped() || (clock.limited() && clock.elapsed() > late);
        BooleanSupplier end = clock.limited() ? limit : patience(questionsOfFloor());
        return workers.here(() -> LowerBound.ofFeet(numbers, feet, end, limit).value());
    }

    private Money underAll() {
        Money found = awaited().value();
        return raised == null || found.compareTo(raised) > 0 ? found : raised;
    }
}
