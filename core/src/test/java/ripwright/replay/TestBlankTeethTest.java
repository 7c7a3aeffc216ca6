package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.MM;

import java.util.Collections;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.measure.Length;
import ripwright.plan.TestBlank;
import ripwright.plan.TestBlank.Source;
import ripwright.stock.Species;

class TestBlankTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();
    private static final Sample DRAWER = DrawerBox.sample();

    private static UnaryOperator<TestBlank> from(String from, Source source) {
        return t -> new TestBlank(t.id(), from, source, t.width(), t.length(), t.thickness(), t.species(), t.proves());
    }

    private static UnaryOperator<TestBlank> sized(String width, String length, String thickness) {
        return t -> new TestBlank(
                t.id(),
                t.from(),
                t.source(),
                IN.length(width),
                IN.length(length),
                IN.length(thickness),
                t.species(),
                t.proves());
    }

    static Stream<Corruption> settings() {
        return Stream.of(
                Corruption.of(
                        "settings not widest first",
                        SHELVES,
                        d -> d.settings(settings -> {
                            Collections.swap(settings, 0, 1);
                            return settings;
                        }),
                        "R1: it is 90 mm wide and listed after R2 with 60 mm; settings are distinct, widest first. [5.settings]",
                        "R2: step 7 sets the fence back to it after R1; each setting comes once, widest first. [5.steps]"),
                Corruption.of(
                        "a setting listed twice",
                        RAILS,
                        d -> d.settings(settings -> {
                            settings.add(IN.setting("R2", "2 1/4"));
                            return settings;
                        }),
                        "R2: it is 2 1/4 in wide and listed after R1 with 2 1/4 in; settings are distinct, widest first. [5.settings]",
                        "R2: no strip is ripped at it. [5.settings]"),
                Corruption.of(
                        "a setting tested with no tries",
                        RAILS,
                        d -> d.setting(IN.setting("R1", "2 1/4", "T1", Source.WASTE)),
                        "R1: it is tested on T1; with 0 tries no setting is. [5.testBlanks]"),
                Corruption.of(
                        "a setting without its test",
                        DRAWER,
                        d -> d.setting(IN.setting("R3", "2 15/16")),
                        "R3: no test blank is named for it. [5.testBlanks]"),
                Corruption.of(
                        "a setting tested on no test blank",
                        DRAWER,
                        d -> d.setting(IN.setting("R3", "2 15/16", "T9", Source.WASTE)),
                        "R3: it is tested on T9, which is not listed. [5.testBlanks]",
                        "R3: step 7 tests it on T2; it is tested first on T9. [5.steps]"),
                Corruption.of(
                        "a setting tested on a blank that does not prove it",
                        BENCH,
                        d -> d.setting(IN.setting("R2", "3", "T4", Source.FRESH))
                                .piece(13, "T4"),
                        "R2: it is tested on T4, which does not prove it. [5.testBlanks]"),
                Corruption.of(
                        "a setting whose test comes from elsewhere",
                        DRAWER,
                        d -> d.setting(IN.setting("R3", "2 15/16", "T2", Source.FRESH)),
                        "R3: its test blank T2 is said to come from fresh; it is listed as from waste. [5.testBlanks]"),
                Corruption.of(
                        "a setting with one try too few",
                        BENCH,
                        d -> d.proves("T3", "R3"),
                        "R4: it is proved by 1 test blank; 2 are due. [5.testBlanks]"),
                Corruption.of(
                        "a setting with one try too many",
                        BENCH,
                        d -> d.proves("T2", "R1", "R2", "R4"),
                        "R4: it is proved by 3 test blanks; 2 are due. [5.testBlanks]"));
    }

    static Stream<Corruption> blanks() {
        return Stream.of(
                Corruption.of(
                        "a test blank too short",
                        BENCH,
                        d -> d.testBlank("T1", sized("5", "11", "3/4")),
                        "T1: it is 11 in long; 12 in is due. [5.testBlanks]"),
                Corruption.of(
                        "a test blank of another width",
                        BENCH,
                        d -> d.testBlank("T1", sized("5 1/4", "12", "3/4")),
                        "T1: it is listed as 5 1/4 in wide; what is left of mpl-1 is 5 in. [5.testBlanks]"),
                Corruption.of(
                        "a test blank as thick as before milling",
                        BENCH,
                        d -> d.testBlank("T4", sized("7", "12", "1")),
                        "T4: it is listed as 1 in thick; ash-1 mills to 3/4 in. [5.testBlanks]",
                        "T4: it is 1 in thick and proves R3; no strip so thick is ripped there. [5.testBlanks]"),
                Corruption.of(
                        "a test blank of another species",
                        BENCH,
                        d -> d.testBlank(
                                "T1",
                                t -> new TestBlank(
                                        t.id(),
                                        t.from(),
                                        t.source(),
                                        t.width(),
                                        t.length(),
                                        t.thickness(),
                                        new Species("ash"),
                                        t.proves())),
                        "T1: it is listed as ash; mpl-1 is maple. [5.testBlanks]"),
                Corruption.of(
                        "a test blank off the rack called waste",
                        BENCH,
                        d -> d.testBlank("T2", from("mpl-1", Source.WASTE))
                                .setting(IN.setting("R2", "3", "T2", Source.WASTE)),
                        "T2: it is listed as from waste; what is left of mpl-1 is a rack offcut no part comes from, so rack is due. [5.testBlanks]"),
                Corruption.of(
                        "a test blank of waste called fresh",
                        BENCH,
                        d -> d.testBlank("T3", from("ash-2", Source.FRESH))
                                .setting(IN.setting("R3", "2 15/16", "T3", Source.FRESH)),
                        "T3: it is listed as from fresh; what is left of ash-2 is too small for the rack, so waste is due. [5.testBlanks]"),
                Corruption.of(
                        "a fresh test blank called waste",
                        BENCH,
                        d -> d.testBlank("T4", from("ash-1", Source.WASTE)),
                        "T4: it is listed as from waste; what is left of ash-1 would have been kept, or was opened for it, so fresh is due. [5.testBlanks]"),
                Corruption.of(
                        "a test blank of the stack called the rack's",
                        SHELVES,
                        d -> d.testBlank("T1", from("oak-1", Source.RACK))
                                .setting(MM.setting("R1", "90", "T1", Source.RACK))
                                .setting(MM.setting("R2", "60", "T1", Source.RACK)),
                        "T1: it is listed as from rack; what is left of oak-1 would have been kept, or was opened for it, so fresh is due. [5.testBlanks]"),
                Corruption.of(
                        "a test blank of no piece",
                        DRAWER,
                        d -> d.testBlank("T2", from("S9", Source.WASTE)).minutes("32.00"),
                        "T2: it is cut from S9, which is no board, section or strip of this plan. [5.testBlanks]"),
                Corruption.of(
                        "a test blank of itself",
                        DRAWER,
                        d -> d.testBlank("T2", from("T2", Source.WASTE)).minutes("32.00"),
                        "T2: it is cut from T2, which is no board, section or strip of this plan. [5.testBlanks]"),
                Corruption.of(
                        "a test blank its piece has no room for",
                        DRAWER,
                        d -> d.testBlank("T2", from("S2", Source.WASTE))
                                .piece(6, "S2")
                                .minutes("32.00"),
                        "T2: no leftover of S2 has room for it. [5.testBlanks]"),
                Corruption.of(
                        "a test blank that proves nothing",
                        BENCH,
                        d -> d.proves("T4"),
                        "R3: it is proved by 1 test blank; 2 are due. [5.testBlanks]",
                        "T4: it proves no rip setting. [5.testBlanks]"),
                Corruption.of(
                        "a test blank that proves no setting of the plan",
                        BENCH,
                        d -> d.proves("T4", "R3", "R9"),
                        "T4: it proves R9, which is no rip setting of this plan. [5.testBlanks]"),
                Corruption.of(
                        "a test blank ripped twice within a kerf",
                        DRAWER,
                        d -> d.proves("T1", "R1", "R2", "R3").proves("T2"),
                        "R3: it is tested on T2, which does not prove it. [5.testBlanks]",
                        "T1: after R2 it is 3 in wide; to prove R3 at 2 15/16 in with a rip kerf of 1/8 in, 3 1/16 in is the least. [5.testBlanks]",
                        "T2: it proves no rip setting. [5.testBlanks]"),
                Corruption.of(
                        "a test blank too narrow for its first setting",
                        DRAWER,
                        d -> d.proves("T1", "R2").proves("T2", "R1", "R3"),
                        "R1: it is tested on T1, which does not prove it. [5.testBlanks]",
                        "T2: it is 4 in wide; to prove R1 at 4 in with a rip kerf of 1/8 in, 4 1/8 in is the least. [5.testBlanks]",
                        "T2: step 6 makes it; step 2 tests R1 that it proves, and it must be there before. [5.testBlanks]"),
                Corruption.ofJob(
                        "a rough test blank too narrow once straightened",
                        BENCH,
                        job -> Jobs.board(job, "mpl-1", b -> b.edges(0, IN.length("1"), Length.ZERO)),
                        "T1: once straightened it is 4 in wide; to prove R1 at 4 in with a rip kerf of 1/8 in, 4 1/8 in is the least. [5.testBlanks]",
                        "T2: once straightened it is 4 in wide; to prove R1 at 4 in with a rip kerf of 1/8 in, 4 1/8 in is the least. [5.testBlanks]"),
                Corruption.ofJob(
                                "a test blank of a thickness not ripped there",
                                BENCH,
                                job -> Jobs.board(job, "mpl-1", b -> b.rough(IN.length("1"), IN.length("1"))),
                                "T1: it is 1 in thick and proves R1; no strip so thick is ripped there. [5.testBlanks]",
                                "T1: it is 1 in thick and proves R2; no strip so thick is ripped there. [5.testBlanks]",
                                "T1: it is 1 in thick and proves R4; no strip so thick is ripped there. [5.testBlanks]",
                                "T2: it is 1 in thick and proves R1; no strip so thick is ripped there. [5.testBlanks]",
                                "T2: it is 1 in thick and proves R2; no strip so thick is ripped there. [5.testBlanks]")
                        .and(d -> d.testBlank("T1", sized("5", "12", "1"))
                                .testBlank("T2", sized("5", "12", "1"))
                                .tally("10.3750", "3.6712", "2.9701", "3.7337", "0.3539", "65.50")),
                Corruption.ofJob(
                                "a test blank more than the settings ask for",
                                BENCH,
                                job -> Jobs.board(job, "mpl-1", b -> b.length(IN.length("45"))),
                                "plan: 5 test blanks 3/4 in thick are listed; going from wide to narrow, 4 can prove all that they prove. [5.testBlanks]")
                        .and(d -> d.proves("T1", "R1", "R2")
                                .addTestBlank(IN.testBlank("T5", "mpl-1", Source.RACK, "5", "12", "3/4", "maple", "R4"))
                                .makes(4, "T1", "T2", "T5")
                                .setting(IN.setting("R4", "7/8", "T5", Source.RACK))
                                .piece(17, "T5")
                                .cost("89.42", "10.59", "33.25", "112.08", "100.00", "0.1078", false)
                                .tally("10.5052", "3.6712", "2.9701", "3.8639", "0.3495", "66.50")));
    }

    @ParameterizedTest
    @MethodSource({"settings", "blanks"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
