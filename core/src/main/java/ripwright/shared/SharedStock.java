package ripwright.shared;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.stock.Species;

/**
 * The boards that several jobs share, at one moment.
 *
 * @param stack the boards on hand
 * @param rack the offcuts on the rack, those of jobs planned before at its end
 * @param prices money per board foot of a species, in any of the jobs
 */
record SharedStock(List<Board> stack, List<Board> rack, Map<Species, BigDecimal> prices) {
    /** All boards of those jobs, each once. */
    static SharedStock of(List<Job> jobs) {
        Map<String, Board> stack = new LinkedHashMap<>();
        Map<String, Board> rack = new LinkedHashMap<>();
        Map<Species, BigDecimal> prices = new HashMap<>();
        for (Job job : jobs) {
            for (Board board : job.stack()) stack.putIfAbsent(board.id(), board);
            for (Board board : job.rack()) rack.putIfAbsent(board.id(), board);
            job.prices().forEach(prices::putIfAbsent);
        }
        return new SharedStock(List.copyOf(stack.values()), List.copyOf(rack.values()), prices);
    }

    /** Whether there is nothing left to cut. */
    boolean isEmpty() {
        return stack.isEmpty() && rack.isEmpty();
    }

    /** That job with these boards, searched for that share of its time. */
    Job job(Job job, double time) {
        Limits limits = job.limits();
        Optional<BigDecimal> seconds = limits.seconds()
                .map(all -> all.multiply(BigDecimal.valueOf(time)).setScale(3, RoundingMode.UP));
        return job.toBuilder()
                .prices(prices)
                .stack(stack)
                .rack(rack)
                .limits(new Limits(seconds, limits.seed(), limits.threads()))
                .build();
    }

    /** What is there once that plan is cut: without the boards it consumes, with the offcuts it leaves. */
    SharedStock after(Plan plan) {
        Set<String> consumed = new HashSet<>();
        for (CutBoard board : plan.boards()) consumed.add(board.board());
        List<Board> left = new ArrayList<>(rack);
        left.removeIf(board -> consumed.contains(board.id()));
        for (Offcut offcut : plan.offcuts()) left.add(offcut.piece());
        List<Board> whole =
                stack.stream().filter(board -> !consumed.contains(board.id())).toList();
        return new SharedStock(BoardCopies.renumbered(whole), List.copyOf(left), prices);
    }
}
