package ripwright.runner.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HatchTest {
    private static final List<Spot> SQUARE = new Box(0, 0, 4_000, 4_000).corners();

    @Test
    void no_two_hatchings_fill_a_square_alike() {
        Set<List<Hatch.Segment>> fillings = new HashSet<>();
        for (Hatching hatching : Hatching.values()) fillings.add(new Hatch(hatching, SQUARE).lines());

        assertThat(fillings).hasSameSizeAs(Hatching.values());
    }

    @Test
    void hatchings_differ_in_darkness_too() {
        List<Long> lengths = Arrays.stream(Hatching.values())
                .map(hatching -> length(new Hatch(hatching, SQUARE)))
                .sorted()
                .toList();

        for (int i = 1; i < lengths.size(); i++)
            assertThat((double) lengths.get(i)).isGreaterThan(1.25 * lengths.get(i - 1));
    }

    private static long length(Hatch hatch) {
        return hatch.lines().stream()
                .mapToLong(line -> Math.abs(line.to().x() - line.from().x()))
                .sum();
    }

    @Test
    void lines_end_on_the_outline_of_a_sloped_area() {
        List<Spot> wedge = List.of(new Spot(0, 0), new Spot(6_000, 0), new Spot(6_000, 1_000), new Spot(0, 3_000));
        List<Hatch.Segment> lines = new Hatch(Hatching.WASTE, wedge).lines();

        assertThat(lines).isNotEmpty().allSatisfy(line -> {
            assertThat(onOutline(line.from())).isTrue();
            assertThat(onOutline(line.to())).isTrue();
            assertThat(line.to().x() - line.from().x())
                    .isEqualTo(line.to().y() - line.from().y());
        });
    }

    /** On a side of the wedge, within the hundredth of a point that crossings are rounded to. */
    private static boolean onOutline(Spot spot) {
        long slope = 3 * spot.y() + spot.x() - 9_000; // from (0, 3000) to (6000, 1000)
        return spot.x() == 0 || spot.x() == 6_000 || spot.y() == 0 || Math.abs(slope) <= 4;
    }

    @Test
    void neighbors_share_one_grid() {
        Hatch left = new Hatch(Hatching.WASTE, new Box(0, 0, 2_000, 2_000).corners());
        Hatch right = new Hatch(Hatching.WASTE, new Box(2_000, 0, 4_000, 2_000).corners());
        Set<Spot> ends = new HashSet<>();
        left.lines().forEach(line -> ends.addAll(List.of(line.from(), line.to())));

        assertThat(right.lines().stream()
                        .flatMap(line -> java.util.stream.Stream.of(line.from(), line.to()))
                        .filter(spot -> spot.x() == 2_000 && spot.y() > 0 && spot.y() < 2_000))
                .isNotEmpty()
                .allMatch(ends::contains);
    }
}
