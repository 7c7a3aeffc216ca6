package ripwright.resume;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.stock.Board;
import ripwright.testing.JobBuilder;

/**
 * A board 3 3/4 in wide and 50 in long gives a strip of 2 in for two rails and one of 1 1/2 in for two cleats, with 1/8 in to
 * spare.
 */
final class Shelf {
    static final Length THICK = in("3/4");
    static final Job JOB = job(
            List.of(
                    Part.of("rail", in("20"), in("2"), THICK)
                            .count(2)
                            .together("rails")
                            .build(),
                    Part.of("cleat", in("20"), in("1 1/2"), THICK).count(2).build()),
            Board.measured("ash", "ash", THICK, in("3 3/4"), in("50")).build());
    static final Plan PLAN = planned(JOB);
    static final String WIDE = strip("2");
    static final String NARROW = strip("1 1/2");

    static Length in(String inches) {
        return Length.inches(inches);
    }

    static Job job(List<Part> parts, Board... stack) {
        return new JobBuilder("Shelf")
                .price("ash", new BigDecimal("6"))
                .salvage(new BigDecimal("0.5"))
                .stack(List.of(stack))
                .parts(parts)
                .build();
    }

    static Plan planned(Job job) {
        return Planner.plan(job, Options.defaults().withMostRecuts(200));
    }

    private static String strip(String width) {
        return PLAN.boards().get(0).sections().get(0).strips().stream()
                .filter(strip -> strip.width().equals(in(width)))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** All steps up to the one that makes that piece. */
    static List<Integer> until(String piece) {
        List<Integer> done = new ArrayList<>();
        for (Step step : PLAN.steps()) {
            done.add(step.n());
            if (step.makes().contains(piece)) return done;
        }
        throw new AssertionError(piece);
    }

    static Report report(List<Integer> done, Change... changes) {
        return new Report("Shelf", done, List.of(changes), Optional.empty());
    }

    static String blankOf(String part) {
        return PLAN.boards().get(0).sections().get(0).strips().stream()
                .flatMap(strip -> strip.blanks().stream())
                .filter(blank -> blank.part().equals(part))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private Shelf() {}
}
