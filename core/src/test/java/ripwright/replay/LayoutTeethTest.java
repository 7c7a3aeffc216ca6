package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.MM;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.measure.Unit;
import ripwright.plan.TestBlank;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.History;

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
                                .insertStep(2, IN.steps().breakdown("stick").only())
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

    @ParameterizedTest
    @MethodSource({"ids", "sections", "rippedStock"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
