package ripwright.internal.testwood;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.nm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ripwright.internal.pieces.RipSetting;

public class TestChainsTest {
    private static final long KERF = nm("0.125");
    private static final long INCH = nm("1");
    private static final long HALF = nm("0.5");

    @Test
    void one_blank_is_ripped_again_at_every_narrower_setting() {
        assertThat(proved(1, setting("4"), setting("3"), setting("2"))).containsExactly(List.of(0, 1, 2));
    }

    @Test
    void two_settings_closer_than_a_kerf_take_a_blank_each_and_either_goes_on() {
        assertThat(proved(1, setting("4"), setting("2.5"), setting("2.4375"), setting("1")))
                .containsExactly(List.of(0, 1, 3), List.of(2));
    }

    @Test
    void exactly_a_kerf_is_enough() {
        assertThat(proved(1, setting("2.5"), setting("2.375"))).containsExactly(List.of(0, 1));
    }

    @Test
    void every_setting_has_as_many_blanks_as_there_are_tries() {
        assertThat(proved(3, setting("4"), setting("2"))).containsExactly(List.of(0, 1), List.of(0, 1), List.of(0, 1));
    }

    @Test
    void without_a_kerf_a_try_still_takes_a_blank_of_its_own() {
        TestChains chains = new TestChains(List.of(setting("4"), setting("2")), 0, 2);

        assertThat(only(chains)).extracting(TestChain::settings).containsExactly(List.of(0, 1), List.of(0, 1));
    }

    @Test
    void strips_of_another_thickness_take_a_blank_of_it() {
        assertThat(proved(1, setting("4", INCH), setting("3", HALF), setting("2", INCH)))
                .containsExactly(List.of(0, 2), List.of(1));
    }

    @Test
    void a_setting_for_two_thicknesses_is_proved_on_either() {
        TestChains chains = new TestChains(
                List.of(setting("4", INCH, HALF), setting("3", HALF), setting("2", INCH, HALF)), KERF, 1);

        // on the inch-thick one, the second setting would take another
        assertThat(only(chains)).containsExactly(new TestChain(HALF, List.of(0, 1, 2)));
    }

    @Test
    void where_either_thickness_takes_as_few_both_are_ways() {
        TestChains chains = new TestChains(List.of(setting("4", INCH, HALF), setting("2", INCH, HALF)), KERF, 1);

        assertThat(chains.fewest())
                .containsExactlyInAnyOrder(
                        List.of(new TestChain(HALF, List.of(0, 1))), List.of(new TestChain(INCH, List.of(0, 1))));
    }

    @Test
    void of_many_thicknesses_one_that_goes_all_the_way_is_found() {
        Long[] all = {nm("1"), nm("2"), nm("3"), nm("4"), nm("5")};
        TestChains chains =
                new TestChains(List.of(setting("4", all), setting("3", nm("3")), setting("2", all)), KERF, 1);

        assertThat(only(chains)).containsExactly(new TestChain(nm("3"), List.of(0, 1, 2)));
    }

    /** As many blanks as tries for each of the most settings that lie closer together than a kerf: no plan has fewer. */
    @Test
    void blanks_are_as_few_as_settings_closer_than_a_kerf_allow() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            TreeSet<Integer> sixteenths = new TreeSet<>();
            for (int i = 0; i < 1 + seed / 20; i++) sixteenths.add(8 + random.nextInt(40));
            List<RipSetting> settings = new ArrayList<>();
            for (int width : sixteenths.descendingSet()) settings.add(setting(String.valueOf(width / 16.0)));
            int tries = 1 + random.nextInt(3);
            List<TestChain> chains = only(new TestChains(settings, KERF, tries));

            int crowd = 0; // widths under two sixteenths apart are closer than a kerf
            for (int width : sixteenths) crowd = Math.max(crowd, sixteenths.contains(width + 1) ? 2 : 1);
            assertThat(chains).as("seed %s, %s", seed, sixteenths).hasSize(tries * crowd);
            for (int i = 0; i < settings.size(); i++) {
                int place = i;
                assertThat(chains.stream().filter(chain -> chain.settings().contains(place)))
                        .as("seed %s, %s, setting %s", seed, sixteenths, place)
                        .hasSize(tries);
            }
        }
    }

    private static List<List<Integer>> proved(int tries, RipSetting... settings) {
        return only(new TestChains(List.of(settings), KERF, tries)).stream()
                .map(TestChain::settings)
                .toList();
    }

    private static List<TestChain> only(TestChains chains) {
        assertThat(chains.fewest()).hasSize(1);
        return chains.fewest().get(0);
    }

    private static RipSetting setting(String width, Long... thicknesses) {
        List<Long> those = thicknesses.length == 0 ? List.of(INCH) : List.of(thicknesses);
        return new RipSetting("R", nm(width), new TreeSet<>(those), 1, true);
    }
}
