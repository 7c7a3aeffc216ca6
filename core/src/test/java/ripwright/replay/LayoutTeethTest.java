package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.MM;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.TestBlank;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

class LayoutTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();
    private static final Sample DRAWER = DrawerBox.sample();
    private static final Sample LEG = TaperedLeg.sample();

    static Stream<Corruption> ids() {
        Board stick = Board.measured("stick", "pine", IN.length("3/4"), IN.length("1 1/2"), IN.length("24"))
                .onRack(History.UNKNOWN)
                .build();
        Sample withStick = new Sample(Jobs.addToRack(RAILS.job(), stick), RAILS.plan());
        return Stream.of(
                Corruption.of(
                        "another job's name",
                        RAILS,
                        d -> d.job("bench"),
                        "plan: its job is \"bench\"; \"bench rails\" is due. [5.head]"),
                Corruption.of(
                        "other units",
                        RAILS,
                        d -> d.units(Unit.MILLIMETER),
                        "plan: its units are mm; those of the job are in. [5.head]"),
                Corruption.of(
                        "a board the job does not have",
                        RAILS,
                        d -> d.addBoard("m9"),
                        "m9: the job has no such board. [1.ids]"),
                Corruption.of(
                        "a board listed twice",
                        BENCH,
                        d -> d.addBoard("mpl-1"),
                        "mpl-1: the board is listed twice. [1.ids]"),
                Corruption.of(
                        "an offcut of the rack consumed for nothing",
                        withStick,
                        d -> d.addBoard("stick")
                                .insertStep(
                                        2, IN.steps().breakdown("stick").list().get(0))
                                .tally("4.8125", "2.5488", "1.8110", "0.4526", "0.5296", "19.50"),
                        "stick: it is consumed, but neither a section nor a test blank comes from it. [5.boards]"),
                Corruption.of(
                        "two blanks of one id",
                        RAILS,
                        d -> d.renameBlank("S2", "rail-7", "rail-6").makes(7, "rail-5", "rail-6", "O2"),
                        "rail-6: is the id of a blank, and of a blank already; ids must differ. [1.ids]"),
                Corruption.of(
                        "a strip with a setting's id",
                        DRAWER,
                        d -> d.settings(settings -> List.of(
                                        IN.setting("S3", "4", "T1", TestBlank.Source.WASTE),
                                        settings.get(1),
                                        settings.get(2)))
                                .atSetting("S1", "S3")
                                .proves("T1", "S3", "R2")
                                .stepSetting(2, Optional.of("S3"))
                                .stepSetting(3, Optional.of("S3")),
                        "S3: is the id of a rip setting, and of a strip already; ids must differ. [1.ids]"),
                Corruption.of(
                        "a tab in an id",
                        RAILS,
                        d -> d.renameBlank("S2", "rail-7", "rail\t7").makes(7, "rail-5", "rail-6", "rail\t7", "O2"),
                        "rail\t7: is no id for a blank. The id holds a control character, such as a line break or tab. [1.ids]"),
                Corruption.of(
                        "an offcut the rack could not take",
                        RAILS,
                        d -> d.offcut("O2", o -> o.id("O#2")).makes(7, "rail-5", "rail-6", "rail-7", "O#2"),
                        "O#2: is no id for an offcut; the rack takes none that contains \"#\". [1.ids]"),
                Corruption.of(
                        "an offcut with the id of a board still there",
                        withStick,
                        d -> d.offcut("O2", o -> o.id("stick")).makes(7, "rail-5", "rail-6", "rail-7", "stick"),
                        "stick: is the id of an offcut, and of a board still there; ids must differ. [1.ids]"));
    }

    static Stream<Corruption> sections() {
        return Stream.of(
                new Corruption(
                        "four sections",
                        Blocks.three(),
                        Blocks.four(),
                        List.of("m5: it is cut into 4 sections; at most three are due. [3.sections]")),
                Corruption.ofJob(
                                "a section that is never ripped",
                                Blocks.three(),
                                job -> Jobs.part(job, "block", part -> Jobs.count(part, 2)),
                                "m5/3: it has no strip; a section has at least one. [3.sections]")
                        .and(d -> d.strips("m5/3", strips -> List.of())
                                .removeStep(8)
                                .removeStep(5)
                                .tally("1.2578", "0.6250", "0", "0.6328", "0.4969", "12")),
                Corruption.ofJob(
                                "a section that ends where it starts",
                                Blocks.three(),
                                job -> Jobs.part(job, "block", part -> Jobs.count(part, 2)),
                                "m5/3: it has no strip; a section has at least one. [3.sections]",
                                "m5/3: it ends at 45 3/8 in, not beyond its start at 45 3/8 in. [3.sections]")
                        .and(d -> d.strips("m5/3", strips -> List.of())
                                .span("m5/3", "45 3/8", "45 3/8")
                                .removeStep(8)
                                .removeStep(5)
                                .tally("1.2578", "0.6250", "0", "0.6328", "0.4969", "13")),
                Corruption.of(
                        "sections half a kerf apart",
                        BENCH,
                        d -> d.span("ash-2/1", "0", "48 1/16")
                                .offcut("O2", o -> o.length(IN.length("48 1/16")))
                                .cost("88.17", "10.60", "33.25", "110.82", "100.00", "0.0977", false)
                                .tally("10.1146", "3.6712", "2.9710", "3.4724", "0.3630", "66.50"),
                        "ash-2/2: it starts at 48 1/8 in; ash-2/1 ends at 48 1/16 in and the crosscut kerf is 1/8 in, so at least 48 3/16 in is due. [3.sections]"),
                Corruption.of(
                        "a section in the trim of the marked end",
                        SHELVES,
                        d -> d.span("oak-1/1", "9", "1210").minutes("34.00"),
                        "oak-1/1: it starts at 9 mm; the end trim there is 10 mm. [2.ends]"),
                Corruption.of(
                        "a section in the trim of the far end",
                        SHELVES,
                        d -> d.span("oak-1/2", "1518", "1991")
                                .offcut("O1", o -> o.length(MM.length("473")))
                                .tally("3.3902", "2.3006", "0.2405", "0.8491", "0.6786", "32.00"),
                        "oak-1/2: it ends at 1991 mm; the board is 2000 mm long and the end trim there is 10 mm, so at most 1990 mm is due. [2.ends]"),
                Corruption.ofJob(
                        "a section longer than the longest rip",
                        BENCH,
                        job -> Jobs.saw(job, saw -> Jobs.longest(saw, IN.length("49"))),
                        "ash-1/1: it is 50 in long; the longest rip is 49 in. [3.sections]"),
                Corruption.ofJob(
                        "a section shorter than the shortest rip",
                        RAILS,
                        job -> Jobs.saw(
                                Jobs.testRip(job, new TestRip(IN.length("97"), 0)),
                                saw -> Jobs.shortest(saw, IN.length("97"))),
                        "m1/1: it is 96 in long; the shortest rip is 97 in. [3.sections]"),
                Corruption.of(
                        "a tapered board on its right edge",
                        LEG,
                        d -> d.rides("m3/1", Edge.RIGHT, "0"),
                        "m3/1: it rides its right edge; a tapered board rides its left one. [2.width]"),
                Corruption.of(
                        "a crooked edge that gives up too little",
                        BENCH,
                        d -> d.rides("ash-2/1", Edge.LEFT, "1/16")
                                .offcut("O2", o -> o.width(IN.length("2 13/16"), IN.length("2 13/16")))
                                .cost("88.17", "10.66", "32.75", "110.26", "100.00", "0.0931", false)
                                .tally("10.1146", "3.6712", "2.9857", "3.4577", "0.3630", "65.50"),
                        "ash-2/1: its reference edge gives up 1/16 in; over 48 in of a board 96 in long with a crook of 1/2 in and an edge loss of 1/16 in, 1/8 in is due. [2.edges]"));
    }

    static Stream<Corruption> rippedStock() {
        return Stream.of(
                Corruption.of(
                        "ripped stock cut in two sections",
                        BENCH,
                        d -> d.sections(
                                        "ash-3",
                                        sections -> List.of(
                                                IN.section(
                                                        "ash-3/1",
                                                        "1/2",
                                                        "31",
                                                        Edge.LEFT,
                                                        "0",
                                                        IN.strip(
                                                                "S6",
                                                                "0",
                                                                "2",
                                                                "",
                                                                IN.blank("filler-1", "filler", "1/2", "10"),
                                                                IN.blank("lip-1", "lip", "10 5/8", "20"))),
                                                IN.section(
                                                        "ash-3/2",
                                                        "31 1/8",
                                                        "59 1/2",
                                                        Edge.LEFT,
                                                        "0",
                                                        IN.strip(
                                                                "S7",
                                                                "0",
                                                                "2",
                                                                "",
                                                                IN.blank("tongue-1", "tongue", "35", "20")))))
                                .makes(3, "ash-3/1", "S6", "ash-3/2", "S7")
                                .spare(28, Optional.of("3/8"))
                                .piece(29, "S7")
                                .cost("88.17", "10.59", "33.25", "110.83", "100.00", "0.0978", false)
                                .minutes("66.50"),
                        "ash-3: ripped stock is cut into 2 sections; one is due. [2.ripped]",
                        "ash-3/1: it runs from 1/2 in to 31 in; of ripped stock it goes from trim to trim, 1/2 in to 59 1/2 in. [2.ripped]",
                        "ash-3/2: it runs from 31 1/8 in to 59 1/2 in; of ripped stock it goes from trim to trim, 1/2 in to 59 1/2 in. [2.ripped]"),
                Corruption.of(
                        "ripped stock not cut trim to trim",
                        BENCH,
                        d -> d.span("ash-3/1", "1/2", "59").spare(29, Optional.of("5")),
                        "ash-3/1: it runs from 1/2 in to 59 in; of ripped stock it goes from trim to trim, 1/2 in to 59 1/2 in. [2.ripped]"),
                Corruption.of(
                        "ripped stock ripped narrower",
                        BENCH,
                        d -> d.width("S6", "1 15/16"),
                        "ash-3/1: strip S6 is 1 15/16 in wide; ripped stock is one strip of its full 2 in. [2.ripped]",
                        "filler-1: its strip S6 is 1 15/16 in wide; filler with its edge allowance needs 2 in. [3.blanks]",
                        "lip-1: its strip S6 is 1 15/16 in wide; lip with its edge allowance needs 2 in. [3.blanks]",
                        "tongue-1: its strip S6 is 1 15/16 in wide; tongue with its edge allowance needs 2 in. [3.blanks]"),
                Corruption.of(
                        "ripped stock at a rip setting",
                        BENCH,
                        d -> d.atSetting("S6", "R1"),
                        "ash-3/1: strip S6 names the rip setting R1; ripped stock has none. [2.ripped]"),
                Corruption.of(
                        "ripped stock in two strips",
                        BENCH,
                        d -> d.strips("ash-3/1", strips -> {
                            strips.add(IN.strip("S7", "2 1/8", "2", ""));
                            return strips;
                        }),
                        "ash-3/1: it has 2 strips; ripped stock is one. [2.ripped]",
                        "ash-3/1: its strips reach 4 1/8 in from the raw reference edge; the section is 2 in wide and its other edge loses 0 in, so 2 in is the most. [3.strips]",
                        "S7: no step makes it. [5.steps]"));
    }

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
    @MethodSource({"ids", "sections", "rippedStock", "strips", "blanks"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
