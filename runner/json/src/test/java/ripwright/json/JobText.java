package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import ripwright.job.Job;
import ripwright.json.tree.WrongInputException;

/** A small job as text, to be altered and read. */
public record JobText(String text) {
    /** In place of {@code "endTrim": 1 }} another board with the same id after it. */
    static final String SECOND_BOARD = """
            "endTrim": 1 },
                { "id": "ash-1", "species": "ash", "thickness": 1, "width": 6, "length": 72, "straightEdges": 2 }""";

    public static final String CABINET = """
            {
              "format": 1,
              "job": "Cabinet",
              "units": "in",
              "saw": { "ripKerf": "1/8", "crosscutKerf": "1/8" },
              "testRip": { "length": 12, "tries": 1 },
              "keep": { "length": 12, "width": 2 },
              "prices": { "ash": 6 },
              "salvage": 0.5,
              "stack": [
                { "id": "ash-1", "species": "ash", "thickness": "3/4", "width": 6, "length": 72, "straightEdges": 2, "endTrim": 1 }
              ],
              "parts": [
                { "name": "door", "count": 2, "length": 24, "width": "2 1/4", "thickness": "3/4", "species": "ash", "face": "show" }
              ]
            }
            """;

    public static JobText cabinet() {
        return new JobText(CABINET);
    }

    /** With {@code now} in the one place that says {@code before}. */
    public JobText with(String before, String now) {
        assertThat(text.split(java.util.regex.Pattern.quote(before), -1))
                .as(before)
                .hasSize(2);
        return new JobText(text.replace(before, now));
    }

    /** With more fields of the board; begins with a comma. */
    public JobText board(String more) {
        return with(", \"endTrim\": 1 }", more + " }");
    }

    /** With more fields of the part; begins with a comma. */
    public JobText part(String more) {
        return with(", \"face\": \"show\" }", ", \"face\": \"show\"" + more + " }");
    }

    public Job job() throws WrongInputException, IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    static Job read(byte[] bytes) throws WrongInputException, IOException {
        return JobReader.read(new ByteArrayInputStream(bytes), "cabinet.job.json", Path.of("nowhere"));
    }

    /** All that a user is told about it. */
    String mistakes() throws IOException {
        return mistakes(text.getBytes(StandardCharsets.UTF_8));
    }

    static String mistakes(byte[] bytes) throws IOException {
        try {
            return "no mistake: " + read(bytes);
        } catch (WrongInputException e) {
            return e.text("nothing was planned");
        }
    }
}
