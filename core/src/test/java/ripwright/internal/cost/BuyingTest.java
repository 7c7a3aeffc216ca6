package ripwright.internal.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.measure.BoardFeet;
import ripwright.plan.Shortage;
import ripwright.saw.Saw;
import ripwright.stock.Species;
import ripwright.testing.JobBuilder;

public class BuyingTest {
    @Test
    void what_is_missing_is_bought_with_kerfs_and_a_fifth_more() {
        JobBuilder shop = bench().stack(maple("a", "6", "60"))
                .parts(part("rail", "23.875", "2.875").count(5));
        Shortage.Buy buy = only(planned(shop, cut(0, section("0", "60", strip("2.875", blank(0, "0")))))
                        .shortages())
                .buy();

        assertThat(buy.boardFeet()).isEqualByComparingTo("2.4"); // 4 x 24 x 3 / 144 x 1.2
        assertThat(buy.thickness()).isEqualTo(in("1"));
        assertThat(buy.species()).isEmpty();
    }

    @Test
    void thin_wood_is_bought_as_if_an_inch_thick() {
        JobBuilder shop = bench().stack(maple("a", "0.75", "6", "60"))
                .parts(Part.of("rail", in("23.875"), in("2.875"), in("0.75")).count(4));

        assertThat(only(planned(shop).shortages()).buy().boardFeet()).isEqualByComparingTo("2.4");
    }

    @Test
    void the_smallest_board_is_the_blank_and_what_an_ordinary_board_here_loses() {
        JobBuilder shop = bench().stack(
                        maple("a", "6", "96").endTrim(in("1"), in("1")).edges(0, in("0.125"), in("0.375")),
                        maple("b", "6", "96").endTrim(in("1"), in("1")).edges(0, in("0.125"), in("0.375")),
                        maple("straight", "6", "96"))
                .parts(part("rail", "47.9375", "2").sneakUp(in("0.0625")).edgeAllowance(in("0.03125")));
        Shortage.Buy buy = only(planned(shop).shortages()).buy();

        assertThat(buy.shortest()).isEqualTo(in("50")); // 47 15/16 + 1/16 + 2 x 1
        assertThat(buy.narrowest()).isEqualTo(in("2.28125")); // 2 + 1/32 + 2 x 1/8, as crook takes but 3/32 over 48
        assertThat(buy.boardFeet()).isEqualByComparingTo("0.8647"); // 48.125 x 2.15625 / 144 x 1.2
    }

    @Test
    void never_less_is_bought_than_one_such_board() {
        JobBuilder shop =
                bench().stack(maple("a", "6", "96").endTrim(in("6"), in("6"))).parts(part("block", "12", "2"));

        assertThat(only(planned(shop).shortages()).buy().boardFeet()).isEqualByComparingTo("0.3333"); // 24 x 2 / 144
    }

    @Test
    void a_part_shorter_than_any_rip_comes_from_a_section_of_the_shortest() {
        Saw saw = new Saw(
                in("0.125"), in("0.125"), Optional.empty(), Optional.of(in("10")), Optional.empty(), Optional.empty());
        JobBuilder shop = bench().saw(saw).stack(maple("a", "6", "60")).parts(part("block", "3", "2"));

        assertThat(only(planned(shop).shortages()).buy().shortest()).isEqualTo(in("10"));
    }

    @Test
    void the_woods_that_will_do_are_listed_by_name() {
        JobBuilder shop = bench().stack(maple("a", "6", "60"))
                .parts(part("rail", "20", "2")
                        .species(Set.of(new Species("walnut"), new Species("ash"), new Species("Maple"))));

        assertThat(only(planned(shop).shortages()).buy().species())
                .extracting(Species::name)
                .containsExactly("Maple", "ash", "walnut");
    }

    /** WOOD shop forum, Calculating Waste from Rough Lumber: 100 board feet net at 30 % waste; printed as 142.85. */
    @Test
    void b14_a_hundred_board_feet_at_thirty_percent_waste_are_a_hundred_and_forty_three() {
        BoardFeet hundred = BoardFeet.of(in("100"), in("144"), in("1"));

        assertThat(WasteAllowance.wasting(new BigDecimal("0.3")).buy(hundred).rounded())
                .isEqualByComparingTo("142.8571");
    }

    /** The same forum and WOOD magazine: buying 30 % more is 23 % waste, 50 % more is 33 %. */
    @Test
    void b15_what_is_added_is_not_what_is_wasted() {
        assertThat(new WasteAllowance(new BigDecimal("0.3")).wasted()).isEqualByComparingTo("0.2308");
        assertThat(new WasteAllowance(new BigDecimal("0.5")).wasted()).isEqualByComparingTo("0.3333");
    }

    private static Shortage only(List<Shortage> shortages) {
        assertThat(shortages).hasSize(1);
        return shortages.get(0);
    }
}
