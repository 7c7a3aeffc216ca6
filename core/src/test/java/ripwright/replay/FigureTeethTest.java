package ripwright.replay;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FigureTeethTest {
    private static final Sample RAILS = BenchRails.sample();
    private static final Sample BENCH = HallBench.sample();
    private static final Sample SHELVES = ShortShelves.sample();

    private static Corruption cost(
            String name,
            String stock,
            String salvage,
            String labor,
            String net,
            String bound,
            String gap,
            boolean proven,
            String... messages) {
        return Corruption.of(name, BENCH, d -> d.cost(stock, salvage, labor, net, bound, gap, proven), messages);
    }

    static Stream<Corruption> money() {
        return Stream.of(
                cost(
                        "a cent too little for the boards",
                        "88.16",
                        "10.59",
                        "32.75",
                        "110.33",
                        "100.00",
                        "0.0937",
                        false,
                        "plan: cost.stock is 88.16; 88.17 is due. [4.stock]"),
                cost(
                        "a cent too much for the offcuts",
                        "88.17",
                        "10.60",
                        "32.75",
                        "110.33",
                        "100.00",
                        "0.0937",
                        false,
                        "plan: cost.salvage is 10.60; 10.59 is due. [4.salvage]"),
                cost(
                        "labor of another crosscut",
                        "88.17",
                        "10.59",
                        "33.25",
                        "110.33",
                        "100.00",
                        "0.0937",
                        false,
                        "plan: cost.labor is 33.25; 32.75 is due for 4 settings, 11 rips and 25 crosscuts. [4.labor]"),
                cost(
                        "a net of unrounded figures",
                        "88.17",
                        "10.59",
                        "32.75",
                        "110.32",
                        "100.00",
                        "0.0936",
                        false,
                        "plan: cost.net is 110.32; stock - salvage + labor come to 110.33. [1.money]"),
                cost(
                        "a bound above net",
                        "88.17",
                        "10.59",
                        "32.75",
                        "110.33",
                        "110.34",
                        "0",
                        false,
                        "plan: cost.bound is 110.34, above cost.net of 110.33. [1.money]"),
                cost(
                        "a bound finer than a cent",
                        "88.17",
                        "10.59",
                        "32.75",
                        "110.33",
                        "100.001",
                        "0.0937",
                        false,
                        "plan: cost.bound is 100.001; whole cents are due. [1.money]"),
                cost(
                        "a gap rounded down",
                        "88.17",
                        "10.59",
                        "32.75",
                        "110.33",
                        "100.00",
                        "0.0936",
                        false,
                        "plan: cost.gap is 0.0936; (net - bound) / net is 0.0937. [1.money]"),
                cost(
                        "proven with a gap",
                        "88.17",
                        "10.59",
                        "32.75",
                        "110.33",
                        "100.00",
                        "0.0937",
                        true,
                        "plan: it is called proven, with a bound of 100.00 and a net of 110.33. [1.money]"),
                Corruption.of(
                        "not proven without a gap",
                        RAILS,
                        d -> d.cost("37.00", "7.24", "0.00", "29.76", "29.76", "0", false),
                        "plan: it is called not proven, with a bound of 29.76 and a net of 29.76. [1.money]"),
                Corruption.of(
                        "labor that nobody is paid for",
                        RAILS,
                        d -> d.cost("37.00", "7.24", "3.25", "29.76", "29.76", "0", true),
                        "plan: cost.labor is 3.25; 0.00 is due for 1 setting, 3 rips and 9 crosscuts. [4.labor]"));
    }

    static Stream<Corruption> wood() {
        return Stream.of(
                Corruption.of(
                        "consumed wood counted as priced",
                        SHELVES,
                        d -> d.tally("4.3056", "2.3006", "0.2400", "0.8496", "0.6786", "32.00"),
                        "plan: boardFeet.consumed is 4.3056; 3.3902 is due. [4.boardFeet]"),
                Corruption.of(
                        "parts counted as blanks",
                        BENCH,
                        d -> d.tally("10.1146", "3.8086", "2.9701", "3.4733", "0.3630", "65.50"),
                        "plan: boardFeet.parts is 3.8086; 3.6712 is due. [4.boardFeet]"),
                Corruption.of(
                        "offcuts without their defects",
                        BENCH,
                        d -> d.tally("10.1146", "3.6712", "2.9597", "3.4733", "0.3630", "65.50"),
                        "plan: boardFeet.offcuts is 2.9597; 2.9701 is due. [4.boardFeet]"),
                Corruption.of(
                        "waste that is not the rest",
                        BENCH,
                        d -> d.tally("10.1146", "3.6712", "2.9701", "3.4735", "0.3630", "65.50"),
                        "plan: boardFeet.waste is 3.4735; 3.4733 is due. [4.boardFeet]"),
                Corruption.of(
                        "a yield rounded up",
                        RAILS,
                        d -> d.tally("4.6250", "2.5488", "1.8110", "0.2651", "0.5512", "19.50"),
                        "plan: yield is 0.5512; 0.5511 is due. [4.yield]"),
                Corruption.of(
                        "minutes without the tests",
                        SHELVES,
                        d -> d.minutes("29.00"),
                        "plan: minutes is 29.00; 32.00 is due for 2 settings, 8 rips and 8 crosscuts. [4.labor]"),
                Corruption.of(
                        "minutes with a cut for a whole test blank",
                        SHELVES,
                        d -> d.minutes("33.00"),
                        "plan: minutes is 33.00; 32.00 is due for 2 settings, 8 rips and 8 crosscuts. [4.labor]"),
                Corruption.of(
                        "minutes with a shared cut counted twice",
                        RAILS,
                        d -> d.minutes("20.50"),
                        "plan: minutes is 20.50; 19.50 is due for 1 setting, 3 rips and 9 crosscuts. [4.labor]"));
    }

    @ParameterizedTest
    @MethodSource({"money", "wood"})
    void refused(Corruption corruption) {
        corruption.isRefused();
    }
}
