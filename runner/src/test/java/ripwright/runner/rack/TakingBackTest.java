package ripwright.runner.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.runner.disk.Disk;
import ripwright.stock.Board;

class TakingBackTest extends AtADesk {
    @Test
    void taken_back_all_files_are_byte_for_byte_what_they_were()
            throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        shop.unsettle(Disk.REAL);
        assertThat(shop.books()).isEqualTo(fresh.books());
    }

    @Test
    void a_rack_that_the_first_booking_made_is_gone_when_it_is_taken_back()
            throws IOException, WrongInputException, RefusedException {
        Path plan = shop.plan("alone", ShopFolder.JOB.replace("\"rack\": \"rack.json\",", ""));
        Files.delete(shop.rack());
        Map<String, String> before = shop.books();
        shop.settle(plan, Disk.REAL);
        assertThat(ids()).isNotEmpty();
        assertThat(rack().units()).isEqualTo(Unit.INCH);
        new Desk(shop.rack(), Disk.REAL).unsettle(plan);
        assertThat(shop.books()).isEqualTo(before);
    }

    @Test
    void a_plan_whose_offcuts_a_later_one_took_is_not_taken_back_before_that_one()
            throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        Map<String, String> between = shop.books();
        Path shelf = shop.plan("shelf", SHELF);
        shop.settle(shelf, Disk.REAL);
        assertThat(refused(() -> shop.unsettle(Disk.REAL)))
                .isNotEmpty()
                .allMatch(reason -> reason.endsWith(
                        "is cut: \"Shelf\", booked on 2026-10-01 (shelf.plan.json), took it. Unsettle that first."));
        new Desk(shop.rack(), Disk.REAL).unsettle(shelf);
        assertThat(shop.books()).containsAllEntriesOf(between);
        shop.unsettle(Disk.REAL);
        assertThat(shop.books()).containsAllEntriesOf(fresh.books()).doesNotContainKey("rack.book.json");
    }

    @Test
    void a_plan_that_nothing_later_needs_is_taken_back_from_under_others()
            throws IOException, WrongInputException, RefusedException {
        String job = ShopFolder.JOB.replace("\"rack\": \"rack.json\",", "");
        Path alone = shop.plan("alone", job.replace("Coat rack", "Alone").replace("\"A", "\"C"));
        shop.settle(alone, Disk.REAL);
        List<Board> after = rack().offcuts();
        shop.settle(Disk.REAL);
        List<String> kept = ids();
        new Desk(shop.rack(), Disk.REAL).unsettle(alone);
        assertThat(ids()).hasSize(kept.size() - (after.size() - 3));
        shop.unsettle(Disk.REAL);
        assertThat(ids()).containsExactly("R1", "R2", "R3");
    }

    @Test
    void what_is_not_booked_is_not_taken_back() throws IOException, WrongInputException {
        assertThat(refused(() -> shop.unsettle(Disk.REAL))).containsExactly("This plan is not booked.");
    }

    @Test
    void where_another_plan_of_the_job_is_booked_that_is_said()
            throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        Files.writeString(
                shop.plan(), Files.readString(shop.plan()).replaceFirst("\"minutes\": [0-9.]+", "\"minutes\": 1.00"));
        assertThat(refused(() -> shop.unsettle(Disk.REAL)))
                .containsExactly(
                        "This plan is not booked; another one of the same job is: \"Coat rack\", booked on 2026-10-01"
                                + " (coats.plan.json), and only that one can be taken back.");
    }

    @Test
    void boards_left_that_somebody_has_worked_on_stay() throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        Path left = folder.resolve("shop/coats.left.json");
        Files.writeString(left, "mine");
        assertThat(shop.unsettle(Disk.REAL).kept()).isPresent();
        assertThat(left).hasContent("mine");
        assertThat(refused(() -> shop.settle(Disk.REAL)))
                .containsExactly(
                        "FOLDER/shop/coats.left.json is in the way: the boards left go there. Move it somewhere else,"
                                + " or give it another name.");
    }
}
