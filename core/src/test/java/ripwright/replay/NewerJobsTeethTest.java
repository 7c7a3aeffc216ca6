package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.TestBlank;
import ripwright.plan.TestBlank.Source;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;
import ripwright.stock.Species;

/** Figures and test wood of jobs that say new things, and what new things come to at the edge. */
class NewerJobsTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample FOUR = LeftLong.fourStrips();

    /** The job has one board more, of no use and sawn square at one end, which no older job could say. */
    private static Job newer(Job job) {
        Species wood = job.stack().isEmpty()
                ? new Species("maple")
                : job.stack().get(0).species();
        Board unused = Board.measured("unused", wood.name(), IN.length("2"), IN.length("3"), IN.length("30"))
                .squareEnds(1)
                .build();
        return job.toBuilder()
                .stack(Stream.concat(job.stack().stream(), Stream.of(unused)).toList())
                .build();
    }

    private static Job first(Job job, Board board) {
        return job.toBuilder().stack(List.of(board)).build();
    }

    private static Board.Builder board(Sample sample) {
        return sample.job().stack().get(0).toBuilder();
    }

    private static Sample edited(Sample sample, Job job, Consumer<Draft> edit) {
        return new Sample(job, Corruption.of("", sample, edit).spoilt().plan());
    }

    /** Nothing is left over at sections' ends: only the board's own ends are square, and no cut of a blank makes one. */
    private static Sample railsOfASquareBoard() {
        return edited(
                RAILS,
                first(RAILS.job(), board(RAILS).squareEnds(2).build()),
                d -> d.offcut("O1", o -> o.squareEnds(2))
                        .offcut("O2", o -> o.squareEnds(1))
                        .offcut("O3", o -> o.squareEnds(1))
                        .tally("4.6250", "2.5488", "1.8110", "0.2652", "0.5511", "19.50"));
    }

    /** No board is long enough; by hand: 25 + 1 + 2 is to buy, 3 + 1/8 wide, as the far trim is over the 1/2 in left over. */
    private static Sample nothingLongEnough() {
        Board shortOne = LeftLong.maple("m", "4", "20")
                .edges(1, IN.length("1/8"), Length.ZERO)
                .endTrim(IN.length("1"), IN.length("2"))
                .build();
        Job job = LeftLong.job("too short")
                .stack(List.of(shortOne))
                .parts(List.of(LeftLong.part("rail", 1, "25", "3")
                        .species(Set.of(new Species("maple")))
                        .build()))
                .build();
        Shortage.Buy buy = new Shortage.Buy(
                new BigDecimal("1"),
                List.of(new Species("maple")),
                IN.length("3/4"),
                IN.length("28"),
                IN.length("3 1/8"));
        return new Sample(
                job,
                new Plan(
                        "too short",
                        IN.unit(),
                        Plan.Status.SHORT,
                        Make.cost("0", "0", "0", "0", "0", "0", true),
                        Make.tally("0", "0", "0", "0", "0", "0"),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Shortage("rail", 1, buy)),
                        List.of()));
    }

    private static Shortage toBuy(Shortage s, String shortest, String narrowest) {
        Shortage.Buy b = s.buy();
        return new Shortage(
                s.part(),
                s.count(),
                new Shortage.Buy(b.boardFeet(), b.species(), b.thickness(), IN.length(shortest), IN.length(narrowest)));
    }

    /** Ripped stock 1 in thick to be milled: 60 x 2 / 144 board feet, of which 0.2148 are waste. */
    private static Sample roughRipped() {
        Sample ripped = SquaredOffcuts.ripped();
        Job job = first(
                ripped.job(),
                board(ripped).rough(IN.length("1"), IN.length("3/4")).build());
        return edited(
                ripped,
                job,
                d -> d.insertStep(2, IN.steps().mill("m/1").only())
                        .tally("0.8333", "0.3125", "0.3060", "0.2148", "0.3750", "2"));
    }

    /** The board is of the rack, and parts come from it; what it leaves beside a strip is fresh test wood. By hand: half of 30.00. */
    private static Sample besideOnTheRack() {
        Sample beside = BesideStrip.sample();
        Job job = newer(beside.job().toBuilder()
                .stack(List.of())
                .rack(List.of(
                        board(beside).onRack(History.UNKNOWN).build(),
                        beside.job().rack().get(0)))
                .build());
        return edited(beside, job, d -> d.cost("15.00", "0", "0", "15.00", "15.00", "0", true));
    }

    /** A knot bars both fitted blanks: the second stays where it lies, 1/4 in before the knot. */
    private static Sample aKnotBehindFittedOnes() {
        Defect knot = new Defect(
                IN.length("58 1/2"), IN.length("59"), IN.length("7"), IN.length("8"), "knot", Defect.Blocks.ALL);
        Job job = first(FOUR.job(), board(FOUR).defects(List.of(knot)).build());
        return edited(FOUR, job, d -> d.spare(12, Optional.of("0")).spare(13, Optional.of("1/4")));
    }

    @Test
    void they_hold() {
        for (Sample sample : List.of(
                railsOfASquareBoard(), nothingLongEnough(), roughRipped(), besideOnTheRack(), aKnotBehindFittedOnes()))
            assertThat(sample.faults()).isEmpty();
    }

    @Test
    void a_board_may_end_where_no_six_decimals_do() {
        Length length = Length.millimeters("1565"); // 61.614173.. in
        Board board = board(FOUR).length(length).build();
        Sample sample = edited(
                FOUR,
                first(FOUR.job(), board),
                d -> d.span("m/1", "0", "61.614173")
                        .spare(12, Optional.of("2.364173"))
                        .spare(13, Optional.of("2.364173"))
                        .cost("29.10", "0", "0", "29.10", "29.10", "0", true)
                        .tally("2.7277", "2.3802", "0", "0.3475", "0.8726", "24"));
        assertThat(sample.faults()).isEmpty();
    }

    @Test
    void whatever_such_a_plan_says_replay_answers() {
        List<Sample> good = List.of(
                FOUR,
                LeftLong.toTheNextEighth(),
                LeftLong.millimeters(),
                TestScrap.sample(),
                WholeStrips.ofASquareBoard());
        int refused = 0;
        for (int seed = 0; seed < 1_000; seed++) {
            Sample sample = good.get(seed % good.size());
            Plan nonsense = new Scramble(seed, sample.plan()).of(sample.plan());
            if (!new Sample(sample.job(), nonsense).faults().isEmpty()) refused++;
        }
        assertThat(refused).isGreaterThan(800);
    }

    static Stream<Corruption> figures() {
        return Stream.of(
                Corruption.ofJob(
                        "a test blank as wide as the narrow end of its piece",
                        HallBench.sample(),
                        NewerJobsTeethTest::newer,
                        "T4: it is listed as 7 in wide; what is left of ash-1 is 7.36875 in. [5.testBlanks]"),
                Corruption.ofJob(
                        "waste that is the rest of the exact figures",
                        RAILS,
                        NewerJobsTeethTest::newer,
                        "plan: boardFeet.waste is 0.2651; consumed - parts - offcuts, as printed, come to 0.2652. [4.boardFeet]"),
                Corruption.ofJob(
                        "a board to buy without what its ends lose",
                        ShortShelves.sample(),
                        NewerJobsTeethTest::newer,
                        "shelf: to buy is a board 600 mm long at least; with what is lost at its ends, one of its blanks needs 618 mm. [4.short]"),
                Corruption.of(
                        "a board to buy that the trims leave too short",
                        nothingLongEnough(),
                        d -> d.shortage("rail", s -> toBuy(s, "27 1/2", "3 1/8")),
                        "rail: to buy is a board 27 1/2 in long at least; with what is lost at its ends, one of its blanks needs 28 in. [4.short]"),
                Corruption.of(
                        "a board to buy that its edge leaves too narrow",
                        nothingLongEnough(),
                        d -> d.shortage("rail", s -> toBuy(s, "28", "3")),
                        "rail: to buy is a board 3 in wide at least; with what is lost at its edges, one of its blanks needs 3 1/8 in. [4.short]"),
                Corruption.of(
                        "what parts leave of an offcut called rack",
                        besideOnTheRack(),
                        d -> d.testBlank(
                                        "T2",
                                        t -> new TestBlank(
                                                t.id(),
                                                t.from(),
                                                Source.RACK,
                                                t.width(),
                                                t.length(),
                                                t.thickness(),
                                                t.species(),
                                                t.proves()))
                                .setting(IN.setting("R3", "2 15/16", "T2", Source.RACK)),
                        "T2: it is listed as from rack; what is left of m6/1 would have been kept, or was opened for it, so fresh is due. [5.testBlanks]"));
    }

    static Stream<Corruption> edges() {
        return Stream.of(
                Corruption.of(
                        "an end called square that a blank's cut made, with nothing left over",
                        railsOfASquareBoard(),
                        d -> d.offcut("O2", o -> o.squareEnds(2)),
                        "O2: it is listed with 2 square ends; what is left of S2 has 1. [3.leftovers]"),
                Corruption.of(
                        "a strip squared before it is milled",
                        roughRipped(),
                        d -> d.swapSteps(2, 3),
                        "m/1: step 2, a square, comes before step 3 mills it. [5.steps]"),
                Corruption.of(
                        "to spare what another that must stay takes",
                        aKnotBehindFittedOnes(),
                        d -> d.spare(12, Optional.of("1/4")),
                        "lip-1: step 12 says that 1/4 in is to spare; beside it 0 in is free. [5.steps]"),
                Corruption.ofJob(
                        "more left over than there is beside its blanks",
                        LeftLong.toTheNextEighth(),
                        job -> job.toBuilder()
                                .breakdown(new Breakdown(IN.length("5/8")))
                                .build(),
                        "rail-1: it ends at 26 9/16 in; its section ends at 27 1/8 in with 5/8 in left over, and the wood between the board's end trims ends at 51 in, so at most 26 1/2 in is due. [2.ends]"));
    }

    @ParameterizedTest
    @MethodSource({"figures", "edges"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
