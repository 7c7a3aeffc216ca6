package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.json.tree.WrongInputException;

/** Which files a job may name as its rack, and what is told of those that are none; the folder is called FOLDER. */
class RackOfAJobTest {
    static final String RACK = """
            { "format": 1, "units": "mm", "offcuts": [
              { "id": "R1", "species": "ash", "thickness": 20, "width": 60, "length": 400, "straightEdges": 2 } ] }
            """;

    @TempDir
    private Path folder;

    private Path home;

    /** The shop's folder, a rack in it, one below it and one beside it. */
    @BeforeEach
    void racks() throws IOException {
        home = Files.createDirectories(folder.resolve("home"));
        Files.createDirectories(home.resolve("below"));
        Files.createDirectories(folder.resolve("beside"));
        for (String rack : new String[] {"home/rack.json", "home/below/rack.json", "beside/rack.json", "rack.json"})
            Files.writeString(folder.resolve(rack), RACK);
    }

    private static String job(String rack) {
        return JobText.CABINET.replace("\"stack\"", "\"rack\": " + rack + ", \"stack\"");
    }

    private static String quoted(String path) {
        return "\"" + path + "\"";
    }

    /** What is told of a job with that rack that came as a line; its caller keeps it to the home folder. */
    private String line(String rack) throws IOException {
        byte[] bytes = job(rack).replace("\n", " ").getBytes(StandardCharsets.UTF_8);
        try {
            return JobReader.read(new ByteArrayInputStream(bytes), "line 1", home)
                            .rack()
                            .size() + " offcuts";
        } catch (WrongInputException e) {
            return told(e).replaceAll("(?m)^ +(1:\\d+)? *\\|.*\n", "");
        }
    }

    /** The same of a file in the home folder. */
    private String file(String rack) throws IOException {
        Path file = Files.writeString(home.resolve("cabinet.job.json"), job(rack));
        try {
            return JobReader.read(file).rack().size() + " offcuts";
        } catch (WrongInputException e) {
            return told(e);
        }
    }

    private String told(WrongInputException e) {
        return e.text("nothing was planned").replace(folder.toString(), "FOLDER");
    }

    private static String outside(String path) {
        return "line 1: 1 mistake, nothing was planned.\n  $.rack   \"" + path
                + "\" leads out of the working folder. A job that comes as a line may have its rack in there or in a folder"
                + " below, or hold it itself.\n";
    }

