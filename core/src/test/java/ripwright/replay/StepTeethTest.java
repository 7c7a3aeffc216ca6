package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.plan.Caution;
import ripwright.plan.Step;

class StepTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample DRAWER = DrawerBox.sample();

    static Stream<Corruption> form() {
        return Stream.of(
                Corruption.of(
                        "a step out of number",
                        RAILS,
                        d -> d.number(4, 5),
                        "step 5: it is the one in place 4, so 4 is due. [5.steps]"),
                Corruption.of(
                        "a rip at the crosscut saw",
                        RAILS,
                        d -> d.saw(4, Optional.of(Step.Saw.CROSSCUT)),
                        "step 4: a rip at the crosscut saw; the rip saw is due. [5.steps]"),
                Corruption.of(
                        "a check at a saw",
                        RAILS,
                        d -> d.saw(3, Optional.of(Step.Saw.RIP)),
                        "step 3: a check at the rip saw; no saw is due. [5.steps]"),
                Corruption.of(
                        "a breakdown at no saw",
                        RAILS,
                        d -> d.saw(1, Optional.empty()),
                        "step 1: a breakdown at no saw; the crosscut saw is due. [5.steps]"),
                Corruption.of(
                        "a trim of nothing there is",
                        DRAWER,
                        d -> d.insertStep(9, IN.steps().trim("S8").only()),
                        "step 9: a trim of S8, which is no board, section, strip or offcut of this plan. [5.steps]"),
                Corruption.of(
                        "milling a strip",
                        DRAWER,
                        d -> d.insertStep(9, IN.steps().mill("S2").only()),
                        "step 9: a mill of S2, which is no section or test blank of this plan. [5.steps]"),
                Corruption.of(
                        "a rip without a setting",
                        RAILS,
                        d -> d.stepSetting(4, Optional.empty()),
                        "step 4: a rip without a rip setting. [5.steps]",
                        "S2: step 4, a rip of m1/1, makes it; a rip of m1/1 at R1 is due. [5.steps]",
                        "S3: step 4, a rip of m1/1, makes it; a rip of m1/1 at R1 is due. [5.steps]"),
                Corruption.of(
                        "a rip at a setting that is not listed",
                        RAILS,
                        d -> d.stepSetting(4, Optional.of("R2")),
                        "step 4: a rip at rip setting R2, which is not listed. [5.steps]",
                        "S2: step 4, a rip of m1/1, makes it; a rip of m1/1 at R1 is due. [5.steps]",
                        "S3: step 4, a rip of m1/1, makes it; a rip of m1/1 at R1 is due. [5.steps]"),
                Corruption.of(
                        "a trim at a setting",
                        DRAWER,
                        d -> d.stepSetting(6, Optional.of("R2")),
                        "step 6: a trim at rip setting R2; it needs none. [5.steps]"),
                Corruption.of(
                        "a trim at a stop",
                        DRAWER,
                        d -> d.stop(6, Optional.of("12")),
                        "step 6: a trim at a stop; only blanks are cut at one. [5.steps]"),
                Corruption.of(
                        "a stop step that could spare wood",
                        DRAWER,
                        d -> d.spare(9, Optional.of("1 7/8")),
                        "step 9: it says what is to spare; only a blank of a fitted part does. [5.steps]"),
                Corruption.of(
                        "a check that makes a strip",
                        RAILS,
                        d -> d.makes(3, "S2").makes(4, "S3", "O1"),
                        "step 3: a check makes S2; it makes nothing. [5.steps]",
                        "S2: step 3, a check of S1, makes it; a rip of m1/1 at R1 is due. [5.steps]",
                        "m1/1: step 4 rips strip S3; S2 comes off before it. [5.steps]"),
                Corruption.of(
                        "a rip that makes nothing",
                        DRAWER,
                        d -> d.insertStep(6, IN.steps().rip("R2", "m2/1").only()),
                        "step 6: a rip that makes nothing. [5.steps]"));
    }

    static Stream<Corruption> making() {
        return Stream.of(
                Corruption.of(
                        "a blank never made",
                        RAILS,
                        d -> d.makes(7, "rail-5", "rail-6", "O2"),
                        "rail-7: no step makes it. [5.steps]"),
                Corruption.of(
                        "a blank made twice",
                        RAILS,
                        d -> d.makes(7, "rail-5", "rail-6", "rail-7", "rail-7", "O2"),
                        "rail-7: step 7 makes it, and step 7 again. [5.steps]"),
                Corruption.of(
                        "a step that makes what is not",
                        RAILS,
                        d -> d.makes(7, "rail-5", "rail-6", "rail-7", "rail-8", "O2"),
                        "rail-8: step 7 makes it; the plan has no such piece. [5.steps]"),
                Corruption.of(
                        "a section of another board",
                        BENCH,
                        d -> d.makes(1, "T4", "O1").makes(2, "ash-1/1", "ash-2/1", "ash-2/2", "T3"),
                        "ash-1/1: step 2, a breakdown of ash-2, makes it; the breakdown of ash-1 is due. [5.steps]"),
                Corruption.of(
                        "a strip of another section",
                        BENCH,
                        d -> d.makes(10, "S1", "S3").makes(12, "O2"),
                        "S3: step 10, a rip of ash-1/1, makes it; a rip of ash-2/1 at R1 is due. [5.steps]",
                        "O2: step 12, a rip of ash-2/1, makes it; the last rip of ash-2/1 is due. [5.steps]",
                        "R1: step 10, its first rip, makes S1, S3; the first strip is ripped alone and checked before the rest. [5.steps]"),
                Corruption.of(
                        "blanks of another strip",
                        DRAWER,
                        d -> d.piece(9, "S3").piece(10, "S2"),
                        "side-1: step 9, a blank of S3, makes it; a blank step on S2 is due. [5.steps]",
                        "back-1: step 10, a blank of S2, makes it; a blank step on S3 is due. [5.steps]"),
                Corruption.of(
                        "a full-width offcut made by a trim",
                        BENCH,
                        d -> d.makes(1, "ash-1/1", "T4")
                                .insertStep(2, IN.steps().trim("ash-1", "O1").only()),
                        "O1: step 2, a trim of ash-1, makes it; the breakdown of ash-1 is due. [5.steps]"),
                Corruption.of(
                        "an offcut before the last strip is off",
                        BENCH,
                        d -> d.makes(16, "S4", "O3").makes(18, "S5"),
                        "O3: step 16, a rip of ash-2/2, makes it; the last rip of ash-2/2 is due. [5.steps]"),
                Corruption.of(
                        "an offcut before the last blanks are off",
                        RAILS,
                        d -> d.makes(4, "S2", "S3", "O1", "O2").makes(7, "rail-5", "rail-6", "rail-7"),
                        "O2: step 4, a rip of m1/1, makes it; the last blank step on S2 is due. [5.steps]"),
                Corruption.of(
                        "a test blank cut off by a rip",
                        DRAWER,
                        d -> d.makes(3, "S1", "T2").removeStep(6),
                        "T2: step 3, a rip of m2/1, makes it; a trim of S1 is due. [5.steps]"),
                Corruption.of(
                        "a strip used before it is ripped",
                        DRAWER,
                        d -> d.moveStep(6, 3),
                        "S1: step 3 uses it; it is made only in step 4. [5.steps]"),
                Corruption.of(
                        "a board never broken down",
                        BENCH,
                        d -> d.removeStep(4),
                        "T1: no step makes it. [5.steps]",
                        "T2: no step makes it. [5.steps]",
                        "mpl-1: it is broken down in 0 steps; one is due. [5.steps]"),
                Corruption.of(
                        "a board broken down twice",
                        DRAWER,
                        d -> d.insertStep(2, IN.steps().breakdown("m2").only()),
                        "m2: it is broken down in 2 steps; one is due. [5.steps]"),
                Corruption.of(
                        "ripped stock whose strip a rip makes",
                        BENCH,
                        d -> d.makes(3, "ash-3/1")
                                .insertStep(
                                        13,
                                        IN.steps().rip("R1", "ash-3/1", "S6").only()),
                        "S6: step 13, a rip of ash-3/1, makes it; the breakdown of ash-3 is due. [5.steps]"));
    }

    static Stream<Corruption> cautions() {
        return Stream.of(
                Corruption.of(
                        "a caution about no step",
                        BENCH,
                        d -> d.cautions(new Caution(List.of(18, 27, 30), "Small pieces: push stick.")),
                        "plan: \"Small pieces: push stick.\" is about step 30; the plan has 29. [5.cautions]"),
                Corruption.of(
                        "a caution that says nothing",
                        BENCH,
                        d -> d.cautions(new Caution(List.of(18, 27), " ")),
                        "plan: a caution says nothing. [5.cautions]"),
                Corruption.of(
                        "no caution at a narrow strip",
                        BENCH,
                        d -> d.cautions(new Caution(List.of(27), "Small piece: clamp a stop.")),
                        "S5: at 7/8 in it is under the narrowest rip of 1 in; no caution is about step 18, which cuts it. [3.limits]"),
                Corruption.of(
                        "no caution at a short blank",
                        BENCH,
                        d -> d.cautions(new Caution(List.of(18), "Narrow strip: push stick.")),
                        "plug-1: at 4 in it is under the shortest crosscut of 8 in; no caution is about step 27, which cuts it. [3.limits]"));
    }

    @ParameterizedTest
    @MethodSource({"form", "making", "cautions"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
