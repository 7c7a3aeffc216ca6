package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.measure.Length;
import ripwright.plan.Offcut;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Defect.Blocks;
import ripwright.stock.History;

class LeftoverTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();
    private static final Sample LEG = TaperedLeg.sample();

    private static Defect knot(String from, String to, String left, String right, Blocks blocks) {
        return new Defect(IN.length(from), IN.length(to), IN.length(left), IN.length(right), "knot", blocks);
    }

    private static Offcut railsOffcut(String id, String from, String width, String length) {
        return new Offcut(
                from,
                Board.measured(id, "maple", IN.length("3/4"), IN.length(width), IN.length(length))
                        .onRack(History.UNKNOWN)
                        .build());
    }

    static Stream<Corruption> sizes() {
        return Stream.of(
                Corruption.of(
                        "an offcut too long",
                        RAILS,
                        d -> d.offcut("O2", o -> o.length(IN.length("28 1/4"))),
                        "O2: its length is listed as 28 1/4 in; what is left of S2 has 28 1/8 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut too narrow",
                        RAILS,
                        d -> d.offcut("O1", o -> o.width(IN.length("2 1/16"), IN.length("2 1/16"))),
                        "O1: its width is listed as 2 1/16 in; what is left of m1/1 has 2 1/8 in. [3.leftovers]",
                        "O1: its width at the far end is listed as 2 1/16 in; what is left of m1/1 has 2 1/8 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut that hides its taper",
                        LEG,
                        d -> d.offcut("O1", o -> o.width(IN.length("4 7/8"), IN.length("4 7/8"))),
                        "O1: its width is listed as 4 7/8 in; what is left of m3/1 has 5 7/8 in. [3.leftovers]",
                        "O1: its width at the far end is listed as 4 7/8 in; what is left of m3/1 has 3 7/8 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut turned end for end for nothing",
                        LEG,
                        d -> d.offcut("O1", o -> o.width(IN.length("3 7/8"), IN.length("5 7/8"))),
                        "O1: its width is listed as 3 7/8 in; what is left of m3/1 has 5 7/8 in. [3.leftovers]",
                        "O1: its width at the far end is listed as 5 7/8 in; what is left of m3/1 has 3 7/8 in. [3.leftovers]"),
                Corruption.of(
                        "a raw offcut as thick as if it were milled",
                        BENCH,
                        d -> d.offcut("O1", o -> o.rough(IN.length("3/4"), IN.length("3/4"))),
                        "O1: its thickness is listed as 3/4 in; what is left of ash-1 has 1 in. [3.leftovers]"),
                Corruption.of(
                        "a rough offcut that mills to more",
                        BENCH,
                        d -> d.offcut("O1", o -> o.rough(IN.length("1"), IN.length("7/8"))),
                        "O1: its thickness after milling is listed as 7/8 in; what is left of ash-1 has 3/4 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut without its raw end",
                        BENCH,
                        d -> d.offcut("O1", o -> o.endTrim(Length.ZERO, Length.ZERO)),
                        "O1: its end trim at the far end is listed as 0 in; what is left of ash-1 has 1/2 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut with its raw end at the wrong end",
                        BENCH,
                        d -> d.offcut("O1", o -> o.endTrim(IN.length("1/2"), Length.ZERO)),
                        "O1: its end trim at the marked end is listed as 1/2 in; what is left of ash-1 has 0 in. [3.leftovers]",
                        "O1: its end trim at the far end is listed as 0 in; what is left of ash-1 has 1/2 in. [3.leftovers]"));
    }

    static Stream<Corruption> whatItCarriesAlong() {
        return Stream.of(
                Corruption.of(
                        "an offcut with too many straight edges",
                        BENCH,
                        d -> d.offcut("O2", o -> o.edges(2, Length.ZERO, Length.ZERO)),
                        "O2: it is listed with 2 straight edges; what is left of ash-2/1 has 1. [3.leftovers]"),
                Corruption.of(
                        "an offcut without its edge loss",
                        BENCH,
                        d -> d.offcut("O2", o -> o.edges(1, Length.ZERO, IN.length("1/8"))),
                        "O2: its edge loss is listed as 0 in; what is left of ash-2/1 has 1/16 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut with all of the board's crook",
                        BENCH,
                        d -> d.offcut("O2", o -> o.edges(1, IN.length("1/16"), IN.length("1/2"))),
                        "O2: its crook is listed as 1/2 in; what is left of ash-2/1 has 1/8 in. [3.leftovers]"),
                Corruption.of(
                        "an offcut without its defect",
                        BENCH,
                        d -> d.offcut("O3", o -> o.defects(List.of())),
                        "O3: it lacks the knot from 16 1/8 in to 18 1/8 in and 7/8 in to 1 7/8 in across that it carries along. [3.leftovers]"),
                Corruption.of(
                        "an offcut with its defect where it lay before it was turned",
                        BENCH,
                        d -> d.offcut("O3", o -> o.defects(List.of(knot("11 7/8", "13 7/8", "1", "2", Blocks.ALL)))),
                        "O3: it lacks the knot from 16 1/8 in to 18 1/8 in and 7/8 in to 1 7/8 in across that it carries along. [3.leftovers]",
                        "O3: it lists a knot from 11 7/8 in to 13 7/8 in and 1 in to 2 in across that ash-2 does not have there. [3.leftovers]"),
                Corruption.of(
                        "an offcut whose defect blocks less",
                        BENCH,
                        d -> d.offcut(
                                "O3", o -> o.defects(List.of(knot("16 1/8", "18 1/8", "7/8", "1 7/8", Blocks.SHOW)))),
                        "O3: it lacks the knot from 16 1/8 in to 18 1/8 in and 7/8 in to 1 7/8 in across that it carries along. [3.leftovers]",
                        "O3: it lists a knot from 16 1/8 in to 18 1/8 in and 7/8 in to 1 7/8 in across that ash-2 does not have there. [3.leftovers]"),
                Corruption.of(
                        "an offcut of another species",
                        RAILS,
                        d -> d.offcutFrom("O2", "S2")
                                .removeOffcut("O2")
                                .addOffcut(new Offcut(
                                        "S2",
                                        Board.measured(
                                                        "O2",
                                                        "cherry",
                                                        IN.length("3/4"),
                                                        IN.length("2 1/4"),
                                                        IN.length("28 1/8"))
                                                .onRack(History.UNKNOWN)
                                                .build())),
                        "O2: it is listed as cherry; m1 is maple. [3.leftovers]"),
                Corruption.of(
                        "an offcut as ripped stock",
                        RAILS,
                        d -> d.offcut("O2", o -> o.ripped(true)),
                        "O2: it is listed as ripped stock; an offcut is listed by its edges. [3.leftovers]"),
                Corruption.of(
                        "an offcut at another price",
                        RAILS,
                        d -> d.offcut("O2", o -> o.price(new BigDecimal("9.50"))),
                        "O2: its price is listed as 9.50; that of m1 is 6.00. [3.leftovers]"));
    }

    static Stream<Corruption> listing() {
        return Stream.of(
                Corruption.of(
                        "an offcut not listed",
                        RAILS,
                        d -> d.removeOffcut("O2").makes(7, "rail-5", "rail-6", "rail-7"),
                        "S2: what is left of it from 67 7/8 in to 96 in, 2 1/4 in wide, is worth keeping and not listed. [3.leftovers]"),
                Corruption.of(
                        "waste listed as an offcut",
                        RAILS,
                        d -> d.addOffcut(railsOffcut("O4", "S1", "2 1/4", "5 1/2"))
                                .makes(6, "rail-1", "rail-2", "rail-3", "rail-4", "O4"),
                        "O4: at 5 1/2 in by 2 1/4 in it is too small to be kept; raw end trim not counted, 12 in by 2 in is the least. [3.leftovers]"),
                Corruption.of(
                        "an offcut from nowhere",
                        RAILS,
                        d -> d.addOffcut(railsOffcut("O4", "S1", "2 1/4", "14"))
                                .makes(6, "rail-1", "rail-2", "rail-3", "rail-4", "O4"),
                        "O4: nothing more is left of S1 that is worth keeping. [3.leftovers]"),
                Corruption.of(
                        "an offcut of no piece",
                        RAILS,
                        d -> d.addOffcut(railsOffcut("O4", "S8", "2 1/4", "14"))
                                .makes(6, "rail-1", "rail-2", "rail-3", "rail-4", "O4"),
                        "O4: it is what is left of S8, which is no board, section or strip of this plan. [3.leftovers]"),
                Corruption.of(
                        "an offcut of itself",
                        SHELVES,
                        d -> d.offcutFrom("O1", "O1"),
                        "O1: it is what is left of O1, which is no board, section or strip of this plan. [3.leftovers]",
                        "S5: what is left of it from 1518 mm to 1990 mm, 60 mm wide, is worth keeping and not listed. [3.leftovers]"),
                Corruption.of(
                        "two offcuts of each other's strips",
                        RAILS,
                        d -> d.offcutFrom("O2", "S3")
                                .offcutFrom("O3", "S2")
                                .makes(5, "cleat-1", "cleat-2", "O2")
                                .makes(7, "rail-5", "rail-6", "rail-7", "O3"),
                        "O3: its length is listed as 35 3/4 in; what is left of S2 has 28 1/8 in. [3.leftovers]",
                        "O2: its length is listed as 28 1/8 in; what is left of S3 has 35 3/4 in. [3.leftovers]"));
    }

    @ParameterizedTest
    @MethodSource({"sizes", "whatItCarriesAlong", "listing"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
