package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class RoomTest {
    private static Thread taking(Room room, long bytes) {
        Thread thread = new Thread(() -> {
            try {
                room.take(bytes);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    /** Until it waits, or ended instead. */
    private static Thread.State settled(Thread thread) {
        Thread.State state = thread.getState();
        for (; state != Thread.State.WAITING && state != Thread.State.TERMINATED; state = thread.getState())
            Thread.onSpinWait();
        return state;
    }

    @Test
    void who_brings_more_than_fits_waits_until_others_have_gone() throws InterruptedException {
        Room room = new Room(10);
        room.take(6);
        Thread more = taking(room, 5);
        assertThat(settled(more)).isEqualTo(Thread.State.WAITING);
        room.change(6, 0);
        more.join();
        assertThat(room.taken()).isEqualTo(5);
    }

    @Test
    void what_never_fits_gets_in_alone() throws InterruptedException {
        Room room = new Room(10);
        room.take(11);
        assertThat(room.taken()).isEqualTo(11);
    }

    @Test
    void an_answer_takes_the_place_of_its_line_without_waiting() throws InterruptedException {
        Room room = new Room(10);
        room.take(8);
        room.change(8, 30);
        Thread more = taking(room, 1);
        assertThat(settled(more)).isEqualTo(Thread.State.WAITING);
        room.change(30, 0);
        more.join();
    }
}
