package ripwright.runner.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.json.JobReader;
import ripwright.json.Rack;
import ripwright.json.RackWriter;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.disk.Disk;
import ripwright.runner.disk.LockFile;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

class DeskTest extends AtADesk {
    @Test
    void what_is_consumed_leaves_and_what_is_left_enters() throws IOException, WrongInputException, RefusedException {
        Settlement booked = shop.settle(Disk.REAL).entry().settlement();
        assertThat(booked.taken()).isNotEmpty();
        assertThat(booked.entered()).isNotEmpty();
        assertThat(ids())
                .doesNotContainAnyElementsOf(booked.taken().stream()
                        .map(taken -> taken.offcut().id())
                        .toList());
        assertThat(rack().offcuts()).endsWith(booked.entered().toArray(Board[]::new));
        for (Board entered : booked.entered()) {
            assertThat(entered.history().flatMap(history -> history.since())).contains("2026-10-01");
            assertThat(entered.history().flatMap(history -> history.job())).contains("Coat rack");
            assertThat(entered.history().flatMap(history -> history.board())).isPresent();
        }
    }

    @Test
    void the_rack_as_it_was_is_kept_beside_it() throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        assertThat(shop.files()).containsEntry("rack.last.json", ShopFolder.RACK);
    }

    @Test
    void the_same_plan_is_not_booked_twice_however_its_file_is_laid_out()
            throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        Path copy = folder.resolve("shop/copy.plan.json");
        Files.writeString(copy, Files.readString(shop.plan()).replaceAll("\\s*\\n\\s*", " "));
        assertThat(refused(() -> shop.settle(copy, Disk.REAL)))
                .containsExactly("This plan is booked already, on 2026-10-01.");
    }

    @Test
    void another_plan_of_the_same_boards_is_refused() throws IOException, WrongInputException, RefusedException {
        String job = ShopFolder.JOB.replace("\"rack\": \"rack.json\",", "");
        Path first = shop.plan("first", job);
        Path second = shop.plan("second", job.replace("Coat rack", "Hat rack"));
        shop.settle(first, Disk.REAL);
        assertThat(refused(() -> shop.settle(second, Disk.REAL)))
                .containsExactly(
                        "A1 is cut already: \"Coat rack\", booked on 2026-10-01 (first.plan.json), did. Take it off the"
                                + " stack and plan again; if this is another board of the same measures, give it an id of its own.");
    }

    @Test
    void a_plan_from_an_older_rack_is_refused_with_who_took_what()
            throws IOException, WrongInputException, RefusedException {
        Path late =
                shop.plan("late", ShopFolder.JOB.replace("Coat rack", "Late").replace("\"A", "\"C"));
        Settlement booked = shop.settle(Disk.REAL).entry().settlement();
        List<String> reasons = refused(() -> shop.settle(late, Disk.REAL));
        assertThat(reasons)
                .contains(booked.taken().get(0).offcut().id()
                        + " is not on the rack any more: \"Coat rack\", booked on 2026-10-01 (coats.plan.json), took it."
                        + " Plan again.")
                .allMatch(reason -> reason.contains("took it"));
    }

    @Test
    void an_offcut_that_somebody_took_is_missed() throws IOException, WrongInputException, RefusedException {
        Rack rack = rack();
        Files.write(shop.rack(), RackWriter.bytes(new Rack(rack.units(), List.of())));
        assertThat(refused(() -> shop.settle(Disk.REAL)))
                .isNotEmpty()
                .allMatch(reason -> reason.endsWith("is neither in the job's stack nor on the rack. Plan again."));
    }

    @Test
    void an_offcut_that_is_shorter_now_is_told() throws IOException, WrongInputException, RefusedException {
        shop.settle(Disk.REAL);
        Path shelf = shop.plan("shelf", SHELF);
        Settlement next = shop.copy(folder.resolve("other"))
                .settle(shelf(folder.resolve("other")), Disk.REAL)
                .entry()
                .settlement();
        Board used = next.taken().stream()
                .map(Settlement.Taken::offcut)
                .filter(offcut -> offcut.id().contains("/"))
                .findFirst()
                .orElseThrow();
        List<Board> sawn = rack().offcuts().stream()
                .map(offcut -> offcut.id().equals(used.id())
                        ? offcut.toBuilder()
                                .length(Length.inches("9.6"))
                                .defects(List.of())
                                .build()
                        : offcut)
                .toList();
        Files.write(shop.rack(), RackWriter.bytes(new Rack(Unit.INCH, sawn)));
        List<String> reasons = refused(() -> shop.settle(shelf, Disk.REAL));
        assertThat(reasons.get(0))
                .startsWith(used.id() + " came to the rack as ash, 3/4 x ")
                .endsWith("x 9.6 in, changed by hand.");
        assertThat(reasons.get(1))
                .startsWith("As the boards are in the job and on the rack now, the plan does not hold.");
        assertThat(reasons).hasSizeGreaterThan(2);
    }

    private static Path shelf(Path folder) {
        return folder.resolve("shelf.plan.json");
    }

    @Test
    void a_plan_that_is_not_right_is_not_booked() throws IOException, WrongInputException {
        Files.writeString(
                shop.plan(), Files.readString(shop.plan()).replaceFirst("\"minutes\": [0-9.]+", "\"minutes\": 1.00"));
        List<String> reasons = refused(() -> shop.settle(Disk.REAL));
        assertThat(reasons.get(0))
                .startsWith("As the boards are in the job and on the rack now, the plan does not hold.");
        assertThat(reasons).hasSize(2);
    }

    @Test
    void a_job_of_another_name_is_not_the_plans() throws IOException, WrongInputException {
        Path other = Files.writeString(folder.resolve("shop/other.job.json"), SHELF);
        assertThat(refused(() -> new Desk(shop.rack(), Disk.REAL).settle(shop.plan(), Optional.of(other), "today")))
                .containsExactly(
                        "The plan is of \"Coat rack\", but FOLDER/shop/other.job.json is \"Shelf\". Name the job that"
                                + " was planned: --job FILE.");
    }

    @Test
    void a_plan_without_its_job_asks_for_it() throws IOException, WrongInputException {
        Files.delete(folder.resolve("shop/coats.job.json"));
        assertThat(refused(() -> shop.settle(Disk.REAL)))
                .containsExactly("There is no FOLDER/shop/coats.job.json. Name the job that was planned: --job FILE.");
    }

    @Test
    void a_rack_in_a_folder_that_is_not_there_is_told() throws IOException, WrongInputException {
        Desk desk = new Desk(folder.resolve("nowhere/rack.json"), Disk.REAL);
        assertThat(refused(() -> desk.settle(shop.plan(), Optional.empty(), "today")))
                .containsExactly("There is no folder FOLDER/nowhere. Make it, or name another rack.");
    }

    @Test
    void while_another_run_is_at_work_nothing_is_booked() throws IOException, WrongInputException, RefusedException {
        try (LockFile held = LockFile.take(folder.resolve("shop/.rack.lock")).orElseThrow()) {
            assertThat(held).isNotNull();
            assertThat(refused(() -> shop.settle(Disk.REAL)))
                    .containsExactly("Another run is at work on FOLDER/shop/rack.json. Try again when it has ended.");
        }
        shop.settle(Disk.REAL);
    }

    @Test
    void ids_and_marks_that_are_taken_are_not_given_again() throws IOException, WrongInputException, RefusedException {
        Settlement first = shop.settle(Disk.REAL).entry().settlement();
        Board same = first.entered().get(0);
        Path twin = shop.plan(
                "twin",
                ShopFolder.JOB
                        .replace("Coat rack", "Twin")
                        .replace("\"rack\": \"rack.json\",", "")
                        .replace("\"length\": 72,", "\"length\": 73,"));
        Settlement second = shop.settle(twin, Disk.REAL).entry().settlement();
        assertThat(ids()).doesNotHaveDuplicates();
        assertThat(rack().offcuts().stream().map(Settlement::mark).map(String::toLowerCase))
                .doesNotHaveDuplicates();
        assertThat(same.id()).startsWith("A");
        assertThat(second.entered()).extracting(Board::id).contains("A1/A-2");
        assertThat(second.entered()).extracting(Settlement::mark).contains("A1/A-2");
    }

    @Test
    void the_boards_left_are_a_job_but_for_its_parts() throws IOException, WrongInputException, RefusedException {
        Settlement booked = shop.settle(Disk.REAL).entry().settlement();
        Path left = folder.resolve("shop/coats.left.json");
        Path next = Files.writeString(
                folder.resolve("shop/next.job.json"),
                Files.readString(left)
                        .replace(
                                "\"parts\": []",
                                "\"parts\": [ { \"name\": \"peg\", \"count\": 1, \"length\": 5, \"width\": 2,"
                                        + " \"thickness\": \"3/4\", \"face\": \"hidden\" } ]"));
        var job = JobReader.read(next);
        assertThat(job.stack()).hasSize(4 - booked.cut().size());
        assertThat(job.rack()).isEqualTo(rack().offcuts());
        assertThat(job.saw())
                .isEqualTo(JobReader.read(folder.resolve("shop/coats.job.json")).saw());
    }

    @Test
    void a_rack_in_millimeters_takes_offcuts_of_a_job_in_inches_exactly()
            throws IOException, WrongInputException, RefusedException {
        Rack inches = rack();
        Files.write(shop.rack(), RackWriter.bytes(new Rack(Unit.MILLIMETER, inches.offcuts())));
        assertThat(rack().offcuts()).isEqualTo(inches.offcuts());
        Settlement booked = shop.settle(Disk.REAL).entry().settlement();
        assertThat(rack().units()).isEqualTo(Unit.MILLIMETER);
        assertThat(rack().offcuts()).containsAll(booked.entered());
    }

    @Test
    void a_link_to_a_rack_stays_a_link() throws IOException, WrongInputException, RefusedException {
        Path real = Files.createDirectory(folder.resolve("elsewhere")).resolve("shelf.json");
        Files.move(shop.rack(), real);
        Files.createSymbolicLink(shop.rack(), real);
        shop.settle(Disk.REAL);
        assertThat(Files.isSymbolicLink(shop.rack())).isTrue();
        assertThat(real).content().contains("2026-10-01");
        assertThat(folder.resolve("elsewhere/shelf.book.json")).exists();
    }

    @Test
    void a_plan_is_booked_and_taken_back_whatever_its_file_is_called() throws Exception {
        ShopFolder shop = ShopFolder.planned(folder.resolve("shop"), ShopFolder.RACK, ShopFolder.JOB);
        Path plan = shop.plan("coats\n", ShopFolder.JOB);
        shop.settle(plan, Disk.REAL);
        assertThat(new Desk(shop.rack(), Disk.REAL).unsettle(plan).settlement()).isPresent();
    }
}
