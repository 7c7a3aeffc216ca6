package ripwright.internal.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.job.Job;
import ripwright.testing.LayoutCheck;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** What comes of patterns drawn at random, of more blanks than there are and larger than the board too. */
class LayoutConstructionTest {
    private static Pattern pattern(SplittableRandom random, JobNumbers numbers, ItemTypes types, BoardNumbers board) {
        List<Pattern.Section> sections = new ArrayList<>();
        long room = board.to - board.from;
        for (int s = board.ripped ? 1 : 1 + random.nextInt(3); s > 0; s--) {
            long length = board.ripped || random.nextInt(3) == 0 ? room : random.nextLong(1, Math.max(2, room));
            room = Math.max(1, room - length);
            sections.add(section(random, numbers, types, board, length));
        }
        return new Pattern(types.typeOfBoard(board.index), 0, sections);
    }

    private static Pattern.Section section(
            SplittableRandom random, JobNumbers numbers, ItemTypes types, BoardNumbers board, long length) {
        List<Pattern.Strip> strips = new ArrayList<>();
        long across = board.ripped ? 1 : Math.max(board.widthNear, board.widthFar);
        for (int n = 1 + random.nextInt(5); n > 0 && across > 0; n--) {
            int w = random.nextInt(numbers.widths.length);
            if (board.ripped) w = Math.max(0, Arrays.binarySearch(numbers.widths, board.widthNear));
            across -= numbers.widths[w];
            List<Integer> blanks = new ArrayList<>();
            int[] parts = numbers.partsOfWidth[w];
            long along = length;
            for (int b = random.nextInt(6); b >= 0 && along > 0; b--) {
                int part = parts[random.nextInt(parts.length)];
                along -= numbers.parts[part].length;
                blanks.add(types.typeOfPart(part));
            }
            strips.add(new Pattern.Strip(board.ripped ? board.widthNear : numbers.widths[w], blanks));
        }
        strips.sort(Comparator.comparing(strip -> -strip.width()));
        return new Pattern.Section(length, strips);
    }

    @Test
    void what_is_placed_can_be_cut_and_is_no_more_than_is_left() {
        Seeds.each(1_000, 300, (random, size) -> {
            Job job = RandomJobs.growing(random, size);
            JobNumbers numbers = new JobNumbers(job);
            ItemTypes types = new ItemTypes(numbers);
            BoardNumbers board = numbers.boards[random.nextInt(numbers.boards())];
            int[] most = numbers.wanted();
            for (int p = 0; p < most.length; p++) if (random.nextBoolean()) most[p] = random.nextInt(most[p] + 1);
            long[] prices = random.longs(types.parts(), 0, 100).toArray();
            Optional<PricedLayout> placed = LayoutConstruction.of(
                    numbers, types, board.index, pattern(random, numbers, types, board), prices, most.clone());
            if (placed.isEmpty()) return false;
            LayoutCheck check = new LayoutCheck(job, List.of(placed.get().layout()));
            assertThat(check.faults()).isEmpty();
            int[] made = check.made();
            assertThat(Arrays.stream(made).sum()).isPositive();
            for (int p = 0; p < most.length; p++) assertThat(made[p]).isLessThanOrEqualTo(most[p]);
            whole(job, made);
            return true;
        });
    }

    /** Of parts that belong together all are made or none. */
    private static void whole(Job job, int[] made) {
        Map<String, Integer> missing = new HashMap<>();
        Map<String, Integer> begun = new HashMap<>();
        for (int p = 0; p < made.length; p++) {
            Part part = job.parts().get(p);
            if (part.together().isEmpty()) continue;
            missing.merge(part.together().get(), part.count() - made[p], Integer::sum);
            begun.merge(part.together().get(), made[p], Integer::sum);
        }
        begun.forEach((group, count) -> {
            if (count > 0) assertThat(missing).as(group).containsEntry(group, 0);
        });
    }
}
