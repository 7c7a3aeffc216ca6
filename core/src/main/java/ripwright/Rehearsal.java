package ripwright;

import java.math.BigDecimal;
import java.util.List;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.sequence.Sequencer;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Species;

/**
 * Sequences and replays a tiny job before the first planning of a Java virtual machine searches, so that the classes for that
 * are loaded then. They are loaded in any case, but else once the search has ended; an interrupted planning would be late
 * by it, by some 150 ms.
 */
final class Rehearsal {
    private static final Length THICK = Length.inches("3/4");

    static {
        rehearse();
    }

    private Rehearsal() {}

    /** Nothing but the first time. */
    static void once() {}

    private static void rehearse() {
        try {
            Job job = job();
            Plan plan = new Sequencer(job, FirstFitDecreasing.plan(job), Money.ZERO).plan();
            Replay.faults(job, plan);
        } catch (NoTestWoodException e) {
            throw new AssertionError("The job has wood for its tests.", e);
        }
    }

    private static Job job() {
        Board rough = Board.measured("a", "ash", Length.inches("1"), Length.inches("7"), Length.inches("60"))
                .rough(Length.inches("1"), THICK)
                .edges(1, Length.inches("1/8"), Length.inches("1/8"))
                .endTrim(Length.inches("1"), Length.inches("1"))
                .defects(List.of(new Defect(
                        Length.inches("30"),
                        Length.inches("31"),
                        Length.inches("1"),
                        Length.inches("2"),
                        "knot",
                        Defect.Blocks.ALL)))
                .build();
        Part rail = Part.of("rail", Length.inches("12"), Length.inches("2"), THICK)
                .count(3)
                .together("rails")
                .build();
        Part brace = Part.of("brace", Length.inches("14"), Length.inches("1 1/2"), THICK)
                .count(2)
                .fitted(true)
                .build();
        Part panel =
                Part.of("panel", Length.inches("20"), Length.inches("9"), THICK).build(); // too wide
        return Job.builder(
                        "rehearsal",
                        Saw.of(Length.inches("1/8"), Length.inches("1/8")),
                        new Keep(Length.inches("8"), Length.inches("1")))
                .testRip(new TestRip(Length.inches("12"), 1))
                .price(new Species("ash"), BigDecimal.ONE)
                .salvage(new BigDecimal("0.5"))
                .labor(new Labor(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE))
                .stack(List.of(
                        rough,
                        Board.measured("b", "ash", THICK, Length.inches("5"), Length.inches("50"))
                                .build()))
                .parts(List.of(rail, brace, panel))
                .build();
    }
}
