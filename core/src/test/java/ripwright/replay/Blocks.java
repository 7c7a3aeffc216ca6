package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Unit;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Tally;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/**
 * A board of 60 3/8 by 4 broken down into sections that are one block of 15 each.
 *
 * <p>By hand: stock 60.375 x 4 / 144 x 6 = 10.06; each block is 0.3125 board feet of 1.2578.
 */
final class Blocks {
    private Blocks() {}

    static Sample three() {
        return sample(
                Make.cost("10.06", "0", "0", "10.06", "10.06", "0", true),
                Make.tally("1.2578", "0.9375", "0", "0.3203", "0.7453", "13.5"),
                "0",
                "15 1/8",
                "30 1/4");
    }

    static Sample four() {
        return sample(
                Make.cost("10.06", "0", "0", "10.06", "10.06", "0", true),
                Make.tally("1.2578", "1.2500", "0", "0.0078", "0.9938", "15"),
                "0",
                "15 1/8",
                "30 1/4",
                "45 3/8");
    }

    private static Sample sample(Cost cost, Tally tally, String... starts) {
        Job job = new Job(
                "blocks",
                Unit.INCH,
                Saw.of(IN.length("1/8"), IN.length("1/8")),
                TestRip.NONE,
                new Keep(IN.length("16"), IN.length("2")),
                Map.of(new Species("maple"), new BigDecimal("6")),
                BigDecimal.ONE,
                Optional.empty(),
                List.of(Board.measured("m5", "maple", IN.length("3/4"), IN.length("4"), IN.length("60 3/8"))
                        .build()),
                List.of(),
                List.of(Part.of("block", IN.length("15"), IN.length("4"), IN.length("3/4"))
                        .count(starts.length)
                        .build()),
                Limits.NONE);
        List<Section> sections = new ArrayList<>();
        Make.Steps steps = IN.steps();
        String[] ids = new String[starts.length];
        for (int i = 0; i < starts.length; i++) ids[i] = "m5/" + (i + 1);
        steps.breakdown("m5", ids);
        for (int i = 0; i < starts.length; i++) {
            String to = IN.length(starts[i]).plus(IN.length("15")).toString();
            sections.add(IN.section(
                    ids[i],
                    starts[i],
                    to,
                    Edge.LEFT,
                    "0",
                    IN.strip("S" + i, "0", "4", "R1", IN.blank("block-" + i, "block", starts[i], "15"))));
            steps.rip("R1", ids[i], "S" + i);
            if (i == 0) steps.check("R1", "S0");
        }
        for (int i = 0; i < starts.length; i++) steps.stop("15", "S" + i, "block-" + i);
        return new Sample(
                job,
                new Plan(
                        "blocks",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        cost,
                        tally,
                        List.of(new CutBoard("m5", sections)),
                        List.of(IN.setting("R1", "4")),
                        List.of(),
                        steps.list(),
                        List.of(),
                        List.of(),
                        List.of()));
    }
}
