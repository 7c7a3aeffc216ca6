package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.bill.Part;
import ripwright.bill.Tenon;
import ripwright.job.Job;
import ripwright.plan.Step;
import ripwright.plan.TestBlank;
import ripwright.plan.TestBlank.Source;
import ripwright.stock.Edge;

/** Plans of jobs with test wood kept for that alone, widths that need no test, tenons, and of strips that are not cut. */
class NewFieldsTeethTest {
    private static final Sample SCRAP = TestScrap.sample();
    private static final Sample WHOLE = WholeStrips.sample();
    private static final Sample SQUARE = WholeStrips.ofASquareBoard();

    @Test
    void they_hold() {
        assertThat(SCRAP.faults()).isEmpty();
        assertThat(WHOLE.faults()).isEmpty();
        assertThat(SQUARE.faults()).isEmpty();
    }

    @Test
    void a_blank_as_long_as_its_strip_may_be_told_as_it_was_before() {
        Draft draft = new Draft(WHOLE.plan())
                .saw(5, Optional.of(Step.Saw.CROSSCUT))
                .stop(5, Optional.of("40"))
                .saw(7, Optional.of(Step.Saw.CROSSCUT));
        assertThat(new Sample(WHOLE.job(), draft.plan()).faults()).isEmpty();
    }

    private static Job part(Job job, String name, UnaryOperator<Part.Builder> edit) {
        List<Part> parts = job.parts().stream()
                .map(part ->
                        part.name().equals(name) ? edit.apply(part.toBuilder()).build() : part)
                .toList();
        return job.toBuilder().parts(parts).build();
    }

    private static TestBlank from(TestBlank t, Source source) {
        return new TestBlank(t.id(), t.from(), source, t.width(), t.length(), t.thickness(), t.species(), t.proves());
    }

    static Stream<Corruption> tests() {
        return Stream.of(
                Corruption.of(
                        "a width tested that need not be",
                        SCRAP,
                        d -> d.setting(IN.setting("R2", "2", "T1", Source.RACK)),
                        "R2: it is tested on T1; no part ripped at it needs that. [5.testBlanks]"),
                Corruption.of(
                        "a width proved that need not be",
                        SCRAP,
                        d -> d.proves("T1", "R1", "R2"),
                        "R2: it is proved by 1 test blank; 0 are due. [5.testBlanks]"),
                Corruption.of(
                        "a test step of a width that need not be proved",
                        SCRAP,
                        d -> d.insertStep(5, IN.steps().test("R2", "T1").only()),
                        "R2: it is tested in 1 step; 0 are due. [5.steps]"),
                Corruption.ofJob(
                        "a width not tested that must be",
                        SCRAP,
                        job -> part(job, "cleat", p -> p.tested(true)),
                        "R2: no test blank is named for it. [5.testBlanks]",
                        "R2: it is proved by 0 test blanks; 1 is due. [5.testBlanks]",
                        "R2: it is tested in 0 steps; 1 is due. [5.steps]",
                        "plan: minutes is 19.5; 21.00 is due for 2 settings, 4 rips and 3 crosscuts. [4.labor]"),
                Corruption.of(
                        "labor for a test that is not made",
                        SCRAP,
                        d -> d.minutes("21"),
                        "plan: minutes is 21; 19.50 is due for 2 settings, 3 rips and 3 crosscuts. [4.labor]"),
                Corruption.ofJob(
                        "a tenon left out",
                        SCRAP,
                        job -> part(job, "rail", p -> p.tenon(Tenon.both(IN.length("1/2")))),
                        "rail-1: it is 30 in long; rail with its sneak-up oversize needs 29 in. [3.blanks]",
                        "plan: boardFeet.parts is 0.7813; 0.7656 is due. [4.boardFeet]",
                        "plan: boardFeet.waste is 0.4400; consumed - parts - offcuts, as printed, come to 0.4557. [4.boardFeet]",
                        "plan: yield is 0.5172; 0.5069 is due. [4.yield]"));
    }

