package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.job.Breakdown;
import ripwright.plan.Step;

/** Plans of jobs with {@code over}: they hold, and each way to spoil one is refused. */
class LeftLongTeethTest {
    private static final Sample FOUR = LeftLong.fourStrips();
    private static final Sample EIGHTH = LeftLong.toTheNextEighth();
    private static final Sample BEHIND = SquaredOffcuts.squareBehindABlank();
    private static final Sample BEFORE = SquaredOffcuts.squareBeforeABlank();
    private static final Sample ENDS = SquaredOffcuts.squareEnds();
    private static final Sample RIPPED = SquaredOffcuts.ripped();
    private static final Sample LATER = LeftLong.behindADefect();
    private static final Sample MM = LeftLong.millimeters();

    @Test
    void plans_that_leave_sections_long_hold() {
        assertThat(Stream.of(FOUR, EIGHTH, BEHIND, BEFORE, ENDS, RIPPED, LATER, MM)
                        .map(Sample::faults)
                        .toList())
                .containsOnly(List.of());
    }

    @Test
    void a_fitted_blank_may_say_what_is_beside_it_or_what_would_be() {
        assertThat(spoilt(FOUR, d -> d.spare(12, Optional.of("0"))).faults()).isEmpty();
        assertThat(spoilt(FOUR, d -> d.spare(12, Optional.of("1 1/2"))).faults())
                .isEmpty();
    }

    private static Sample spoilt(Sample good, Consumer<Draft> spoil) {
        return Corruption.of("", good, spoil).spoilt();
    }

    static Stream<Corruption> ends() {
        return Stream.of(
                Corruption.of(
                        "a section that starts in an end trim",
                        FOUR,
                        d -> d.span("m/1", "1/2", "61 5/8").minutes("25"),
                        "m/1: it starts at 1/2 in; 0, the board's own end, or from 1 in to 60 5/8 in is due. [2.ends]"),
                Corruption.of(
                        "a section that ends in an end trim",
                        FOUR,
                        d -> d.span("m/1", "0", "61 1/4").minutes("25"),
                        "m/1: it ends at 61 1/4 in; 61 5/8 in, the board's own end, or from 1 in to 60 5/8 in is due. [2.ends]"),
                Corruption.of(
                        "a blank in an end trim",
                        EIGHTH,
                        d -> d.blank("rail-1", "rail", "3/4", "25 9/16"),
                        "rail-1: it starts at 3/4 in; its section starts at 0 in with 1/2 in left over, and the wood between the board's end trims starts at 1 in, so at least 1 in is due. [2.ends]"),
                Corruption.of(
                        "a blank in what is left over",
                        EIGHTH,
                        d -> d.blank("rail-1", "rail", "1 1/8", "25 9/16"),
                        "rail-1: it ends at 26 11/16 in; its section ends at 27 1/8 in with 1/2 in left over, and the wood between the board's end trims ends at 51 in, so at most 26 5/8 in is due. [2.ends]"),
                Corruption.of(
                        "a blank up to the end of its section",
                        EIGHTH,
                        d -> d.blank("rail-1", "rail", "1 9/16", "25 9/16").minutes("9.5"),
                        "rail-1: it ends at 27 1/8 in; its section ends at 27 1/8 in with 1/2 in left over, and the wood between the board's end trims ends at 51 in, so at most 26 5/8 in is due. [2.ends]"),
                Corruption.of(
                        "ripped stock from trim to trim",
                        RIPPED,
                        d -> d.span("m/1", "1/2", "60")
                                .blank("rail-1", "rail", "1", "30")
                                .offcut("O1", o -> o.length(IN.length("28 7/8")))
                                .cost("6.67", "1.58", "0", "5.09", "5.09", "0", true)
                                .tally("0.6250", "0.3125", "0.3008", "0.0117", "0.5000", "3"),
                        "m/1: it runs from 1/2 in to 60 in; of ripped stock it goes from end to end, 0 in to 60 in. [2.ripped]"),
                Corruption.ofJob(
                        "a section over its trims where nothing is left over",
                        EIGHTH,
                        job -> job.toBuilder().breakdown(Breakdown.EXACT).build(),
                        "m/1: it starts at 0 in; the end trim there is 1 in. [2.ends]",
                        "S1: it is squared in 1 step; 0 are due. [5.steps]"));
    }

