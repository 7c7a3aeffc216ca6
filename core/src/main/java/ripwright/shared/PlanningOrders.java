package ripwright.shared;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.plan.Plan;

/** Ways to plan jobs from one stack, one job after the other; what two ways begin with is planned once. */
final class PlanningOrders {
    private final List<Job> jobs;
    private final Options options;
    private final double time; // share of a job's seconds for each search
    private final SharedStock stock;
    private final Map<List<Integer>, SharedPlan.Turn> byItself = new HashMap<>(); // by the jobs up to this one
    private final Map<List<Integer>, Optional<SharedPlan.Turn>> inView = new HashMap<>();

    PlanningOrders(List<Job> jobs, Options options, double time) {
        this.jobs = List.copyOf(jobs);
        this.options = options;
        this.time = time;
        stock = SharedStock.of(jobs);
    }

    /** Each job planned for itself, in that order. */
    SharedPlan oneByOne(List<Integer> order) {
        List<SharedPlan.Turn> turns = new ArrayList<>();
        List<Job> leftOut = new ArrayList<>();
        SharedStock left = stock;
        for (int i = 0; i < order.size(); i++) {
            if (left.isEmpty()) {
                leftOut.add(jobs.get(order.get(i)));
                continue;
            }
            SharedPlan.Turn turn = byItself(order.subList(0, i + 1), left);
            turns.add(turn);
            left = left.after(turn.plan());
        }
        return new SharedPlan(turns, leftOut);
    }

    private SharedPlan.Turn byItself(List<Integer> upTo, SharedStock left) {
        SharedPlan.Turn known = byItself.get(upTo);
        if (known != null) return known;
        SharedPlan.Turn turn = planned(upTo.get(upTo.size() - 1), left);
        byItself.put(List.copyOf(upTo), turn);
        return turn;
    }

    private SharedPlan.Turn planned(int place, SharedStock left) {
        Job job = left.job(jobs.get(place), time);
        return new SharedPlan.Turn(place, job, Planner.plan(job, options));
    }

    /** Each job but the last cut as a plan for it and all after it would have it; empty when that does not work out. */
    Optional<SharedPlan> inView(List<Integer> order) {
        List<SharedPlan.Turn> turns = new ArrayList<>();
        SharedStock left = stock;
        for (int i = 0; i + 1 < order.size(); i++) {
            Optional<SharedPlan.Turn> turn = inView(order.subList(0, i + 1), order.subList(i + 1, order.size()), left);
            if (turn.isEmpty()) return Optional.empty();
            turns.add(turn.get());
            left = left.after(turn.get().plan());
            if (left.isEmpty()) return Optional.empty();
        }
        turns.add(planned(order.get(order.size() - 1), left));
        return Optional.of(new SharedPlan(turns, List.of()));
    }

    private Optional<SharedPlan.Turn> inView(List<Integer> upTo, List<Integer> after, SharedStock left) {
        Optional<SharedPlan.Turn> known = inView.get(upTo);
        if (known != null) return known;
        int place = upTo.get(upTo.size() - 1);
        Job job = left.job(jobs.get(place), time);
        List<Job> those = new ArrayList<>(List.of(job));
        for (int later : after) those.add(left.job(jobs.get(later), time));
        JointJob joint = new JointJob(those);
        Plan plan = Planner.plan(joint.job(), options);
        Optional<SharedPlan.Turn> turn =
                new FirstJobOnly(job, plan, options).plan().map(first -> new SharedPlan.Turn(place, job, first));
        inView.put(List.copyOf(upTo), turn);
        return turn;
    }
}
