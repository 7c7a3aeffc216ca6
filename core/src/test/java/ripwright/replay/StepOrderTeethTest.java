package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StepOrderTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();
    private static final Sample DRAWER = DrawerBox.sample();

    static Stream<Corruption> preparing() {
        return Stream.of(
                Corruption.of(
                        "a rough section never milled",
                        BENCH,
                        d -> d.removeStep(5),
                        "ash-1/1: it is milled in 0 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "a rough section milled after its first rip",
                        BENCH,
                        d -> d.moveStep(5, 12),
                        "ash-1/1: step 9, a rip, comes before step 12 mills it. [5.steps]"),
                Corruption.of(
                        "a rough test blank never milled",
                        BENCH,
                        d -> d.removeStep(6),
                        "T4: it is milled in 0 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "a rough test blank milled after its test",
                        BENCH,
                        d -> d.moveStep(6, 16),
                        "T4: step 14 tests what it proves before step 16 mills it. [5.steps]"),
                Corruption.of(
                        "a milled section milled again",
                        BENCH,
                        d -> d.insertStep(7, IN.steps().mill("ash-2/1").only()),
                        "ash-2/1: it is milled in 1 step; 0 are due. [5.steps]"),
                Corruption.of(
                        "a crooked section never straightened",
                        BENCH,
                        d -> d.removeStep(7),
                        "ash-2/1: it is straightened in 0 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "a straight section straightened",
                        BENCH,
                        d -> d.insertStep(7, IN.steps().straighten("ash-1/1").only()),
                        "ash-1/1: it is straightened in 1 step; 0 are due. [5.steps]"),
                Corruption.of(
                        "a straight test blank straightened",
                        BENCH,
                        d -> d.insertStep(7, IN.steps().straighten("T1").only()),
                        "T1: it is straightened in 1 step; 0 are due. [5.steps]"),
                Corruption.of(
                        "straightening after the first setting",
                        BENCH,
                        d -> d.moveStep(8, 14),
                        "ash-2/2: step 14 straightens it after step 8, where the first setting begins; all straightening comes before. [5.steps]"),
                Corruption.of(
                        "straightening after its own rip",
                        SHELVES,
                        d -> d.moveStep(2, 6),
                        "oak-1/1: step 3 rips it before step 6 straightens it. [5.steps]",
                        "oak-1/1: step 6 straightens it after step 2, where the first setting begins; all straightening comes before. [5.steps]"));
    }

    static Stream<Corruption> rips() {
        return Stream.of(
                Corruption.of(
                        "a narrower setting first",
                        BENCH,
                        d -> d.moveStep(15, 13).moveStep(16, 14),
                        "R2: step 15 sets the fence back to it after R3; each setting comes once, widest first. [5.steps]"),
                Corruption.of(
                        "a setting come back to",
                        BENCH,
                        d -> d.moveStep(12, 14),
                        "R1: step 14 sets the fence back to it after R2; each setting comes once, widest first. [5.steps]"),
                Corruption.of(
                        "strips out of turn",
                        RAILS,
                        d -> d.makes(2, "S2").piece(3, "S2").makes(4, "S1", "S3", "O1"),
                        "m1/1: step 2 rips strip S2; S1 comes off before it. [5.steps]"),
                Corruption.of(
                        "a setting never tested",
                        DRAWER,
                        d -> d.removeStep(7),
                        "R3: it is tested in 0 steps; 1 is due. [5.steps]"),
                Corruption.of(
                        "a setting tested twice",
                        DRAWER,
                        d -> d.insertStep(3, IN.steps().test("R1", "T1").only()),
                        "R1: it is tested in 2 steps; 1 is due. [5.steps]",
                        "R1: step 3, a test, comes between its test and its first rip; only crosscuts may. [5.steps]"),
                Corruption.of(
                        "a setting tested on another of its blanks",
                        BENCH,
                        d -> d.piece(13, "T1"),
                        "R2: step 13 tests it on T1; it is tested first on T2. [5.steps]"),
                Corruption.of(
                        "a setting tested after its first rip",
                        DRAWER,
                        d -> d.swapSteps(7, 8),
                        "R3: step 7 rips at it before step 8 tests it. [5.steps]"),
                Corruption.of(
                        "milling between a test and its setting",
                        BENCH,
                        d -> d.moveStep(6, 13),
                        "R2: step 13, a mill, comes between its test and its first rip; only crosscuts may. [5.steps]"),
                Corruption.of(
                        "a first strip never checked",
                        RAILS,
                        d -> d.removeStep(3),
                        "R1: it is checked in 0 steps; for 3 strips 1 is due. [5.steps]"),
                Corruption.of(
                        "a first strip checked twice",
                        RAILS,
                        d -> d.insertStep(4, IN.steps().check("R1", "S1").only()),
                        "R1: it is checked in 2 steps; for 3 strips 1 is due. [5.steps]"),
                Corruption.of(
                        "a check of a setting with one strip",
                        DRAWER,
                        d -> d.insertStep(4, IN.steps().check("R1", "S1").only()),
                        "R1: it is checked in 1 step; for 1 strip 0 are due. [5.steps]"),
                Corruption.of(
                        "a check after the rest is ripped",
                        RAILS,
                        d -> d.swapSteps(3, 4),
                        "R1: step 4 checks it; its first rip is step 2, and the check comes directly after. [5.steps]"),
                Corruption.of(
                        "a check of another strip",
                        SHELVES,
                        d -> d.piece(5, "S2").moveStep(5, 6),
                        "R1: step 6 checks it; its first rip is step 4, and the check comes directly after. [5.steps]",
                        "R1: step 6 checks strip S2; its first rip makes S1. [5.steps]"),
                Corruption.of(
                        "a first rip of two strips",
                        RAILS,
                        d -> d.makes(2, "S1", "S2").makes(4, "S3", "O1"),
                        "R1: step 2, its first rip, makes S1, S2; the first strip is ripped alone and checked before the rest. [5.steps]"),
                Corruption.of(
                        "a test blank cut after its test",
                        DRAWER,
                        d -> d.swapSteps(6, 7),
                        "T2: step 6 uses it; it is made only in step 7. [5.steps]",
                        "T2: step 7 makes it; step 6 tests R3 that it proves, and it must be there before. [5.testBlanks]"));
    }

    static Stream<Corruption> stops() {
        return Stream.of(
                Corruption.of(
                        "a shorter stop first",
                        RAILS,
                        d -> d.moveStep(5, 7),
                        "step 7: the stop goes out to 30 in after 22 1/2 in; each stop comes once, longest first. [5.steps]"),
                Corruption.of(
                        "a stop come back to",
                        RAILS,
                        d -> d.swapSteps(5, 6),
                        "step 6: the stop goes out to 30 in after 22 1/2 in; each stop comes once, longest first. [5.steps]"),
                Corruption.of(
                        "a blank at another's stop",
                        BENCH,
                        d -> d.makes(21, "rail-1", "rail-2")
                                .makes(19, "apron-1", "block-1")
                                .removeStep(22),
                        "block-1: step 19 cuts it at a stop of 26 in; it is 20 in long. [5.steps]"),
                Corruption.of(
                        "a blank left out at its stop",
                        RAILS,
                        d -> d.makes(6, "rail-1", "rail-2", "rail-3")
                                .insertStep(
                                        7,
                                        IN.steps()
                                                .stop("22 1/2", "S1", "rail-4")
                                                .only()),
                        "step 7: it cuts S1 at a stop of 22 1/2 in, as step 6 does; one step makes all blanks of a strip at a stop. [5.steps]"),
                Corruption.of(
                        "a fitted part at a stop",
                        BENCH,
                        d -> d.stop(28, Optional.of("20"))
                                .spare(28, Optional.empty())
                                .moveStep(28, 25),
                        "lip-1: step 25 cuts it at a stop; fitted parts are cut one by one, without. [5.steps]"),
                Corruption.of(
                        "a fitted part before the stops are done",
                        BENCH,
                        d -> d.moveStep(28, 27),
                        "step 28: it cuts at a stop after step 27; fitted parts come last. [5.steps]"),
                Corruption.of(
                        "fitted parts out of the bill's order",
                        BENCH,
                        d -> d.swapSteps(28, 29),
                        "lip-1: step 29 cuts it after tongue, which the bill has later; fitted parts come in the order of the bill. [5.steps]"),
                Corruption.of(
                        "two fitted parts in one step",
                        BENCH,
                        d -> d.makes(28, "lip-1", "tongue-1").removeStep(29),
                        "step 28: it cuts 2 blanks without a stop; fitted parts are cut one a step. [5.steps]",
                        "tongue-1: step 28 says that 2 3/8 in is to spare; beside it 5 1/2 in is free. [5.steps]"),
                Corruption.of(
                        "a part that is not fitted without a stop",
                        BENCH,
                        d -> d.stop(26, Optional.empty())
                                .spare(26, Optional.of("0"))
                                .moveStep(26, 27),
                        "filler-1: step 27 cuts it without a stop; filler is not fitted. [5.steps]"),
                Corruption.of(
                        "a fitted part that does not say what is to spare",
                        BENCH,
                        d -> d.spare(28, Optional.empty()),
                        "lip-1: step 28 does not say what its strip could spare. [5.steps]"),
                Corruption.of(
                        "more to spare than a defect leaves",
                        BENCH,
                        d -> d.spare(28, Optional.of("4 1/4")),
                        "lip-1: step 28 says that 4 1/4 in is to spare; beside it 2 3/8 in is free. [5.steps]"),
                Corruption.of(
                        "less to spare than there is",
                        BENCH,
                        d -> d.spare(29, Optional.of("4 1/2")),
                        "tongue-1: step 29 says that 4 1/2 in is to spare; beside it 5 1/2 in is free. [5.steps]"));
    }

    @ParameterizedTest
    @MethodSource({"preparing", "rips", "stops"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