    static Stream<Corruption> readings() {
        return Stream.of(
                Corruption.of(
                        "a section that ends between two eighths",
                        LATER,
                        d -> d.span("m/1", "2", "28 1/16")
                                .offcut("O2", o -> o.length(IN.length("22 13/16")))
                                .cost("11.33", "2.42", "0", "8.91", "8.91", "0", true)
                                .tally("1.0625", "0.3906", "0.4753", "0.1966", "0.3676", "11.5"),
                        "m/1: it ends at 28 1/16 in; a cut at break-down is read off in whole eighths of an inch. [3.sections]"),
                Corruption.of(
                        "a section that starts between two eighths",
                        LATER,
                        d -> d.span("m/1", "1 15/16", "28"),
                        "m/1: it starts at 1 15/16 in; a cut at break-down is read off in whole eighths of an inch. [3.sections]"),
                Corruption.of(
                        "a section that ends between two fives",
                        MM,
                        d -> d.span("m/1", "0", "633"),
                        "m/1: it ends at 633 mm; a cut at break-down is read off in whole 5 mm. [3.sections]"));
    }

    static Stream<Corruption> squaring() {
        return Stream.of(
                Corruption.of(
                        "a strip that is not squared",
                        FOUR,
                        d -> d.removeStep(5),
                        "S1: it is squared in 0 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "a strip squared twice",
                        FOUR,
                        d -> d.insertStep(5, LeftLong.square("S1")),
                        "S1: it is squared in 2 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "a strip squared after a blank",
                        FOUR,
                        d -> d.moveStep(8, 9),
                        "S4: step 9 squares it after step 8 has cut blanks; all squaring comes before the first. [5.steps]"),
                Corruption.of(
                        "a strip squared before it is ripped",
                        EIGHTH,
                        d -> d.swapSteps(2, 3),
                        "S1: step 2 uses it; it is made only in step 3. [5.steps]"),
                Corruption.of(
                        "a strip squared that is square",
                        ENDS,
                        d -> d.insertStep(3, LeftLong.square("S1")),
                        "S1: it is squared in 1 step; 0 are due. [5.steps]"),
                Corruption.of(
                        "a strip squared where nothing is left over",
                        BenchRails.sample(),
                        d -> d.insertStep(5, LeftLong.square("S1")),
                        "S1: it is squared in 1 step; 0 are due. [5.steps]"),
                Corruption.of(
                        "squaring at the rip saw",
                        FOUR,
                        d -> d.saw(5, Optional.of(Step.Saw.RIP)),
                        "step 5: a square at the rip saw; the crosscut saw is due. [5.steps]"),
                Corruption.of(
                        "squaring at a stop",
                        FOUR,
                        d -> d.stop(5, Optional.of("28 9/16")),
                        "step 5: a square at a stop; only blanks are cut at one. [5.steps]"),
                Corruption.of(
                        "squaring that spares",
                        FOUR,
                        d -> d.spare(5, Optional.of("1")),
                        "step 5: it says what is to spare; only a blank of a fitted part does. [5.steps]"),
                Corruption.of(
                        "squaring at a setting",
                        FOUR,
                        d -> d.stepSetting(5, Optional.of("R1")),
                        "step 5: a square at rip setting R1; it needs none. [5.steps]"),
                Corruption.of(
                        "squaring a section",
                        FOUR,
                        d -> d.piece(5, "m/1"),
                        "step 5: a square of m/1, which is no strip of this plan. [5.steps]",
                        "S1: it is squared in 0 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "squaring that makes an offcut",
                        BEFORE,
                        d -> d.makes(3, "O1").makes(4, "rail-1"),
                        "step 3: a square makes O1; it makes nothing. [5.steps]",
                        "O1: step 3, a square of S1, makes it; the last blank step on S1 is due. [5.steps]"),
                Corruption.of(
                        "squaring cuts not counted",
                        FOUR,
                        d -> d.minutes("20"),
                        "plan: minutes is 20; 24.00 is due for 1 setting, 4 rips and 12 crosscuts. [4.labor]"));
    }

