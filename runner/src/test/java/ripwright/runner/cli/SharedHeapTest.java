package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import ripwright.json.tree.WrongInputException;

@Timeout(60)
class SharedHeapTest {
    private final SharedHeap heap = new SharedHeap();
    private final AtomicInteger runs = new AtomicInteger();

    @Test
    void who_found_the_heap_full_is_tried_again_alone() throws ExecutionException, InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch found = new CountDownLatch(1);
        AtomicInteger atWork = new AtomicInteger();
        CompletableFuture<Integer> small = CompletableFuture.supplyAsync(() -> run(() -> {
            atWork.incrementAndGet();
            begun.countDown();
            await(found);
            return atWork.decrementAndGet();
        }));
        await(begun);
        int beside = run(() -> {
            if (runs.incrementAndGet() > 1) return atWork.get();
            found.countDown();
            throw new IllegalStateException("A thread of the search ended.", new OutOfMemoryError("Java heap space"));
        });
        assertThat(beside).isZero();
        assertThat(small.get()).isZero();
        assertThat(runs).hasValue(2);
    }

    private <T> T run(SharedHeap.Work<T> work) {
        try {
            return heap.run(work);
        } catch (WrongInputException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void where_the_heap_is_too_small_even_for_it_alone_that_is_thrown() {
        assertThatThrownBy(() -> heap.run(() -> {
                    runs.incrementAndGet();
                    throw new OutOfMemoryError("Java heap space");
                }))
                .isInstanceOf(OutOfMemoryError.class);
        assertThat(runs).hasValue(2);
    }

    @Test
    void nothing_else_is_tried_twice() {
        assertThatThrownBy(() -> heap.run(() -> {
                    runs.incrementAndGet();
                    throw new IllegalStateException("A strip came out wider than its section.");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(runs).hasValue(1);
    }
}
