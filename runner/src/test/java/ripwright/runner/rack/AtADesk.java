package ripwright.runner.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.Rack;
import ripwright.json.RackReader;
import ripwright.json.tree.WrongInputException;
import ripwright.stock.Board;

/** A shop whose coat rack is planned, a fresh one for every test. */
abstract class AtADesk {
    /** A shelf that the offcuts which the coat rack leaves are enough for; it has a board of its own too. */
    static final String SHELF = ShopFolder.JOB
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
    static Path planned;

    @TempDir
    Path folder;

    static ShopFolder fresh;
    ShopFolder shop;

    @BeforeAll
    static void plan() throws IOException, WrongInputException {
        fresh = ShopFolder.planned(planned, ShopFolder.RACK, ShopFolder.JOB);
    }

    @BeforeEach
    void copy() throws IOException {
        shop = fresh.copy(folder.resolve("shop"));
    }

    final Rack rack() throws WrongInputException {
        return RackReader.read(shop.rack());
    }

    final List<String> ids() throws WrongInputException {
        return rack().offcuts().stream().map(Board::id).toList();
    }

    final List<String> refused(ShopFolder.Work work) throws IOException, WrongInputException {
        Map<String, String> before = shop.books();
        List<String> reasons = ShopFolder.refusal(work);
        assertThat(shop.books()).isEqualTo(before);
        return reasons.stream()
                .map(reason -> reason.replace(folder.toString(), "FOLDER"))
                .toList();
    }
}
