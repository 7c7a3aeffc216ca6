package ripwright.shared;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import ripwright.Options;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;

/**
 * The best way to plan jobs from one stack that several orders bring, each tried with every job planned for itself and
 * in view of those after it. Every way is judged by its whole plans, replayed: by the wood of the parts made, then by cost.
 * No floor is told under what all cost together, as one job's offcuts may be cut in more ways than one plan can; each plan
 * has its own.
 */
final class BestOrder {
    private static final int EVERY_ORDER = 3; // of so many jobs
    private static final double TIMES = 4; // the jobs' own time

    private final List<Job> jobs;
    private final Options options;
    private final List<List<Integer>> orders;
    private final PlanningOrders ways;

    BestOrder(List<Job> jobs, Options options) {
        this.jobs = jobs;
        this.options = options;
        orders = orders();
        ways = new PlanningOrders(jobs, options, Math.min(1, TIMES * jobs.size() / searches()));
    }

    SharedPlan best() {
        SharedPlan best = ways.oneByOne(orders.get(0));
        for (List<Integer> order : orders) {
            if (options.cancellation().getAsBoolean()) return best;
            best = better(best, ways.oneByOne(order));
            Optional<SharedPlan> inView = jobs.size() > 1 ? ways.inView(order) : Optional.empty();
            if (inView.isPresent()) best = better(best, inView.get());
        }
        return best;
    }

    private static SharedPlan better(SharedPlan one, SharedPlan other) {
        int more = other.made().compareTo(one.made());
        return more > 0 || (more == 0 && other.net().compareTo(one.net()) < 0) ? other : one;
    }

    /** Every order of a few jobs; of many as they come, the other way round, and by the wood they need. */
    private List<List<Integer>> orders() {
        List<Integer> given = IntStream.range(0, jobs.size()).boxed().toList();
        if (jobs.size() <= EVERY_ORDER) return permutations(given);
        Comparator<Integer> wood = Comparator.comparing(place -> wood(jobs.get(place)));
        Set<List<Integer>> orders = new LinkedHashSet<>();
        orders.add(given);
        orders.add(given.stream().sorted(wood.reversed()).toList());
        orders.add(given.stream().sorted(wood).toList());
        List<Integer> reversed = new ArrayList<>(given);
        Collections.reverse(reversed);
        orders.add(List.copyOf(reversed));
        return List.copyOf(orders);
    }

    private static BoardFeet wood(Job job) {
        BoardFeet wood = BoardFeet.ZERO;
        for (Part part : job.parts()) wood = wood.plus(part.boardFeet().times(part.count()));
        return wood;
    }

    private static List<List<Integer>> permutations(List<Integer> places) {
        if (places.isEmpty()) return List.of(List.of());
        List<List<Integer>> all = new ArrayList<>();
        for (Integer first : places) {
            List<Integer> rest = new ArrayList<>(places);
            rest.remove(first);
            for (List<Integer> after : permutations(rest)) {
                List<Integer> order = new ArrayList<>(List.of(first));
                order.addAll(after);
                all.add(List.copyOf(order));
            }
        }
        return all;
    }

    /** How many searches all ways take: what they begin with alike is searched once. */
    private int searches() {
        Set<List<Integer>> byItself = new HashSet<>();
        Set<List<Integer>> inView = new HashSet<>();
        for (List<Integer> order : orders) {
            for (int i = 1; i <= order.size(); i++) byItself.add(order.subList(0, i));
            for (int i = 1; i < order.size(); i++) inView.add(order.subList(0, i));
        }
        return byItself.size() + inView.size() + orders.size();
    }
}
