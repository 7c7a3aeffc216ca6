package ripwright.runner.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.BookReader;
import ripwright.json.RackReader;
import ripwright.json.tree.WrongInputException;
import ripwright.runner.disk.Disk;

/** The power is cut at every instant at which a file is written, moved or deleted; what a system may lose then is lost. */
class PowerCutTest {
    @TempDir
    private static Path books;

    @TempDir
    private Path folder;

    private static ShopFolder open;
    private static ShopFolder settled;
    private int copies;

    @BeforeAll
    static void plan() throws IOException, WrongInputException, RefusedException {
        open = ShopFolder.planned(books.resolve("open"), ShopFolder.RACK, ShopFolder.JOB);
        settled = open.copy(books.resolve("settled"));
        settled.settle(Disk.REAL);
        assertThat(settled.books()).containsKeys("rack.book.json", "coats.left.json");
    }

    private ShopFolder copy(ShopFolder of) throws IOException {
        return of.copy(folder.resolve("copy" + copies++));
    }

    /** What is done at the desk that the power is cut at. */
    private interface Work {
        void run(ShopFolder shop, Disk disk) throws IOException, WrongInputException, RefusedException;
    }

    private static final Work SETTLE = (shop, disk) -> shop.settle(disk);
    private static final Work SETTLE_AGAIN = (shop, disk) -> {
        try {
            shop.settle(disk);
        } catch (RefusedException e) {
            assertThat(e.reasons()).isEqualTo(List.of("This plan is booked already, on 2026-10-01."));
        }
    };
    private static final Work UNSETTLE = (shop, disk) -> shop.unsettle(disk);

    private static int instants(Work work, ShopFolder shop) throws IOException, WrongInputException, RefusedException {
        ShakyDisk disk = new ShakyDisk(Integer.MAX_VALUE);
        work.run(shop, disk);
        return disk.instants();
    }

    private static ShakyDisk cut(Work work, ShopFolder shop, int at)
            throws IOException, WrongInputException, RefusedException {
        ShakyDisk disk = new ShakyDisk(at);
        try {
            work.run(shop, disk);
        } catch (ShakyDisk.PowerCut e) {
            return disk;
        }
        throw new AssertionError("There was no instant " + at + ".");
    }

    /** Rack and book are each whole, and each the old or the new one. */
    private void eachIsWhole(ShopFolder shop) throws WrongInputException {
        Map<String, String> files = shop.files();
        assertThat(files.get("rack.json"))
                .isIn(open.files().get("rack.json"), settled.files().get("rack.json"));
        RackReader.read(shop.rack());
        if (!files.containsKey("rack.book.json")) return;
        assertThat(files.get("rack.book.json")).isEqualTo(settled.files().get("rack.book.json"));
        BookReader.read(shop.rack().resolveSibling("rack.book.json"));
    }

    /** The next run, whichever it is, finds the old state or the new one. */
    private void theNextRunSeesOldOrNew(ShopFolder shop) throws IOException, WrongInputException, RefusedException {
        eachIsWhole(shop);
        ShopFolder other = copy(shop);
        try {
            shop.settle(Disk.REAL);
        } catch (RefusedException e) {
            assertThat(e.reasons()).isEqualTo(List.of("This plan is booked already, on 2026-10-01."));
        }
        assertThat(shop.books()).isEqualTo(settled.books());
        assertThat(shop.leftovers()).isEmpty();
        try {
            other.unsettle(Disk.REAL);
        } catch (RefusedException e) {
            assertThat(e.reasons()).isEqualTo(List.of("This plan is not booked."));
        }
        assertThat(other.books()).isEqualTo(open.books());
        assertThat(other.leftovers()).isEmpty();
    }

    private void cutEverywhere(Work work, ShopFolder from) throws IOException, WrongInputException, RefusedException {
        int instants = instants(work, copy(from));
        assertThat(instants).isGreaterThan(15);
        for (int at = 0; at < instants; at++) {
            int mayBeLost = cut(work, copy(from), at).unkept();
            for (int lost = 0; lost <= mayBeLost; lost++) {
                ShopFolder shop = copy(from);
                cut(work, shop, at).lose(lost);
                theNextRunSeesOldOrNew(shop);
            }
        }
    }

    @Test
    void a_cut_while_a_plan_is_settled_leaves_the_old_or_the_new_rack()
            throws IOException, WrongInputException, RefusedException {
        cutEverywhere(SETTLE, open);
    }

    @Test
    void a_cut_while_a_plan_is_taken_back_leaves_the_old_or_the_new_rack()
            throws IOException, WrongInputException, RefusedException {
        cutEverywhere(UNSETTLE, settled);
    }

    @Test
    void a_second_cut_while_the_first_is_mended_does_no_more_harm()
            throws IOException, WrongInputException, RefusedException {
        int instants = instants(SETTLE, copy(open));
        for (int at = 0; at < instants; at++) {
            ShopFolder broken = copy(open);
            cut(SETTLE, broken, at);
            int more = instants(SETTLE_AGAIN, copy(broken));
            for (int again = 0; again < more; again++) {
                ShopFolder shop = copy(broken);
                ShakyDisk disk = cut(SETTLE_AGAIN, shop, again);
                disk.lose(disk.unkept());
                theNextRunSeesOldOrNew(shop);
            }
        }
    }

    @Test
    void what_somebody_wrote_by_hand_after_a_cut_is_not_written_over()
            throws IOException, WrongInputException, RefusedException {
        int refused = 0;
        int instants = instants(SETTLE, copy(open));
        for (int at = 0; at < instants; at++) {
            ShopFolder shop = copy(open);
            cut(SETTLE, shop, at);
            String hand = ShopFolder.RACK.replace("R2", "R9");
            Files.writeString(shop.rack(), hand);
            try {
                shop.settle(Disk.REAL);
            } catch (RefusedException e) {
                // it is booked already, or its offcuts are where no hand should have put them back
            } catch (IOException e) {
                refused++;
                assertThat(e)
                        .hasMessageContaining("rack.json was changed by hand")
                        .hasMessageContaining("rack.pending.json");
                assertThat(shop.files()).containsEntry("rack.json", hand);
            }
        }
        assertThat(refused).isPositive();
    }
}