    static Stream<Corruption> scrap() {
        return Stream.of(
                Corruption.of(
                        "a part from scrap for tests",
                        SCRAP,
                        d -> d.sections(
                                "s1",
                                sections -> List.of(IN.section(
                                        "s1/1", "6 1/8", "20", Edge.LEFT, "0", IN.strip("S3", "0", "3", "R1")))),
                        "s1/1: it is cut from s1, which gives test blanks alone and is never broken into sections. [2.only]",
                        "O1: nothing more is left of s1 that is worth keeping. [3.leftovers]",
                        "s1/1: what is left of it from 6 1/8 in to 20 in, 7/8 in wide, is worth keeping and not listed. [3.leftovers]",
                        "S3: what is left of it from 6 1/8 in to 20 in, 3 in wide, is worth keeping and not listed. [3.leftovers]",
                        "T1: it is listed as from rack; what is left of s1 would have been kept, or was opened for it, so fresh is due. [5.testBlanks]",
                        "s1/1: no step makes it. [5.steps]",
                        "S3: no step makes it. [5.steps]",
                        "R1: it is checked in 0 steps; for 2 strips 1 is due. [5.steps]",
                        "plan: minutes is 19.5; 21.00 is due for 2 settings, 4 rips and 3 crosscuts. [4.labor]",
                        "plan: boardFeet.offcuts is 0.2891; 0.2800 is due. [4.boardFeet]",
                        "plan: boardFeet.waste is 0.4400; consumed - parts - offcuts, as printed, come to 0.4491. [4.boardFeet]"),
                Corruption.of(
                        "scrap for tests that is paid",
                        SCRAP,
                        d -> d.cost("14.45", "0", "0", "14.45", "14.45", "0", true),
                        "plan: cost.stock is 14.45; 11.67 is due. [4.stock]",
                        "plan: cost.net is 14.45; stock - salvage + labor come to 11.67. [1.money]"),
                Corruption.of(
                        "scrap for tests that fetches something",
                        SCRAP,
                        d -> d.cost("11.67", "1.93", "0", "9.74", "9.74", "0", true),
                        "plan: cost.salvage is 1.93; 0.00 is due. [4.salvage]",
                        "plan: cost.net is 9.74; stock - salvage + labor come to 11.67. [1.money]"),
                Corruption.of(
                        "scrap for tests that is not kept",
                        SCRAP,
                        d -> d.removeOffcut("O1")
                                .makes(2, "T1")
                                .tally("1.5104", "0.7813", "0", "0.7291", "0.5172", "19.5"),
                        "s1: what is left of it from 0 in to 13 7/8 in, 4 in wide, is worth keeping and not listed. [3.leftovers]",
                        "plan: boardFeet.offcuts is 0; 0.2891 is due. [4.boardFeet]",
                        "plan: boardFeet.waste is 0.7291; consumed - parts - offcuts, as printed, come to 0.4400. [4.boardFeet]"),
                Corruption.of(
                        "scrap for tests listed as any wood",
                        SCRAP,
                        d -> d.offcut("O1", o -> o.testOnly(false)),
                        "O1: it is listed not for test blanks alone; s1 is. [3.leftovers]"),
                Corruption.of(
                        "scrap for tests called fresh",
                        SCRAP,
                        d -> d.testBlank("T1", t -> from(t, Source.FRESH))
                                .setting(IN.setting("R1", "3", "T1", Source.FRESH)),
                        "T1: it is listed as from fresh; what is left of s1 is a rack offcut no part comes from, so rack is due. [5.testBlanks]"),
                Corruption.ofJob(
                        "scrap of the stack called rack",
                        SCRAP,
                        job -> job.toBuilder()
                                .stack(List.of(
                                        job.stack().get(0), TestScrap.scrap().build()))
                                .rack(List.of())
                                .build(),
                        "T1: it is listed as from rack; what is left of s1 would have been kept, or was opened for it, so fresh is due. [5.testBlanks]"),
                Corruption.of(
                        "waste that is not the rest of what is printed",
                        SCRAP,
                        d -> d.tally("1.5104", "0.7813", "0.2891", "0.4401", "0.5172", "19.5"),
                        "plan: boardFeet.waste is 0.4401; consumed - parts - offcuts, as printed, come to 0.4400. [4.boardFeet]"));
    }

    static Stream<Corruption> wholeStrips() {
        return Stream.of(
                Corruption.of(
                        "what is not cut after a stop",
                        WHOLE,
                        d -> d.swapSteps(5, 6),
                        "step 6: what is not cut comes before the first stop; step 5 comes before it. [5.steps]"),
                Corruption.of(
                        "no saw where a blank is shorter than its strip",
                        WHOLE,
                        d -> d.saw(6, Optional.empty()).stop(6, Optional.empty()),
                        "step 6: a blank at no saw; the crosscut saw is due. [5.steps]",
                        "cleat-1: step 7 cuts it after peg, which the bill has later; fitted parts come in the order of the bill. [5.steps]",
                        "peg-1: step 6 cuts it without a stop; peg is not fitted. [5.steps]"),
                Corruption.of(
                        "no saw at a stop",
                        WHOLE,
                        d -> d.saw(6, Optional.empty()),
                        "step 6: a blank at no saw; the crosscut saw is due. [5.steps]"),
                Corruption.of(
                        "what is not cut at a saw without a stop",
                        WHOLE,
                        d -> d.saw(5, Optional.of(Step.Saw.CROSSCUT)),
                        "step 6: it cuts at a stop after step 5; fitted parts come last. [5.steps]",
                        "rail-1: step 5 cuts it without a stop; rail is not fitted. [5.steps]"),
                Corruption.of(
                        "what is not cut and spares something",
                        WHOLE,
                        d -> d.spare(5, Optional.of("0")),
                        "rail-1: step 5 says what is to spare; only that of a fitted part does. [5.steps]"),
                Corruption.of(
                        "a fitted part not cut with something to spare",
                        WHOLE,
                        d -> d.spare(7, Optional.of("1/8")),
                        "cleat-1: step 7 says that 1/8 in is to spare; beside it 0 in is free. [5.steps]"),
                Corruption.of(
                        "a fitted part not cut that does not say what is to spare",
                        WHOLE,
                        d -> d.spare(7, Optional.empty()),
                        "cleat-1: step 7 does not say what its strip could spare. [5.steps]"),
                Corruption.ofJob(
                        "a whole strip of a board that is not square",
                        SQUARE,
                        job -> job.toBuilder()
                                .stack(List.of(job.stack().get(0).toBuilder()
                                        .squareEnds(1)
                                        .build()))
                                .build(),
                        "rail-1: it ends at 40 in; its section ends at 40 in with 1/2 in left over, and the wood between the board's end trims ends at 40 in, so at most 39 1/2 in is due. [2.ends]",
                        "cleat-1: it ends at 40 in; its section ends at 40 in with 1/2 in left over, and the wood between the board's end trims ends at 40 in, so at most 39 1/2 in is due. [2.ends]"));
    }

    @ParameterizedTest
    @MethodSource({"tests", "scrap", "wholeStrips"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
