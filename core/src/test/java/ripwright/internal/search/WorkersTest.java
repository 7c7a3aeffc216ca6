package ripwright.internal.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

public class WorkersTest {
    @Test
    void no_more_compute_at_once_than_have_places_the_thread_that_plans_among_them() {
        AtomicInteger computing = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        try (Workers workers = new Workers(2)) {
            List<Future<Integer>> begun = new ArrayList<>();
            for (int i = 0; i < 6; i++) begun.add(workers.begin(() -> counted(computing, most)));
            int here = workers.here(() -> counted(computing, most));
            assertThat(here).isPositive();
            for (Future<Integer> one : begun) assertThat(workers.result(one)).isPositive();
        }
        assertThat(most).hasValue(2);
    }

    /** Long enough for others to come in between if they could. */
    private static int counted(AtomicInteger computing, AtomicInteger most) {
        most.accumulateAndGet(computing.incrementAndGet(), Math::max);
        int sum = 1;
        for (int i = 1; i < 5_000_000; i++) sum = Math.max(1, sum * 31 + i);
        computing.decrementAndGet();
        return sum;
    }

    /** With a single place the first work never ends unless the second has had its turn. */
    @Test
    void long_work_makes_room_for_what_waits() {
        CountDownLatch second = new CountDownLatch(1);
        try (Workers workers = new Workers(1)) {
            Future<Boolean> first = workers.begin(() -> {
                while (second.getCount() > 0) workers.makeRoom();
                return true;
            });
            Future<Boolean> other = workers.begin(() -> {
                second.countDown();
                return true;
            });
            assertThat(workers.result(first)).isTrue();
            assertThat(workers.result(other)).isTrue();
        }
    }

    @Test
    void a_thread_that_is_interrupted_waits_for_its_work_which_sees_it() {
        try (Workers workers = new Workers(1)) {
            Future<Boolean> work = workers.begin(() -> {
                while (!workers.interrupted()) Thread.onSpinWait();
                return true;
            });
            Thread.currentThread().interrupt();
            assertThat(workers.result(work)).isTrue();
            assertThat(Thread.interrupted()).isTrue();
        }
    }
}
