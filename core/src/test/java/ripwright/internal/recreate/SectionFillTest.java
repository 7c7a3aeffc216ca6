package ripwright.internal.recreate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.JobNumbers;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.testing.JobBuilder;
import ripwright.testing.LayoutCheck;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

class SectionFillTest {
    private static final RandomGenerator LONGEST_FIRST = () -> 0; // no noise in the order of the blanks

    /** A blank, how many there are and what one is worth. */
    private record Blank(int length, int width, int count, int worth) {}

    /** A clear board a few whole inches long and wide, all of it one section, and blanks for it, longest first. */
    private record Case(int length, int width, int edgeLoss, int ripKerf, int crosscutKerf, List<Blank> blanks) {
        static Case random(SplittableRandom random, int size) {
            List<Blank> blanks = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                int length = 1 + random.nextInt(6);
                int width = 1 + random.nextInt(4);
                if (blanks.stream().noneMatch(other -> other.length == length && other.width == width))
                    blanks.add(new Blank(length, width, 1 + random.nextInt(4), 1 + random.nextInt(9)));
            }
            blanks.sort(Comparator.comparing(blank -> -blank.length));
            int edgeLoss = random.nextInt(2);
            return new Case(
                    2 + random.nextInt(4 + size / 4),
                    1 + 2 * edgeLoss + random.nextInt(4 + size / 4),
                    edgeLoss,
                    random.nextInt(2),
                    random.nextInt(2),
                    blanks);
        }

        Job job() {
            Part.Builder[] bill = new Part.Builder[blanks.size()];
            for (int i = 0; i < bill.length; i++) {
                Blank blank = blanks.get(i);
                bill[i] = JobBuilder.part("part " + i, blank.count, text(blank.length), text(blank.width));
            }
            return new JobBuilder("section")
                    .stack(JobBuilder.maple("board", text(width), text(length))
                            .edges(edgeLoss > 0 ? 0 : 2, Length.inches(text(edgeLoss)), Length.ZERO))
                    .parts(bill)
                    .kerfs(text(ripKerf), text(crosscutKerf))
                    .build();
        }

        private static String text(int inches) {
            return Integer.toString(inches);
        }

        int[] counts() {
            return blanks.stream().mapToInt(Blank::count).toArray();
        }

        double[] worth() {
            return blanks.stream().mapToDouble(Blank::worth).toArray();
        }

        /** What the best number of strips of each width is worth. */
        int best() {
            return best(4, width - 2 * edgeLoss + ripKerf);
        }

        private int best(int w, int room) {
            if (w == 0) return 0;
            int[] left = counts();
            int worth = 0;
            int best = best(w - 1, room);
            for (int across = w + ripKerf; across <= room; across += w + ripKerf) {
                int[] strip = fullest(w, left);
                for (int i = 0; i < strip.length; i++) {
                    left[i] -= strip[i];
                    worth += strip[i] * blanks.get(i).worth;
                }
                best = Math.max(best, worth + best(w - 1, room - across));
            }
            return best;
        }

        /** The first of all choices, fewest of the shortest first, that no other is longer than. */
        private int[] fullest(int w, int[] left) {
            int[] fullest = new int[left.length];
            for (int[] choice : choices(w, left, left.length))
                if (used(choice) <= length + crosscutKerf && used(choice) > used(fullest)) fullest = choice;
            return fullest;
        }

        private int used(int[] choice) {
            int used = 0;
            for (int i = 0; i < choice.length; i++) used += choice[i] * (blanks.get(i).length + crosscutKerf);
            return used;
        }

        /** All choices of the first {@code types} blanks; the counts of the last change last. */
        private List<int[]> choices(int w, int[] left, int types) {
            if (types == 0) return List.of(new int[left.length]);
            List<int[]> all = new ArrayList<>();
            int most = blanks.get(types - 1).width == w ? left[types - 1] : 0;
            for (int n = 0; n <= most; n++)
                for (int[] choice : choices(w, left, types - 1)) {
                    int[] more = choice.clone();
                    more[types - 1] = n;
                    all.add(more);
                }
            return all;
        }
    }

    private static double worth(Job job, SectionFill.Filled filled, double[] worth) {
        LayoutCheck check = new LayoutCheck(job, List.of(new Layout(0, List.of(filled.section()))));
        assertThat(check.faults()).isEmpty();
        return sum(check.made(), worth);
    }

    private static double sum(int[] made, double[] worth) {
        double sum = 0;
        for (int p = 0; p < made.length; p++) sum += made[p] * worth[p];
        return sum;
    }

    @Test
    void a_clear_section_is_worth_the_best_number_of_strips_of_each_width() {
        Seeds.each(800, 600, Case::random, drawn -> {
            Job job = drawn.job();
            JobNumbers numbers = new JobNumbers(job);
            BoardNumbers board = numbers.boards[0];
            BlankPool pool = new BlankPool(drawn.counts(), drawn.worth(), 0);
            SectionFill fill = new SectionFill(numbers);
            for (boolean left : new boolean[] {true, false, true}) {
                SectionFill.Filled filled = fill.fill(board, 0, board.length, left, pool, LONGEST_FIRST);
                assertThat(filled == null ? 0 : filled.worth()).isEqualTo(drawn.best());
                if (filled != null)
                    assertThat(worth(job, filled, drawn.worth())).isEqualTo(filled.worth());
            }
            return drawn.best() > 0;
        });
    }

    @Test
    void a_section_of_any_board_can_be_cut_and_is_worth_what_its_blanks_are() {
        Seeds.each(600, 300, (random, size) -> {
            Job job = RandomJobs.growing(random, size);
            JobNumbers numbers = new JobNumbers(job);
            BoardNumbers board = numbers.boards[random.nextInt(numbers.boards())];
            long length = Math.min(numbers.longestRip, board.to - board.from);
            if (board.ripped || length < numbers.shortestRip) return false;
            int[] most = numbers.wanted();
            for (int p = 0; p < most.length; p++) most[p] = random.nextInt(most[p] + 1);
            double[] worth = random.ints(most.length, 1, 100).asDoubleStream().toArray();
            SectionFill.Filled filled = new SectionFill(numbers)
                    .fill(
                            board,
                            board.from,
                            board.from + length,
                            board.tapered() || random.nextBoolean(),
                            new BlankPool(most.clone(), worth, numbers.groups),
                            random);
            if (filled == null) return false;
            LayoutCheck check = new LayoutCheck(job, List.of(new Layout(board.index, List.of(filled.section()))));
            assertThat(check.faults()).isEmpty();
            for (int p = 0; p < most.length; p++) assertThat(check.made()[p]).isLessThanOrEqualTo(most[p]);
            assertThat(filled.worth()).isEqualTo(sum(check.made(), worth));
            return true;
        });
    }
}
