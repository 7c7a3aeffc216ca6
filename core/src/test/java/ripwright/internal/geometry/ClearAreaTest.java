package ripwright.internal.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Defect.Blocks;
import ripwright.testing.Seeds;

/** In square inches, by hand and inch by inch. */
public class ClearAreaTest {
    @Test
    void a_clear_offcut_counts_whole() {
        assertThat(area(maple("a", "5", "20"))).isEqualByComparingTo("100");
    }

    @Test
    void raw_end_trim_does_not_count() {
        assertThat(area(maple("a", "5", "20").endTrim(in("1"), in("3")))).isEqualByComparingTo("80");
    }

    @Test
    void end_trim_that_takes_it_all_leaves_nothing() {
        assertThat(area(maple("a", "5", "20").endTrim(in("10"), in("10")))).isEqualByComparingTo("0");
    }

    @Test
    void what_bars_every_part_does_not_count_and_a_sound_blemish_does() {
        Board.Builder board =
                maple("a", "5", "20").defects(List.of(defect("2", "4", "1", "3", Blocks.ALL), sound("10", "12")));

        assertThat(area(board)).isEqualByComparingTo("96");
    }

    @Test
    void where_two_defects_overlap_the_wood_is_lost_once() {
        Board.Builder board = maple("a", "5", "20")
                .defects(List.of(defect("2", "6", "1", "3", Blocks.ALL), defect("4", "8", "2", "4", Blocks.ALL)));

        assertThat(area(board)).isEqualByComparingTo("86"); // 100 - 8 - 8 + 2
    }

    @Test
    void a_defect_in_the_end_trim_is_lost_once() {
        Board.Builder board = maple("a", "5", "20")
                .endTrim(in("3"), Length.ZERO)
                .defects(List.of(defect("2", "4", "0", "5", Blocks.ALL)));

        assertThat(area(board)).isEqualByComparingTo("80"); // 17 x 5 - 1 x 5
    }

    @Test
    void the_part_of_a_defect_beyond_a_slanted_edge_is_no_wood() {
        // 4 in wide at one end, 2 in at the other, 20 in long: 60. The defect is cut off by the edge where that is
        // 3 in wide, half way: 10 x 1 beside the line at 2 in up to there, then half of 10 x 1.
        Board.Builder board =
                maple("a", "4", "20").width(in("4"), in("2")).defects(List.of(defect("0", "20", "2", "3", Blocks.ALL)));

        assertThat(area(board)).isEqualByComparingTo("45");
    }

    @Test
    void a_taper_the_other_way_counts_the_same() {
        Board.Builder board =
                maple("a", "2", "20").width(in("2"), in("4")).defects(List.of(defect("0", "20", "2", "3", Blocks.ALL)));

        assertThat(area(board)).isEqualByComparingTo("45");
    }

    /** By the square inch; a slanted edge crosses whole inches of width only where whole inches of length begin. */
    @Test
    void the_area_is_that_of_every_square_inch_that_is_there_and_clear() {
        Seeds.each(800, 350, (random, size) -> {
            int near = 1 + random.nextInt(3 + size / 3);
            int far = 1 + random.nextInt(3 + size / 3);
            int step = 1 + random.nextInt(4); // inches of length for one of width
            int length = near == far ? 1 + random.nextInt(3 + size) : step * Math.abs(near - far);
            int from = random.nextInt(2);
            int to = length - random.nextInt(2);
            List<Defect> defects = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) defects.add(defect(random, near, far, length));
            Board.Builder board = maple("a", text(near), text(length))
                    .width(in(text(near)), in(text(far)))
                    .endTrim(in(text(from)), in(text(length - to)))
                    .defects(defects);
            double clear = 0;
            double all = 0;
            for (int x = from; x < to; x++)
                for (int y = 0; y < Math.max(near, far); y++) {
                    double wood = (wood(near, far, length, x, y) + wood(near, far, length, x + 1, y)) / 2;
                    all += wood;
                    if (!barred(defects, x, y)) clear += wood;
                }
            assertThat(area(board).doubleValue()).isCloseTo(clear, within(1e-6));
            return clear < all && near != far;
        });
    }

    private static String text(int inches) {
        return Integer.toString(inches);
    }

    /** One that begins or ends where the board is as wide as it reaches. */
    private static Defect defect(SplittableRandom random, int near, int far, int length) {
        int from = random.nextInt(length);
        int to = random.nextInt(from, length) + 1;
        int width = Math.max(near * length + (far - near) * from, near * length + (far - near) * to) / length;
        int left = random.nextInt(width);
        Blocks blocks = random.nextInt(3) == 0 ? Blocks.SHOW : Blocks.ALL;
        return defect(text(from), text(to), text(left), text(random.nextInt(left, width) + 1), blocks);
    }

    /** How much of the inch from y to y + 1 lies on the board there. */
    private static double wood(int near, int far, int length, int x, int y) {
        double width = near + (far - near) * (double) x / length;
        return Math.max(0, Math.min(1, width - y));
    }

    private static boolean barred(List<Defect> defects, int x, int y) {
        return defects.stream()
                .anyMatch(defect -> defect.blocks() == Blocks.ALL
                        && defect.from().compareTo(in(text(x))) <= 0
                        && defect.to().compareTo(in(text(x + 1))) >= 0
                        && defect.left().compareTo(in(text(y))) <= 0
                        && defect.right().compareTo(in(text(y + 1))) >= 0);
    }

    private static Defect sound(String from, String to) {
        return defect(from, to, "1", "3", Blocks.SHOW);
    }

    private static Defect defect(String from, String to, String left, String right, Blocks blocks) {
        return new Defect(in(from), in(to), in(left), in(right), "knot", blocks);
    }

    private static BigDecimal area(Board.Builder board) {
        return new ClearArea(board.build())
                .area()
                .squareNanometers()
                .divide(in("1").nanometers())
                .divide(in("1").nanometers())
                .bigDecimalValue(9, RoundingMode.HALF_UP);
    }
}
