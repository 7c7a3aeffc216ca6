package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.MM;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.stock.Defect;
import ripwright.stock.Species;

class StripTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();
    private static final Sample DRAWER = DrawerBox.sample();
    private static final Sample LEG = TaperedLeg.sample();

    static Stream<Corruption> strips() {
        return Stream.of(
                Corruption.of(
                        "a first strip off the reference edge",
                        RAILS,
                        d -> d.offset("S1", "1/8")
                                .offset("S2", "2 1/2")
                                .offset("S3", "4 7/8")
                                .offcut("O1", o -> o.width(IN.length("2"), IN.length("2")))
                                .cost("37.00", "6.99", "0.00", "30.01", "30.01", "0", true)
                                .tally("4.6250", "2.5488", "1.7485", "0.3277", "0.5511", "19.50"),
                        "m1/1: strip S1 starts at 1/8 in; the first lies at the reference edge, so 0 is due. [3.strips]"),
                Corruption.of(
                        "a strip that starts half a kerf late",
                        DRAWER,
                        d -> d.offset("S3", "7 5/16"),
                        "m2/1: strip S3 starts at 7 5/16 in; S2 ends at 7 1/8 in and the rip kerf is 1/8 in, so 7 1/4 in is due. [3.strips]"),
                Corruption.of(
                        "a strip that starts without a kerf",
                        DRAWER,
                        d -> d.offset("S3", "7 1/8"),
                        "m2/1: strip S3 starts at 7 1/8 in; S2 ends at 7 1/8 in and the rip kerf is 1/8 in, so 7 1/4 in is due. [3.strips]"),
                Corruption.of(
                        "a wider strip after a narrower one",
                        DRAWER,
                        d -> d.strips("m2/1", strips -> {
                                    Collections.swap(strips, 1, 2);
                                    return strips;
                                })
                                .offset("S3", "4 1/8")
                                .offset("S2", "7 3/16"),
                        "m2/1: strip S2 is 3 in wide, wider than S3 before it with 2 15/16 in; widths never increase. [3.strips]",
                        "m2/1: step 5 rips strip S2; S3 comes off before it. [5.steps]"),
                Corruption.ofJob(
                        "strips in the loss of the other edge",
                        BENCH,
                        job -> Jobs.board(job, "ash-1", b -> b.edges(1, IN.length("1/2"), Length.ZERO)),
                        "ash-1/1: its strips reach 7 1/8 in from the raw reference edge; the section is 7.49 in wide and its other edge loses 1/2 in, so 6.99 in is the most. [3.strips]",
                        "O1: its edge loss is listed as 1/8 in; what is left of ash-1 has 1/2 in. [3.leftovers]"),
                Corruption.of(
                        "a strip 0 wide",
                        SHELVES,
                        d -> d.strips("oak-1/1", strips -> {
                            strips.add(MM.strip("S9", "186", "0", "R2"));
                            return strips;
                        }),
                        "oak-1/1: its strips reach 201 mm from the raw reference edge; the section is 200 mm wide and its other edge loses 0 mm, so 200 mm is the most. [3.strips]",
                        "oak-1/1: strip S9 is 0 wide; it must be more. [3.strips]",
                        "oak-1/1: strip S9 is 0 mm wide; its rip setting R2 makes 60 mm. [5.settings]",
                        "S9: no step makes it. [5.steps]",
                        "plan: minutes is 32.00; 41.00 is due for 3 settings, 10 rips and 8 crosscuts. [4.labor]"),
                Corruption.of(
                        "a strip without a setting",
                        RAILS,
                        d -> d.atSetting("S3", ""),
                        "m1/1: strip S3 names no rip setting. [5.settings]",
                        "S3: step 4, a rip of m1/1, makes it; a rip of m1/1 at its setting is due. [5.steps]"),
                Corruption.of(
                        "a strip at a setting that is not listed",
                        RAILS,
                        d -> d.atSetting("S3", "R7"),
                        "m1/1: strip S3 names the rip setting R7, which is not listed. [5.settings]",
                        "S3: step 4, a rip of m1/1, makes it; a rip of m1/1 at R7 is due. [5.steps]"),
                Corruption.of(
                        "a setting a hair off its strips",
                        LEG,
                        d -> d.setting(IN.setting("R1", "4.0001")),
                        "m3/1: strip S1 is 4 in wide; its rip setting R1 makes 4.0001 in. [5.settings]"),
                Corruption.ofJob(
                        "a bare strip under the narrowest rip",
                        SHELVES,
                        job -> Jobs.saw(job, saw -> Jobs.narrowest(saw, MM.length("61"))),
                        "oak-1/2: strip S5 is 60 mm wide and carries no blank that is; the narrowest rip is 61 mm. [3.limits]",
                        "S3: at 60 mm it is under the narrowest rip of 61 mm; no caution is about step 8, which cuts it. [3.limits]",
                        "S4: at 60 mm it is under the narrowest rip of 61 mm; no caution is about step 10, which cuts it. [3.limits]",
                        "S5: at 60 mm it is under the narrowest rip of 61 mm; no caution is about step 10, which cuts it. [3.limits]"));
    }

    private static Defect knot(Defect.Blocks blocks) {
        return new Defect(IN.length("10"), IN.length("11"), IN.length("1"), IN.length("2"), "knot", blocks);
    }

    private static Part cleat(Part.Builder builder) {
        return builder.count(2).build();
    }

    private static Part.Builder cleat(String thickness) {
        return Part.of("cleat", IN.length("30"), IN.length("2 1/4"), IN.length(thickness));
    }

    static Stream<Corruption> blanks() {
        return Stream.of(
                Corruption.of(
                        "a blank for no part",
                        RAILS,
                        d -> d.blank("rail-7", "rial", "45 1/4", "22 1/2"),
                        "rail-7: it is for \"rial\", which the bill does not have. [3.blanks]",
                        "rail: 6 made and 0 short; the bill wants 7. [4.short]",
                        "plan: boardFeet.parts is 2.5488; 2.2852 is due. [4.boardFeet]",
                        "plan: boardFeet.waste is 0.2651; 0.5288 is due. [4.boardFeet]",
                        "plan: yield is 0.5511; 0.4941 is due. [4.yield]"),
                Corruption.ofJob(
                        "blanks without their sneak-up oversize",
                        RAILS,
                        job -> Jobs.part(job, "cleat", p -> cleat(cleat("3/4").sneakUp(IN.length("1/4")))),
                        "cleat-1: it is 30 in long; cleat with its sneak-up oversize needs 30 1/4 in. [3.blanks]",
                        "cleat-2: it is 30 in long; cleat with its sneak-up oversize needs 30 1/4 in. [3.blanks]"),
                Corruption.ofJob(
                        "blanks without their edge allowance",
                        RAILS,
                        job -> Jobs.part(job, "cleat", p -> cleat(cleat("3/4").edgeAllowance(IN.length("0.0002")))),
                        "cleat-1: its strip S3 is 2 1/4 in wide; cleat with its edge allowance needs 2.2502 in. [3.blanks]",
                        "cleat-2: its strip S3 is 2 1/4 in wide; cleat with its edge allowance needs 2.2502 in. [3.blanks]"),
                Corruption.ofJob(
                                "blanks of another thickness",
                                RAILS,
                                job -> Jobs.part(job, "cleat", p -> cleat(cleat("13/16"))),
                                "cleat-1: board m1 mills to 3/4 in; cleat needs 13/16 in. [2.rough]",
                                "cleat-2: board m1 mills to 3/4 in; cleat needs 13/16 in. [2.rough]")
                        .and(d -> d.tally("4.6250", "2.6074", "1.8110", "0.2065", "0.5638", "19.50")),
                Corruption.ofJob(
                        "blanks of another species",
                        RAILS,
                        job -> Jobs.part(
                                job,
                                "cleat",
                                p -> cleat(cleat("3/4").species(Set.of(new Species("oak"), new Species("ash"))))),
                        "cleat-1: board m1 is maple; cleat takes ash or oak. [2.species]",
                        "cleat-2: board m1 is maple; cleat takes ash or oak. [2.species]"),
                Corruption.of(
                        "blanks half a kerf apart",
                        RAILS,
                        d -> d.blank("rail-2", "rail", "22 9/16", "22 1/2").minutes("21.50"),
                        "rail-2: it starts at 22 9/16 in; rail-1 ends at 22 1/2 in and the crosscut kerf is 1/8 in, so at least 22 5/8 in is due. [3.blanks]"),
                Corruption.of(
                        "a blank before its strip",
                        SHELVES,
                        d -> d.blank("shelf-1", "shelf", "9", "598").minutes("34.00"),
                        "shelf-1: it starts at 9 mm; strip S1 starts at 10 mm. [3.blanks]"),
                Corruption.of(
                        "a blank beyond its strip",
                        RAILS,
                        d -> d.blank("rail-4", "rail", "73 5/8", "22 1/2").minutes("20.50"),
                        "rail-4: it ends at 96 1/8 in; strip S1 ends at 96 in. [3.blanks]"),
                Corruption.ofJob(
                        "a blank over a defect that blocks all",
                        RAILS,
                        job -> Jobs.board(job, "m1", b -> b.defects(List.of(knot(Defect.Blocks.ALL)))),
                        "rail-1: it lies from 0 in to 22 1/2 in and 0 in to 2 1/4 in across, over a knot from 10 in to 11 in and 1 in to 2 in across that bars rail. [3.blanks]"),
                Corruption.ofJob(
                        "a show blank over a defect that blocks show",
                        RAILS,
                        job -> Jobs.board(job, "m1", b -> b.defects(List.of(knot(Defect.Blocks.SHOW)))),
                        "rail-1: it lies from 0 in to 22 1/2 in and 0 in to 2 1/4 in across, over a knot from 10 in to 11 in and 1 in to 2 in across that bars rail. [3.blanks]"),
                Corruption.of(
                        "a short blank before a longer one",
                        BENCH,
                        d -> d.blank("plug-1", "plug", "48 1/8", "4")
                                .blank("bead-1", "bead", "52 1/4", "20")
                                .blanks("S5", blanks -> {
                                    Collections.swap(blanks, 0, 1);
                                    return blanks;
                                }),
                        "plug-1: at 4 in it is under the shortest crosscut of 8 in and lies before bead-1; such blanks come last in their strip. [3.limits]"));
    }

    @ParameterizedTest
    @MethodSource({"strips", "blanks"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
