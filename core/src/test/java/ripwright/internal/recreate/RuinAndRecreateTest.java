package ripwright.internal.recreate;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.testing.JobBuilder.in;
import static ripwright.testing.JobBuilder.maple;
import static ripwright.testing.JobBuilder.part;

import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.job.Job;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.testing.JobBuilder;

public class RuinAndRecreateTest {
    /** K1 to K3 of the trade facts: identities. */
    @Test
    void as_many_strips_come_off_as_fit_with_a_kerf_between() {
        assertThat(stripsOf("9 1/4", "2 1/4")).isEqualTo(3);
        assertThat(stripsOf("9 3/8", "2 1/4")).isEqualTo(4);
        assertThat(stripsOf("9 1/2", "2 1/4")).isEqualTo(4);
        assertThat(stripsOf("6 3/8", "1 1/2")).isEqualTo(4); // K5
        assertThat(stripsOf("6", "1 1/2")).isEqualTo(3); // K6
    }

    private static int stripsOf(String boardWidth, String partWidth) {
        Job job = new JobBuilder("test")
                .stack(maple("b", boardWidth, "30"))
                .parts(part("p", 9, "30", partWidth))
                .build();
        return made(new JobNumbers(job), 1).length;
    }

    /** K8 of the trade facts, an identity: 96 in less 1 in at each end, parts of 23 1/2 in. */
    @Test
    void blanks_lie_between_the_end_trims() {
        Board board = maple("b", "2", "96").endTrim(in("1"), in("1")).build();
        Job job = new JobBuilder("test")
                .stack(List.of(board))
                .parts(part("p", 9, "23 1/2", "2"))
                .build();
        assertThat(made(new JobNumbers(job), 1)).hasSize(3);
    }

    @Test
    void a_recut_makes_no_more_than_it_was_given_and_takes_it_off() {
        Job job = new JobBuilder("test")
                .stack(maple("a", "8", "50"), maple("b", "7", "60"))
                .parts(part("p", 5, "13", "2 1/4"), part("q", 6, "17", "3"))
                .build();
        JobNumbers numbers = new JobNumbers(job);
        for (int seed = 0; seed < 200; seed++) {
            int[] left = {3, 2};
            @Nullable
            PricedLayout[] cut = new RuinAndRecreate(numbers).cut(List.of(1, 0), left, new SplittableRandom(seed));
            int[] made = new int[2];
            for (PricedLayout layout : cut) if (layout != null) for (int part : layout.made()) made[part]++;
            assertThat(made[0] + left[0]).isEqualTo(3);
            assertThat(made[1] + left[1]).isEqualTo(2);
            assertThat(left[0]).isNotNegative();
            assertThat(left[1]).isNotNegative();
        }
    }

    @Test
    void a_group_mostly_comes_whole_or_not_at_all() {
        Part left = part("left", 3, "20", "2").together("pair").build();
        Part right = part("right", 1, "20", "3").together("pair").build();
        Job tooSmall = new JobBuilder("test")
                .stack(maple("b", "4 1/8", "20"))
                .parts(List.of(left, right))
                .build();
        Job enough = new JobBuilder("test")
                .stack(maple("b", "9 3/8", "20"))
                .parts(List.of(left, right))
                .build();
        int torn = 0;
        int whole = 0;
        for (int seed = 0; seed < 200; seed++) {
            if (made(new JobNumbers(tooSmall), seed).length > 0) torn++;
            if (made(new JobNumbers(enough), seed).length == 4) whole++;
        }
        assertThat(torn).isBetween(1, 50); // now and then, for stacks that cannot make it whole
        assertThat(whole).isGreaterThan(150);
    }

    @Test
    void a_group_begun_on_one_board_is_left_alone_on_others() {
        Part pair = part("pair", 4, "20", "2").together("pair").build();
        Job job = new JobBuilder("test")
                .stack(maple("a", "9", "20"), maple("b", "9", "20"))
                .parts(List.of(pair))
                .build();
        JobNumbers numbers = new JobNumbers(job);
        for (int seed = 0; seed < 50; seed++)
            assertThat(new RuinAndRecreate(numbers).cut(List.of(1), new int[] {2}, new SplittableRandom(seed))[0])
                    .isNull();
    }

    @Test
    void show_parts_avoid_sound_knots_and_hidden_parts_may_have_them() {
        Defect knot = new Defect(in("9"), in("11"), in("1"), in("2"), "sound knot", Defect.Blocks.SHOW);
        Board board = maple("b", "3", "20").defects(List.of(knot)).build();
        Part show = part("show", 2, "9", "3").face(Part.Face.SHOW).build();
        Part hidden = part("hidden", 2, "9 15/16", "3").build();
        JobNumbers showing = new JobNumbers(new JobBuilder("test")
                .stack(List.of(board))
                .parts(List.of(show))
                .build());
        JobNumbers hiding = new JobNumbers(new JobBuilder("test")
                .stack(List.of(board))
                .parts(List.of(hidden))
                .build());
        int mostShown = 0;
        int mostHidden = 0;
        for (int seed = 0; seed < 30; seed++) {
            mostShown = Math.max(mostShown, made(showing, seed).length);
            mostHidden = Math.max(mostHidden, made(hiding, seed).length);
            PricedLayout cut =
                    new RuinAndRecreate(showing).cut(List.of(0), showing.wanted(), new SplittableRandom(seed))[0];
            assertThat(cut).isNotNull();
            assertThat(cut.layout().sections())
                    .flatExtracting(Layout.Section::strips)
                    .flatExtracting(Layout.Strip::blanks)
                    .extracting(Layout.Blank::from)
                    .allMatch(from -> from == 0 || from >= in("11").nanometers());
        }
        assertThat(mostShown).isEqualTo(2);
        assertThat(mostHidden).isEqualTo(2);
    }

    @Test
    void the_same_seed_cuts_the_same() {
        Job job = new JobBuilder("test")
                .stack(maple("a", "8", "90"))
                .parts(part("p", 5, "13", "2 1/4"), part("q", 6, "17", "3"))
                .build();
        assertThat(layoutOf(job, 7)).isEqualTo(layoutOf(job, 7));
    }

    private static Layout layoutOf(Job job, long seed) {
        JobNumbers numbers = new JobNumbers(job);
        PricedLayout cut =
                new RuinAndRecreate(numbers).cut(List.of(0), numbers.wanted(), new SplittableRandom(seed))[0];
        assertThat(cut).isNotNull();
        return cut.layout();
    }

    private static int[] made(JobNumbers numbers, long seed) {
        PricedLayout cut =
                new RuinAndRecreate(numbers).cut(List.of(0), numbers.wanted(), new SplittableRandom(seed))[0];
        return cut == null ? new int[0] : cut.made();
    }
}
