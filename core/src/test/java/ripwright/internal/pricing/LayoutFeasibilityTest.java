package ripwright.internal.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.job.Job;
import ripwright.testing.LayoutCheck;
import ripwright.testing.Seeds;

/** Whether a small clear board gives certain blanks, against every way to lay them into it one by one. */
class LayoutFeasibilityTest {
    /** A board, and how many of each of its blanks it is to give. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Case(InchBoard board, int[] made) {
        static Case random(SplittableRandom random, int size) {
            InchBoard board = InchBoard.random(random, size + 8);
            int[] made = random.ints(board.blanks().size(), 0, 3).toArray();
            if (Arrays.stream(made).sum() == 0) made[0] = 1;
            return new Case(board, made);
        }

        @Override
        public String toString() {
            return board + " " + Arrays.toString(made);
        }
    }

    /** Every way to lay blanks into sections of certain lengths. */
    private static final class Laying {
        private final InchBoard board;
        private final List<InchBoard.Blank> blanks = new ArrayList<>();
        private final int[] lengths = new int[3];
        private final List<int[]> strips = new ArrayList<>(); // {section, width, inches left}

        Laying(Case asked) {
            board = asked.board;
            for (int i = 0; i < asked.made.length; i++)
                for (int n = 0; n < asked.made[i]; n++)
                    blanks.add(board.blanks().get(i));
        }

        boolean can() {
            return sections(0, board.length() - board.near() - board.far());
        }

        /** Tries every length of section {@code s} in so much room, and none. */
        private boolean sections(int s, int room) {
            if (s == 3 || room <= 0) return blank(0);
            for (int length = board.shortest(); length <= Math.min(room, board.longest()); length++) {
                lengths[s] = length;
                if (sections(s + 1, room - length - board.crosscutKerf())) return true;
            }
            lengths[s] = 0;
            return sections(3, 0);
        }

        private boolean blank(int i) {
            if (i == blanks.size()) return true;
            InchBoard.Blank blank = blanks.get(i);
            for (int[] strip : List.copyOf(strips)) {
                if (strip[1] != blank.width() || strip[2] < blank.length()) continue;
                int takes = blank.length() + board.crosscutKerf();
                strip[2] -= takes;
                boolean can = blank(i + 1);
                strip[2] += takes;
                if (can) return true;
            }
            for (int s = 0; s < 3; s++) {
                if (lengths[s] < blank.length() || left(s) < blank.width()) continue;
                strips.add(new int[] {s, blank.width(), lengths[s] - blank.length() - board.crosscutKerf()});
                boolean can = blank(i + 1);
                strips.remove(strips.size() - 1);
                if (can) return true;
            }
            return false;
        }

        /** What is left across a section. */
        private int left(int s) {
            int left = board.width() - 2 * board.edgeLoss();
            for (int[] strip : strips) if (strip[0] == s) left -= strip[1] + board.ripKerf();
            return left;
        }
    }

    private static boolean gives(Case asked) {
        Job job = asked.board.job(2);
        JobNumbers numbers = new JobNumbers(job);
        ItemTypes types = new ItemTypes(numbers);
        PricingProblem pricing = new PricingProblem(numbers);
        int[] made = new int[types.parts()];
        for (int k = 0; k < made.length; k++) made[k] = asked.made[types.partsOf(k)[0]];
        PricingProblem.Given given = pricing.holding(0, made);
        boolean can = new Laying(asked).can();
        assertThat(given.pattern().isPresent()).isEqualTo(can);
        if (!can) {
            assertThat(given.sure()).isTrue();
            return false;
        }
        Pattern pattern = given.pattern().orElseThrow();
        assertThat(pattern.made(made.length)).isEqualTo(made);
        PricedLayout placed =
                pricing.place(0, pattern, new long[made.length], asked.made).orElseThrow();
        LayoutCheck check = new LayoutCheck(job, List.of(placed.layout()));
        assertThat(check.faults()).isEmpty();
        assertThat(check.made()).isEqualTo(asked.made);
        return true;
    }

    @Test
    void a_board_gives_the_blanks_that_some_layout_has_and_they_are_placed() {
        Seeds.each(
                1_500,
                180,
                Case::random,
                asked -> gives(asked) && Arrays.stream(asked.made).sum() > 1);
    }

    @Test
    void a_board_surely_does_not_give_what_no_layout_has() {
        Seeds.each(1_500, 500, Case::random, asked -> !gives(asked));
    }
}
