package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.MM;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.bill.Part;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Shortage.Buy;
import ripwright.stock.Species;

class BillTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();

    private static Corruption buy(String name, UnaryOperator<Buy> edit, String... messages) {
        return Corruption.of(
                name,
                SHELVES,
                d -> d.shortage("shelf", s -> new Shortage(s.part(), s.count(), edit.apply(s.buy()))),
                messages);
    }

    static Stream<Corruption> corruptions() {
        return Stream.of(
                Corruption.ofJob(
                        "a part made once too seldom",
                        RAILS,
                        job -> Jobs.part(job, "rail", part -> Jobs.count(part, 8)),
                        "rail: 7 made and 0 short; the bill wants 8. [4.short]"),
                Corruption.ofJob(
                        "a part made once too often",
                        RAILS,
                        job -> Jobs.part(job, "rail", part -> Jobs.count(part, 6)),
                        "rail: 7 made and 0 short; the bill wants 6. [4.short]"),
                Corruption.of(
                        "a shortage of another count",
                        SHELVES,
                        d -> d.shortage("post", s -> new Shortage(s.part(), 1, s.buy())),
                        "post: 0 made and 1 short; the bill wants 2. [4.short]"),
                Corruption.of(
                        "a shortage of none",
                        RAILS,
                        d -> d.status(Plan.Status.SHORT)
                                .shortages(s -> List.of(new Shortage(
                                        "rail",
                                        0,
                                        new Buy(
                                                BigDecimal.ONE,
                                                List.of(),
                                                IN.length("3/4"),
                                                IN.length("24"),
                                                IN.length("3"))))),
                        "rail: it is listed as short by 0; at least 1 is due. [4.short]"),
                Corruption.of(
                        "a shortage listed twice",
                        SHELVES,
                        d -> d.shortages(s -> {
                            s.add(s.get(0));
                            return s;
                        }),
                        "shelf: it is listed as short twice. [4.short]"),
                Corruption.of(
                        "a shortage of no part",
                        SHELVES,
                        d -> d.shortages(s -> {
                            s.add(new Shortage("pots", 1, s.get(0).buy()));
                            return s;
                        }),
                        "pots: it is listed as short; the bill does not have it. [4.short]"),
                Corruption.of(
                        "complete, but short",
                        SHELVES,
                        d -> d.status(Plan.Status.COMPLETE),
                        "plan: its status is complete, with parts listed as short. [4.short]"),
                Corruption.of(
                        "short, but complete",
                        RAILS,
                        d -> d.status(Plan.Status.SHORT),
                        "plan: its status is short, with no part listed as short. [4.short]"),
                buy(
                        "too little to buy",
                        b -> new Buy(new BigDecimal("0.4561"), b.species(), b.thickness(), b.shortest(), b.narrowest()),
                        "shelf: to buy are 0.4561 board feet; its missing blanks alone are 0.4562. [4.short]"),
                buy(
                        "too thin to buy",
                        b -> new Buy(b.boardFeet(), b.species(), MM.length("18"), b.shortest(), b.narrowest()),
                        "shelf: to buy is wood 18 mm thick; it needs 20 mm. [4.short]"),
                buy(
                        "too short to buy",
                        b -> new Buy(b.boardFeet(), b.species(), b.thickness(), MM.length("590"), b.narrowest()),
                        "shelf: to buy is a board 590 mm long at least; one of its blanks is 598 mm. [4.short]"),
                buy(
                        "too narrow to buy",
                        b -> new Buy(b.boardFeet(), b.species(), b.thickness(), b.shortest(), MM.length("89")),
                        "shelf: to buy is a board 89 mm wide at least; one of its blanks is 90 mm. [4.short]"),
                buy(
                        "the wrong wood to buy",
                        b -> new Buy(
                                b.boardFeet(),
                                List.of(new Species("OAK"), new Species("elm")),
                                b.thickness(),
                                b.shortest(),
                                b.narrowest()),
                        "shelf: to buy is OAK or elm; it does not take every such wood. [4.short]"),
                buy(
                        "any wood to buy",
                        b -> new Buy(b.boardFeet(), List.of(), b.thickness(), b.shortest(), b.narrowest()),
                        "shelf: to buy is any wood; it does not take every such wood. [4.short]"),
                Corruption.ofJob(
                        "parts of one group from two boards",
                        BENCH,
                        job -> Jobs.part(
                                job,
                                "apron",
                                part -> Part.of("apron", part.length(), part.width(), part.thickness())
                                        .count(2)
                                        .species(Set.of(new Species("ash")))
                                        .face(Part.Face.SHOW)
                                        .sneakUp(part.sneakUp())
                                        .edgeAllowance(part.edgeAllowance())
                                        .together("front")
                                        .build()),
                        "front: its parts come from ash-1 and ash-2; all are due from one board. [2.together]"));
    }

    @ParameterizedTest
    @MethodSource("corruptions")
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