    @ParameterizedTest
    @ValueSource(strings = {"rack.json", "below/rack.json", "./below/./rack.json"})
    void a_line_may_have_its_rack_in_the_folder_and_below(String path) throws IOException {
        assertThat(line(quoted(path))).isEqualTo("1 offcuts");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../rack.json",
                "../nothing",
                "..",
                "below/../rack.json",
                "below/../../rack.json",
                "/etc/passwd",
                "/nothing",
                "/"
            })
    void a_line_may_not_lead_out_and_is_not_told_what_is_there(String path) throws IOException {
        assertThat(line(quoted(path))).isEqualTo(outside(path));
    }

    @Test
    void a_line_may_not_even_name_its_own_folder_from_the_root() throws IOException {
        assertThat(line(quoted(home + "/rack.json"))).isEqualTo(outside("FOLDER/home/rack.json"));
    }

    @Test
    void links_are_followed_and_must_still_be_inside() throws IOException {
        Files.createSymbolicLink(home.resolve("within"), home.resolve("below"));
        Files.createSymbolicLink(home.resolve("out"), folder.resolve("beside"));
        Files.createSymbolicLink(home.resolve("out.json"), folder.resolve("beside/rack.json"));
        Files.createSymbolicLink(home.resolve("dangling"), folder.resolve("nothing"));
        Files.createSymbolicLink(home.resolve("round"), home.resolve("round"));
        assertThat(line(quoted("within/rack.json"))).isEqualTo("1 offcuts");
        for (String path :
                new String[] {"out/rack.json", "out/nothing", "out.json", "dangling", "dangling/rack.json", "round"})
            assertThat(line(quoted(path))).isEqualTo(outside(path));
    }

    @Test
    void a_folder_that_is_itself_reached_by_a_link_is_one_like_any_other() throws IOException {
        home = Files.createSymbolicLink(folder.resolve("link"), home);
        assertThat(line(quoted("below/rack.json"))).isEqualTo("1 offcuts");
        assertThat(line(quoted("../rack.json"))).isEqualTo(outside("../rack.json"));
    }

    @Test
    void a_line_that_names_nothing_in_the_folder_is_told_so() throws IOException {
        assertThat(line(quoted("shelf.json"))).isEqualTo("""
                line 1: 1 mistake, nothing was planned.
                  $.rack   "shelf.json" leads to FOLDER/home/shelf.json: there is no such file.
                """);
    }

    @Test
    void a_file_may_have_its_rack_anywhere() throws IOException {
        Files.createSymbolicLink(home.resolve("out"), folder.resolve("beside"));
        for (String path : new String[] {"rack.json", "../rack.json", "out/rack.json", folder + "/beside/rack.json"})
            assertThat(file(quoted(path))).isEqualTo("1 offcuts");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "secret:x:0:0:secret:/secret:/bin/secret\n",
                "{ \"secret\": \"secret\" }",
                "{ \"format\": 1, \"secret\": secret }",
                "{ \"secret\": 1, \"secret\": 2, ",
                "[ \"format\", \"units\", \"secret\" ]",
                "\"secret\" \"format\" \"units\"",
                "secret \u0000 secret",
                "\uFEFFsecret",
            })
    void of_a_file_that_is_none_of_ours_no_word_is_told(String text) throws IOException {
        Files.writeString(home.resolve("rack.json"), text);
        assertThat(file("\"rack.json\"")).isEqualTo("""
                FOLDER/home/rack.json: 1 mistake, nothing was planned.
                  this is no file of Ripwright's: one is a JSON object, starting with {, and holds "format" and "job" or "units".
                """);
        assertThat(line("\"rack.json\"")).doesNotContain("secret").isEqualTo(file("\"rack.json\""));
    }

    @Test
    void nor_is_it_when_its_letters_are_no_utf_8() throws IOException {
        Files.write(home.resolve("rack.json"), "secret \u00fc".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(file("\"rack.json\""))
                .contains("this is no file of Ripwright's")
                .doesNotContain("secret");
    }

    @Test
    void a_mistake_in_a_rack_of_ours_is_told_with_its_line() throws IOException {
        Files.writeString(home.resolve("rack.json"), RACK.replace("400,", "400"));
        assertThat(file("\"rack.json\""))
                .contains("found \" where a comma or } is due.")
                .contains("    2:79 | ");
    }

    @Test
    void a_job_or_a_plan_given_as_a_rack_is_told_by_its_kind_alone() throws IOException {
        Files.writeString(home.resolve("rack.json"), JobText.CABINET);
        assertThat(file("\"rack.json\"")).isEqualTo("""
                FOLDER/home/rack.json: 1 mistake, nothing was planned.
                  this is a job; a rack is due here.
                """);
    }

    @Test
    void a_job_may_hold_its_rack_and_its_mistakes_are_told_where_they_stand() throws IOException {
        assertThat(line(RACK)).isEqualTo("1 offcuts");
        assertThat(file(RACK)).isEqualTo("1 offcuts");
        assertThat(line(RACK.replace("\"R1\"", "\"ash-1\"")))
                .contains("$.rack.offcuts[0].id   \"ash-1\" is the id at $.stack[0].id too; ids must differ.");
        assertThat(line(RACK.replace("\"mm\"", "\"cm\"")))
                .contains("$.rack.units   \"cm\"; it must be \"in\" or \"mm\".");
        assertThat(line("5")).contains("$.rack   5; it must be the path of a rack file, or a rack itself.");
    }
}
