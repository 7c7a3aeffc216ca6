package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobBuilder;
import ripwright.testing.JobSize;
import ripwright.testing.Printed;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/**
 * Plans that go wrong, are resumed, and go wrong again, each read back from its file: every link holds, and whatever happens
 * every part of the first bill is made, to be made, or short, and what belongs together is of one board of the first stack.
 */
class ChainTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(20);
    private static final Options LONGER_SEARCH = Options.defaults().withMostRecuts(100);
    private static final int CHAINS = Integer.getInteger("ripwright.chains", 70); // some 200 resumes

    @Test
    void through_any_chain_of_reports_every_part_is_made_or_short_and_groups_stay_together() {
        Seeds.each(CHAINS, 3 * CHAINS / 4, (random, size) -> {
            Job job = job(random, size);
            return new Chain(random, job).run(2 + random.nextInt(3));
        });
    }

    /** Groups more often than elsewhere, settings tested up to three times, lengths in the other unit, next to nothing left. */
    private static Job job(SplittableRandom random, int size) {
        List<Feature> some = new ArrayList<>(Features.some(random).on());
        if (random.nextBoolean()) some.add(Feature.TOGETHER);
        JobSize grown = new JobSize(random.nextInt(1, size + 3), random.nextInt(1, 2 + size / 3));
        Job job = RandomJobs.random(random, grown, Features.of(some.toArray(Feature[]::new)));
        Unit other = job.units() == Unit.INCH ? Unit.MILLIMETER : Unit.INCH;
        List<Part> parts = new ArrayList<>();
        for (Part part : job.parts()) parts.add(random.nextInt(4) == 0 ? filling(random, part, job) : part);
        JobBuilder drawn = JobBuilder.like(job, job.name(), job.rack(), parts);
        if (random.nextInt(3) == 0) drawn.units(other);
        return drawn.testRip(new TestRip(job.testRip().length(), random.nextInt(4)))
                .build();
    }

    /** The part as long as some board is between its trims, or shorter by next to nothing. */
    private static Part filling(SplittableRandom random, Part part, Job job) {
        Board board = job.boards().get(random.nextInt(job.boards().size()));
        long clear = board.length().nanometers()
                - board.endTrim().near().nanometers()
                - board.endTrim().far().nanometers()
                - part.sneakUp().nanometers();
        int cuts = 1 + random.nextInt(3);
        long kerfs = (cuts - 1L) * job.saw().crosscutKerf().nanometers();
        long length = (clear - kerfs) / cuts - (long) Math.pow(10, random.nextDouble(4.4));
        return length < 25_400_000
                ? part
                : part.toBuilder().length(new Length(length)).build();
    }

    /** A part in millimeters, a plan in inches: its file's six decimals are off by up to 13 nm. */
    @Test
    void what_fits_to_the_nanometer_still_does_once_the_plan_is_read_back() {
        Seeds.each(60, 20, (random, size) -> {
            Features features = Features.some(random).without(Feature.OFF_GRID, Feature.TRIES, Feature.SHORT_STOCK);
            List<Feature> some = new ArrayList<>(features.on());
            some.add(Feature.MILLIMETERS);
            JobSize grown = new JobSize(random.nextInt(1, size + 3), random.nextInt(1, 2 + size / 3));
            Job drawn = RandomJobs.random(random, grown, Features.of(some.toArray(Feature[]::new)));
            Job job = JobBuilder.like(drawn).units(Unit.INCH).build();
            Plan plan = Planner.plan(job, LONGER_SEARCH);
            List<Integer> done = plan
                    .steps()
                    .subList(0, random.nextInt(plan.steps().size() + 1))
                    .stream()
                    .map(Step::n)
                    .toList();
            Report report = new Report(job.name(), done, List.of(), Optional.empty());
            Map<String, Integer> missing = shortOf(job, plan, report);
            assertThat(shortOf(job, Printed.plan(plan), report)).isEqualTo(missing);
            return !missing.isEmpty();
        });
    }

    private static Map<String, Integer> shortOf(Job job, Plan plan, Report report) {
        Map<String, Integer> missing = new HashMap<>();
        new Resume(job, plan, report)
                .planned(left -> Planner.plan(left, LONGER_SEARCH))
                .ifPresent(rest ->
                        rest.plan().shortages().forEach(shortage -> missing.put(shortage.part(), shortage.count())));
        return missing;
    }

    private static final class Chain {
        private final SplittableRandom random;
        private final Job first;
        private final Map<String, Integer> made = new HashMap<>();
        private final Map<String, Set<String>> boardsOfGroup = new HashMap<>(); // of blanks made so far
        private Map<String, String> origin = new HashMap<>(); // board of the job underway -> board of the first
        private Job job;
        private Plan plan;
        private ChainIds ids;

        Chain(SplittableRandom random, Job first) {
            this.random = random;
            this.first = first;
            job = first;
            plan = Printed.plan(Planner.plan(first, SHORT_SEARCH));
            ids = ChainIds.of(first, plan);
            for (Board board : first.boards()) origin.put(board.id(), board.id());
        }

        /** Whether there was anything left to cut, once at least. */
        boolean run(int resumes) {
            holds(plan.boards(), plan.shortages());
            int n = 0;
            for (; n < resumes && resumed(); n++) holds(plan.boards(), plan.shortages());
            return n > 0;
        }

        /** Whether there is anything left to cut. */
        private boolean resumed() {
            Report report = new RandomMishap(random, job, plan).report();
            Resume resume = new Resume(job, plan, report, ids);
            for (SizeNow piece : resume.pieces())
                if (piece.made()) made(piece.planned().name(), origin(piece.board()));
            Optional<Resumed> rest = resume.planned(left -> Planner.plan(left, SHORT_SEARCH));
            if (rest.isEmpty()) {
                holds(List.of(), resume.shortages());
                return false;
            }
            assertThat(ChainReplay.faults(job, plan, report, rest.get(), ids)).isEmpty();
            ids = rest.get().ids();
            Map<String, String> next = new HashMap<>();
            for (SizeNow piece : resume.pieces()) next.put(piece.id(), origin(piece.board()));
            origin = next;
            job = rest.get().job();
            plan = Printed.plan(rest.get().plan());
            return true;
        }

        private String origin(String board) {
            return origin.getOrDefault(board, "no board: " + board);
        }

        private void made(String blank, String board) {
            for (CutBoard cut : plan.boards())
                for (Blank one : blanks(cut))
                    if (one.id().equals(blank)) {
                        made.merge(one.part(), 1, Integer::sum);
                        group(one.part())
                                .ifPresent(group -> boardsOfGroup
                                        .computeIfAbsent(group, key -> new TreeSet<>())
                                        .add(board));
                    }
        }

        private Optional<String> group(String part) {
            return first.parts().stream()
                    .filter(one -> one.name().equals(part))
                    .findFirst()
                    .flatMap(Part::together);
        }

        private static List<Blank> blanks(CutBoard cut) {
            return cut.sections().stream()
                    .flatMap(section -> section.strips().stream())
                    .flatMap(strip -> strip.blanks().stream())
                    .toList();
        }

        private void holds(List<CutBoard> toBeCut, List<Shortage> shortages) {
            Map<String, Integer> all = new HashMap<>(made);
            Map<String, Set<String>> boards = new HashMap<>();
            boardsOfGroup.forEach((group, from) -> boards.put(group, new TreeSet<>(from)));
            for (CutBoard cut : toBeCut)
                for (Blank blank : blanks(cut)) {
                    all.merge(blank.part(), 1, Integer::sum);
                    group(blank.part())
                            .ifPresent(group -> boards.computeIfAbsent(group, key -> new TreeSet<>())
                                    .add(origin(cut.board())));
                }
            for (Shortage shortage : shortages) all.merge(shortage.part(), shortage.count(), Integer::sum);
            Map<String, Integer> due = new HashMap<>();
            for (Part part : first.parts()) due.put(part.name(), part.count());
            assertThat(all).isEqualTo(due);
            boards.forEach((group, from) -> assertThat(from).as(group).hasSize(1));
        }
    }
}
