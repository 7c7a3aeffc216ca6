package ripwright.runner.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.CutBoard;
import ripwright.runner.disk.Disk;
import ripwright.runner.disk.LockFile;
import ripwright.runner.json.JobReader;
import ripwright.runner.json.PlanReader;
import ripwright.runner.json.Rack;
import ripwright.runner.json.RackReader;
import ripwright.runner.json.RackWriter;
import ripwright.runner.tree.WrongInputException;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

class DeskTest {
    /** A shelf that the offcuts which the coat rack leaves are enough for; it has a board of its own too. */
    private static final String SHELF = ShopFolder.JOB
            .replace("Coat rack", "Shelf")
            .replaceAll(
                    "(?s)\"stack\": \\[.*?\\]",
                    "\"stack\": [ { \"id\": \"Z\", \"species\": \"ash\", \"thickness\": \"3/4\","
                            + " \"width\": 2, \"length\": 14, \"straightEdges\": 2 } ]")
            .replaceAll(
                    "(?s)\"parts\": \\[.*\\]",
                    "\"parts\": [ { \"name\": \"slat\", \"count\": 4, \"length\": 9.5,"
                            + " \"width\": 2, \"thickness\": \"3/4\", \"species\": \"ash\", \"face\": \"hidden\" } ]");

    @TempDir
    private static Path planned;

    @TempDir
    private Path folder;

    private static ShopFolder fresh;
    private ShopFolder shop;

    @BeforeAll
    static void plan() throws IOException, WrongInputException {
        fresh = ShopFolder.planned(planned, ShopFolder.RACK, ShopFolder.JOB);
    }

    @BeforeEach
    void copy() throws IOException {
        shop = fresh.copy(folder.resolve("shop"));
    }

    private Rack rack() throws WrongInputException {
        return RackReader.read(shop.rack());
    }

    private List<String> ids() throws WrongInputException {
        return rack().offcuts().stream().map(Board::id).toList();
    }

    private List<String> refused(ShopFolder.Work work) throws IOException, WrongInputException {
        Map<String, String> before = shop.books();
        List<String> reasons = ShopFolder.refusal(work);
        assertThat(shop.books()).isEqualTo(before);
        return reasons.stream()
                .map(reason -> reason.replace(folder.toString(), "FOLDER"))
                .toList();
    }

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

    /** The rest of a coat rack that was begun: a section and the boards that are whole. */
    private static final String REST = ShopFolder.JOB
            .replace("Coat rack", "Coat rack, resumed")
            .replace("\"rack\": \"rack.json\",", "")
            .replaceAll(
                    "(?s)\"stack\": \\[.*?\\]",
                    "\"stack\": [ { \"id\": \"A1/1\", \"species\": \"ash\", \"thickness\": \"3/4\","
                            + " \"width\": 7, \"length\": 60, \"straightEdges\": 2, \"price\": 0 } ]")
            .replaceAll(
                    "(?s)\"parts\": \\[.*\\]",
                    "\"parts\": [ { \"name\": \"rail\", \"count\": 1, \"length\": 24,"
                            + " \"width\": \"2 1/4\", \"thickness\": \"3/4\", \"species\": \"ash\", \"face\": \"show\" } ]");

    @Test
    void a_job_that_was_resumed_is_booked_by_the_plan_of_the_rest()
            throws IOException, WrongInputException, RefusedException {
        List<String> planned = PlanReader.read(shop.plan()).boards().stream()
                .map(CutBoard::board)
                .toList();
        Path rest = shop.plan("coats.resumed", REST);
        Map<String, String> before = shop.books();
        Settlement booked = shop.settle(rest, Disk.REAL).entry().settlement();
        List<String> left = Stream.concat(
                        booked.cut().stream(), booked.taken().stream().map(Settlement.Taken::offcut))
                .map(Board::id)
                .toList();
        assertThat(left).containsExactlyInAnyOrderElementsOf(planned);
        assertThat(booked.entered())
                .isNotEmpty()
                .allMatch(offcut -> offcut.history()
                        .flatMap(history -> history.job())
                        .filter("Coat rack"::equals)
                        .isPresent());
        assertThat(refused(() -> shop.settle(Disk.REAL)))
                .isNotEmpty()
                .allMatch(reason -> reason.contains("(coats.resumed.plan.json)"));
        new Desk(shop.rack(), Disk.REAL).unsettle(rest);
        assertThat(shop.books()).isEqualTo(before);
    }

    @Test
    void the_rest_of_a_job_that_is_booked_as_it_was_begun_is_refused()
            throws IOException, WrongInputException, RefusedException {
        Path rest = shop.plan("coats.resumed", REST);
        shop.settle(Disk.REAL);
        assertThat(refused(() -> shop.settle(rest, Disk.REAL)))
                .containsExactly(
                        "This plan makes the rest of what is booked already: \"Coat rack\", booked on 2026-10-01"
                                + " (coats.plan.json), as if all of it had been cut. Unsettle that first.");
    }
}
