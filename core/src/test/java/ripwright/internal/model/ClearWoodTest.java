package ripwright.internal.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.stock.Defect;
import ripwright.testing.JobBuilder;
import ripwright.testing.Seeds;

/** Boards a few whole inches long and wide, looked at square inch by square inch. */
class ClearWoodTest {
    private record Case(int length, int width, List<Defect> defects, int start, int end, boolean left) {
        static Case random(SplittableRandom random, int size, int count) {
            int length = 2 + random.nextInt(3 + size);
            int width = 2 + random.nextInt(3 + size / 2);
            List<Defect> defects = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int from = random.nextInt(length);
                int across = random.nextInt(width);
                defects.add(new Defect(
                        in(from),
                        in(from + 1 + random.nextInt(Math.min(4, length - from))),
                        in(across),
                        in(across + 1 + random.nextInt(Math.min(3, width - across))),
                        "knot",
                        random.nextBoolean() ? Defect.Blocks.ALL : Defect.Blocks.SHOW));
            }
            int start = random.nextInt(length - 1);
            return new Case(length, width, defects, start, random.nextInt(start + 1, length + 1), random.nextBoolean());
        }

        ClearWood wood() {
            BoardNumbers board = new JobNumbers(new JobBuilder("clear")
                            .stack(JobBuilder.maple("board", Integer.toString(width), Integer.toString(length))
                                    .defects(defects))
                            .parts(JobBuilder.part("part", 1, "1", "1"))
                            .build())
                    .boards[0];
            return new ClearWood(board, nanometers(start), nanometers(end), left);
        }

        /** Whether the strip that lies {@code y} to {@code y + w} from the reference edge is clear from x to x + 1. */
        boolean clear(int x, int y, int w, boolean show) {
            for (int i = y; i < y + w; i++) {
                int across = left ? i : width - 1 - i;
                for (Defect defect : defects)
                    if ((show || defect.blocks() == Defect.Blocks.ALL)
                            && defect.from().nanometers() <= nanometers(x)
                            && defect.to().nanometers() >= nanometers(x + 1)
                            && defect.left().nanometers() <= nanometers(across)
                            && defect.right().nanometers() >= nanometers(across + 1)) return false;
            }
            return true;
        }

        List<ClearWood.Interval> intervals(int y, int w, boolean show) {
            List<ClearWood.Interval> intervals = new ArrayList<>();
            int from = -1;
            for (int x = start; x <= end; x++) {
                boolean clear = x < end && clear(x, y, w, show);
                if (clear && from < 0) from = x;
                if (clear || from < 0) continue;
                intervals.add(new ClearWood.Interval(nanometers(from), nanometers(x)));
                from = -1;
            }
            return intervals;
        }
    }

    private static Length in(int inches) {
        return new Length(nanometers(inches));
    }

    private static long nanometers(int inches) {
        return 25_400_000L * inches;
    }

    @Test
    void a_strip_is_clear_where_no_square_inch_of_it_is_defective() {
        Seeds.each(600, 250, (random, size) -> {
            Case drawn = Case.random(random, size, random.nextInt(4));
            ClearWood wood = drawn.wood();
            boolean any = false;
            for (int y = 0; y < drawn.width; y++)
                for (int w = 1; y + w <= drawn.width; w++) {
                    ClearWood.View view = wood.view(nanometers(y), nanometers(w));
                    assertThat(view.forShow()).isEqualTo(drawn.intervals(y, w, true));
                    assertThat(view.forHidden()).isEqualTo(drawn.intervals(y, w, false));
                    assertThat(view.alike()).isEqualTo(view.forShow().equals(view.forHidden()));
                    assertThat(wood.view(nanometers(y), nanometers(w))).isSameAs(view);
                    any |= !drawn.intervals(y, w, true)
                            .equals(List.of(new ClearWood.Interval(nanometers(drawn.start), nanometers(drawn.end))));
                }
            assertThat(wood.everywhere()).isEqualTo(!any);
            return any;
        });
    }

    /** A strip that is pushed on can come clear only where a defect ends. */
    @Test
    void where_more_of_a_strip_comes_clear_a_defect_is_past() {
        Seeds.each(400, 150, (random, size) -> {
            Case drawn = Case.random(random, size, 1 + random.nextInt(3));
            TreeSet<Long> past = new TreeSet<>();
            for (long y : drawn.wood().pastDefects()) past.add(y);
            boolean any = false;
            for (int y = 1; y < drawn.width; y++)
                for (int x = drawn.start; x < drawn.end; x++)
                    if (drawn.clear(x, y, 1, true) && !drawn.clear(x, y - 1, 1, true)) {
                        assertThat(past).contains(nanometers(y));
                        any = true;
                    }
            return any;
        });
    }

    @Test
    void of_very_many_defects_no_wood_is_called_clear_that_is_not() {
        Seeds.each(60, 30, (random, size) -> {
            Case drawn = Case.random(random, 12 + size, 200 + random.nextInt(50));
            ClearWood wood = drawn.wood();
            for (int y = 0; y < drawn.width; y++) {
                ClearWood.View view = wood.view(nanometers(y), nanometers(1));
                for (boolean show : new boolean[] {false, true})
                    for (ClearWood.Interval clear : show ? view.forShow() : view.forHidden())
                        for (int x = drawn.start; x < drawn.end; x++)
                            if (nanometers(x) >= clear.start() && nanometers(x) < clear.end())
                                assertThat(drawn.clear(x, y, 1, show)).isTrue();
            }
            return drawn.defects.stream()
                            .filter(defect -> defect.from().nanometers() < nanometers(drawn.end)
                                    && defect.to().nanometers() > nanometers(drawn.start))
                            .count()
                    > 64;
        });
    }
}