    static Stream<Corruption> leftovers() {
        return Stream.of(
                Corruption.of(
                        "an offcut without the square end that a blank left it",
                        BEHIND,
                        d -> d.offcut("O1", o -> o.squareEnds(0)),
                        "O1: it is listed with 0 square ends; what is left of S1 has 1. [3.leftovers]"),
                Corruption.of(
                        "an offcut of a strip without the board's raw end",
                        BEHIND,
                        d -> d.offcut("O1", o -> o.endTrim(IN.length("0"), IN.length("0"))),
                        "O1: its end trim at the far end is listed as 0 in; what is left of S1 has 1 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut whose knot is not turned with it",
                        BEFORE,
                        d -> d.offcut("O1", o -> o.defects(List.of(LeftLong.knot("40", "42", "0", "1")))),
                        "O1: it lacks the knot from 22 7/8 in to 24 7/8 in and 2 in to 3 in across that it carries along. [3.leftovers]",
                        "O1: it lists a knot from 40 in to 42 in and 0 in to 1 in across that m does not have there. [3.leftovers]"),
                Corruption.of(
                        "an offcut called square at an end sawn at break-down",
                        LATER,
                        d -> d.offcut("O2", o -> o.squareEnds(1)),
                        "O2: it is listed with 1 square end; what is left of m has 0. [3.leftovers]"),
                Corruption.of(
                        "an offcut beside strips with more square ends than its board",
                        ENDS,
                        d -> d.offcut("O2", o -> o.squareEnds(2)),
                        "O2: it is listed with 2 square ends; what is left of m/1 has 1. [3.leftovers]"),
                Corruption.of(
                        "an offcut without its board's square end",
                        ENDS,
                        d -> d.offcut("O1", o -> o.squareEnds(0)),
                        "O1: it is listed with 0 square ends; what is left of m has 1. [3.leftovers]"),
                Corruption.of(
                        "an offcut whose widths are not turned with it",
                        ENDS,
                        d -> d.offcut("O1", o -> o.width(IN.length("5.145833"), IN.length("4"))),
                        "O1: its width is listed as 5.145833 in; what is left of m has 4 in. [3.leftovers]",
                        "O1: its width at the far end is listed as 4 in; what is left of m has 5.145833 in. [3.leftovers]"),
                Corruption.of(
                        "a raw end that is paid for",
                        BEHIND,
                        d -> d.cost("21.33", "5.41", "0", "15.92", "15.92", "0", true),
                        "plan: cost.salvage is 5.41; 5.32 is due. [4.salvage]",
                        "plan: cost.net is 15.92; stock - salvage + labor come to 16.01. [1.money]"));
    }

    static Stream<Corruption> spare() {
        return Stream.of(
                Corruption.of(
                        "more to spare than there would be",
                        FOUR,
                        d -> d.spare(12, Optional.of("2 7/16")),
                        "lip-1: step 12 says that 2 7/16 in is to spare; beside it 0 in is free, and 2 3/8 in were those to come moved along. [5.steps]"),
                Corruption.of(
                        "less to spare than lies beside",
                        FOUR,
                        d -> d.spare(13, Optional.of("2 1/4")),
                        "lip-2: step 13 says that 2 1/4 in is to spare; beside it 2 3/8 in is free. [5.steps]"),
                Corruption.of(
                        "what must stay at the end to spare",
                        FOUR,
                        d -> d.spare(13, Optional.of("3 3/8")),
                        "lip-2: step 13 says that 3 3/8 in is to spare; beside it 2 3/8 in is free. [5.steps]"));
    }

    @ParameterizedTest
    @MethodSource({"ends", "readings", "squaring", "leftovers", "spare"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
