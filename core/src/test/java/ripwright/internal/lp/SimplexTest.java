package ripwright.internal.lp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.testing.Seeds;

/**
 * Programs to which rows and columns come over time, against their optimum: the prices prove it by weak duality, as
 * {@link GrowingProgram} reckons from rows and columns of its own, and another solver finds the same.
 */
public class SimplexTest {
    private static final double MOVED = 1e-3; // what right sides moved by some 1e-7 may change in a value, and more

    /** Solves the program as it is now, and checks all that is said of it. */
    private static void solved(GrowingProgram program) {
        program.simplex.solve(() -> false);
        assertThat(program.faults()).isEmpty();
        assertThat(program.simplex.value()).isCloseTo(program.optimum(), within(MOVED));
    }

    /** Rows first, then columns a few at a time, now and then one more row over the columns there are. */
    private static GrowingProgram grown(ProgramDraw draw, int size) {
        GrowingProgram program = new GrowingProgram();
        int rows = 1 + draw.random().nextInt(1 + size);
        for (int r = 0; r < rows; r++) draw.addRow(program);
        solved(program);
        for (int round = 0; round < 4; round++) {
            int columns = 1 + draw.random().nextInt(1 + size);
            for (int j = 0; j < columns; j++) draw.addColumn(program);
            solved(program);
            if (draw.random().nextInt(3) > 0) continue;
            draw.addRow(program);
            solved(program);
        }
        return program;
    }

    @Test
    void a_program_that_grows_is_solved_at_every_step() {
        Seeds.each(
                400,
                160,
                (random, size) -> grown(ProgramDraw.ample(random), size).penalty() < MOVED);
    }

    @Test
    void what_no_column_makes_is_paid_for() {
        Seeds.each(
                400,
                180,
                (random, size) -> grown(ProgramDraw.scarce(random), size).penalty() > 1);
    }

    /** Many ways to the same corner: zeros and ones, and as many columns that are alike. */
    @Test
    void a_degenerate_program_is_solved_at_every_step() {
        Seeds.each(
                400,
                350,
                (random, size) -> grown(ProgramDraw.degenerate(random), size).isDegenerate());
    }

    @Test
    void a_copy_goes_its_own_way() {
        Seeds.each(100, (random, size) -> {
            GrowingProgram one = grown(ProgramDraw.ample(random), size);
            double before = one.simplex.value();
            GrowingProgram other = one.copy();
            ProgramDraw.scarce(random).addRow(other);
            ProgramDraw.ample(random).addColumn(other);
            solved(other);
            assertThat(one.simplex.value()).isEqualTo(before);
            ProgramDraw.ample(random).addColumn(one);
            solved(one);
            solved(other);
        });
    }

    @Test
    void a_column_that_is_barred_is_left_out() {
        Seeds.each(200, 170, (random, size) -> {
            GrowingProgram program = grown(ProgramDraw.ample(random), size);
            boolean taken = false;
            for (int j = 0; j < program.columns(); j += 2) {
                taken |= program.weight(j) > MOVED;
                program.bar(j, 1_000);
                solved(program);
            }
            return taken;
        });
    }

    /** So many pivots that the inverse is worked out again, more than once. */
    @Test
    void a_larger_program_is_solved_to_the_end() {
        ProgramDraw draw = ProgramDraw.ample(new SplittableRandom(1));
        GrowingProgram program = new GrowingProgram();
        for (int r = 0; r < 80; r++) draw.addRow(program);
        for (int round = 0; round < 25; round++) {
            for (int j = 0; j < 60; j++) draw.addColumn(program);
            solved(program);
        }
    }

    /** Three are wanted; the column makes two at a cost of 4 and may be taken once. The third is missed at 10. */
    @Test
    void one_row_by_hand() {
        Simplex simplex = new Simplex();
        simplex.addAtLeast(3, 10, 0, new int[0], new double[0]);
        simplex.addAtMost(1, 0, new int[0], new double[0]);
        simplex.solve(() -> false);
        assertThat(simplex.value()).isCloseTo(30, within(1e-5));
        int column = simplex.add(new int[] {0, 1}, new double[] {2, 1}, 4);
        simplex.solve(() -> false);
        assertThat(simplex.value()).isCloseTo(14, within(1e-5));
        assertThat(simplex.weights()[column]).isCloseTo(1, within(1e-6));
        assertThat(simplex.price(0)).isCloseTo(10, within(1e-9)); // one more is missed
        assertThat(simplex.price(1)).isCloseTo(-16, within(1e-9)); // one more column: 4 for two that are missed at 10
    }

    @Test
    void a_row_that_allows_less_than_is_taken_is_exceeded_where_that_is_cheaper() {
        Simplex simplex = new Simplex();
        simplex.addAtLeast(3, 10, 0, new int[0], new double[0]);
        int column = simplex.add(new int[] {0}, new double[] {1}, 2);
        simplex.solve(() -> false);
        simplex.addAtMost(1, 5, new int[] {column}, new double[] {1});
        simplex.solve(() -> false);
        assertThat(simplex.value()).isCloseTo(3 * 2 + 2 * 5, within(1e-5));
        simplex.addAtMost(2, 7, new int[] {column}, new double[] {1}); // the third now at 2 + 5 + 7, or missed at 10
        simplex.solve(() -> false);
        assertThat(simplex.value()).isCloseTo(2 * 2 + 5 + 10, within(1e-5));
    }
}
