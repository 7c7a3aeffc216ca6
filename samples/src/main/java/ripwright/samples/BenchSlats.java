package ripwright.samples;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** Plans the slats and rails of a garden bench from three boards, and prints the steps. The job is invented. */
public final class BenchSlats {
    private static final Length THICK = Length.inches("13/16");

    private BenchSlats() {}

    /** Prints the plan's steps. */
    public static void main(String[] arguments) {
        Plan plan = Planner.plan(job(), Options.defaults());
        System.out.println(plan.status() + ", net " + plan.cost().net() + ", yield "
                + plan.tally().yield());
        for (Step step : plan.steps())
            System.out.println(step.n() + " " + step.does() + " " + step.piece() + " -> " + step.makes());
    }

    /** The job: three white oak boards, seven slats, four rails. */
    public static Job job() {
        return Job.builder(
                        "bench slats",
                        Saw.of(Length.inches("1/8"), Length.inches("1/8")),
                        new Keep(Length.inches("12"), Length.inches("2")))
                .testRip(new TestRip(Length.inches("12"), 1))
                .price(new Species("white oak"), new BigDecimal("9.50"))
                .salvage(new BigDecimal("0.5"))
                .stack(List.of(board("W1", "7 3/8", "98"), board("W2", "6 5/8", "104 1/2"), board("W3", "8 1/4", "77")))
                .parts(List.of(part("slat", 7, "2 1/2", "46"), part("rail", 4, "3", "17 1/4")))
                .limits(new Limits(Optional.of(new BigDecimal("2")), OptionalLong.of(1), OptionalInt.empty()))
                .build();
    }

    private static Board board(String id, String width, String length) {
        return Board.measured(id, "white oak", THICK, Length.inches(width), Length.inches(length))
                .endTrim(Length.inches("1"), Length.inches("1"))
                .build();
    }

    private static Part part(String name, int count, String width, String length) {
        return Part.of(name, Length.inches(length), Length.inches(width), THICK)
                .count(count)
                .face(Part.Face.SHOW)
                .build();
    }
}
