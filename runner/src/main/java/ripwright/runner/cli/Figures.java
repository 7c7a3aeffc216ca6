package ripwright.runner.cli;

import java.math.BigDecimal;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;

/**
 * What a plan comes to, in the figures by which many are compared.
 *
 * @param job the job's name
 * @param made how many parts it makes
 * @param wanted how many are in the bill
 * @param net what it costs
 * @param bound what no plan that makes as much can cost less than
 * @param gap how far it can be from the cheapest
 * @param consumed board feet of the boards it cuts
 * @param yield parts / consumed
 */
record Figures(
        String job,
        int made,
        int wanted,
        BigDecimal net,
        BigDecimal bound,
        BigDecimal gap,
        BigDecimal consumed,
        BigDecimal yield) {
    static Figures of(Plan plan) {
        int made = plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .mapToInt(strip -> strip.blanks().size())
                .sum();
        int missing = plan.shortages().stream().mapToInt(Shortage::count).sum();
        return new Figures(
                plan.job(),
                made,
                made + missing,
                plan.cost().net(),
                plan.cost().bound(),
                plan.cost().gap(),
                plan.tally().consumed(),
                plan.tally().yield());
    }

    boolean complete() {
        return made == wanted;
    }
}
