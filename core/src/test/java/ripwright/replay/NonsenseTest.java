package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.plan.Plan;

class NonsenseTest {
    private static final List<Sample> GOOD = List.of(
            BenchRails.sample(),
            HallBench.sample(),
            ShortShelves.sample(),
            DrawerBox.sample(),
            BesideStrip.sample(),
            TaperedLeg.sample(),
            Blocks.three(),
            Thirds.sample());

    @Test
    void whatever_a_plan_says_replay_answers() {
        int refused = 0;
        for (int seed = 0; seed < 2_000; seed++) {
            Sample good = GOOD.get(seed % GOOD.size());
            Plan nonsense = new Scramble(seed, good.plan()).of(good.plan());
            List<String> messages = answer(new Sample(good.job(), nonsense), seed);
            if (!messages.isEmpty()) refused++;
        }
        assertThat(refused).isGreaterThan(1_750); // the others were let off lightly
    }

    private static List<String> answer(Sample sample, int seed) {
        try {
            return sample.faults();
        } catch (RuntimeException e) {
            throw new AssertionError("seed " + seed, e);
        }
    }

    @Test
    void a_plan_for_quite_another_job_is_answered_too() {
        for (Sample one : GOOD)
            for (Sample other : GOOD)
                if (!one.equals(other))
                    assertThat(new Sample(one.job(), other.plan()).faults()).isNotEmpty();
    }

    @Test
    void the_same_plan_gets_the_same_answer_in_the_same_order() {
        for (int seed = 0; seed < 200; seed++) {
            Sample good = GOOD.get(seed % GOOD.size());
            Plan nonsense = new Scramble(seed, good.plan()).of(good.plan());
            Plan again = new Scramble(seed, good.plan()).of(good.plan());
            assertThat(new Sample(good.job(), nonsense).faults())
                    .as("seed %d", seed)
                    .isEqualTo(new Sample(good.job(), again).faults());
        }
    }
}
