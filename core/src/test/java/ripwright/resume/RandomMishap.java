package ripwright.resume;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Defect;

/** Some steps of a plan done, mostly the first so many of them, and some things gone wrong. */
final class RandomMishap {
    private static final long TICK = 25_400_000 / 32;

    private final SplittableRandom random;
    private final Job job;
    private final Plan plan;
    private final List<Integer> done;
    private final List<String> made;
    private final Report report;

    RandomMishap(SplittableRandom random, Job job, Plan plan) {
        this.random = random;
        this.job = job;
        this.plan = plan;
        done = done();
        made = random.nextInt(3) == 0 ? made() : List.of();
        Resume before = new Resume(job, plan, report(List.of()));
        report = report(changes(before));
    }

    Report report() {
        return report;
    }

    private Report report(List<Change> changes) {
        return new Report(job.name(), done, made, changes, Optional.empty());
    }

    /** Some pieces of the next steps, each with what it comes from. */
    private List<String> made() {
        List<String> made = new ArrayList<>();
        PlannedPieces pieces = new PlannedPieces(job, plan);
        for (Step step : plan.steps()) {
            if (done.contains(step.n())) continue;
            for (String id : step.makes()) {
                if (random.nextInt(3) == 0) continue;
                List<String> more = new ArrayList<>(made);
                more.add(id);
                if (new DoneSteps(pieces, done, more).problems().isEmpty()) made.add(id);
                if (made.size() > 6) return made;
            }
        }
        return made;
    }

    private List<Integer> done() {
        int upTo = random.nextInt(plan.steps().size() + 1);
        List<Integer> done = new ArrayList<>();
        for (Step step : plan.steps().subList(0, upTo)) done.add(step.n());
        if (!done.isEmpty() && random.nextInt(4) == 0) { // somebody skipped one, and all that hangs on it
            int skipped = done.get(random.nextInt(done.size()));
            List<Integer> without = new ArrayList<>(done);
            without.remove(Integer.valueOf(skipped));
            if (new DoneSteps(new PlannedPieces(job, plan), without, List.of())
                    .problems()
                    .isEmpty()) return without;
        }
        return done;
    }

    private List<Change> changes(Resume before) {
        List<Change> changes = new ArrayList<>();
        List<SizeNow> pieces = before.pieces();
        for (int i = random.nextInt(4); i > 0; i--) {
            SizeNow piece = pieces.get(random.nextInt(pieces.size()));
            if (changes.stream()
                    .noneMatch(change -> change.toString().contains("[piece=" + piece.id() + ",")
                            || change.toString().contains("[piece=" + piece.id() + "]")))
                change(piece).ifPresent(changes::add);
        }
        if (!before.wanted().isEmpty() && random.nextInt(3) == 0) {
            Part part = before.wanted().get(random.nextInt(before.wanted().size()));
            boolean along = random.nextBoolean();
            Length size = along ? part.length() : part.width();
            Length other = new Length(Math.max(TICK, size.nanometers() + (random.nextInt(9) - 4) * TICK));
            changes.add(new Change.Wanted(
                    part.name(),
                    along ? Optional.of(other) : Optional.empty(),
                    along ? Optional.empty() : Optional.of(other)));
        }
        return changes;
    }

    private Optional<Change> change(SizeNow piece) {
        Piece wood = piece.wood();
        String id = piece.id();
        return switch (random.nextInt(5)) {
            case 0 -> Optional.of(new Change.Spoiled(id));
            case 1 -> smaller(wood.narrowWidth()).map(width -> new Change.Width(id, width));
            case 2 -> smaller(wood.length()).map(length -> new Change.Extent(id, length));
            case 3 -> piece.planned().kind() == Kind.STRIP ? wider(piece) : Optional.empty();
            default -> Optional.of(new Change.Found(id, defect(wood)));
        };
    }

    /** Where there is so much beside it. */
    private Optional<Change> wider(SizeNow piece) {
        Change change = new Change.Width(piece.id(), new Length(piece.wood().narrowWidth() + TICK));
        try {
            new Resume(job, plan, report(List.of(change)));
            return Optional.of(change);
        } catch (WrongReportException e) {
            return Optional.empty();
        }
    }

    private Optional<Length> smaller(long size) {
        long less = Math.min(size - 1, (1 + random.nextInt(6)) * TICK / 2);
        return less < 1 ? Optional.empty() : Optional.of(new Length(size - less));
    }

    private Defect defect(Piece wood) {
        long from = random.nextLong(wood.length());
        long to = from + 1 + random.nextLong(Math.min(wood.length() - from, 40 * TICK));
        long width = Math.min(wood.widthAt(wood.from()), wood.widthAt(wood.to()));
        long left = random.nextLong(width);
        long right = left + 1 + random.nextLong(width - left);
        return new Defect(
                new Length(from),
                new Length(Math.min(to, wood.length())),
                new Length(left),
                new Length(Math.min(right, width)),
                "knot",
                random.nextBoolean() ? Defect.Blocks.ALL : Defect.Blocks.SHOW);
    }
}
