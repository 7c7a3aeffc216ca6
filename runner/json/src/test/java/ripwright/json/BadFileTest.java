package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.tree.TextLimit;
import ripwright.json.tree.WrongInputException;

/** What a user is told about a file that cannot be read as a job: the whole text, the folder called FOLDER. */
class BadFileTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("cabinet.job.json");
    }

    private String mistakes() {
        try {
            return "no mistake: " + JobReader.read(file);
        } catch (WrongInputException e) {
            return e.text("nothing was planned").replace(folder.toString(), "FOLDER");
        }
    }

    private String mistakes(String text) throws IOException {
        Files.writeString(file, text);
        return mistakes();
    }

    @Test
    void no_file() {
        assertThat(mistakes()).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  there is no such file.
                """);
    }

    @Test
    void a_directory() throws IOException {
        Files.createDirectory(file);
        assertThat(mistakes()).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  this is a directory; it must be a file.
                """);
    }

    @Test
    void an_empty_file() throws IOException {
        assertThat(mistakes("")).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  the file is empty; it must hold one JSON object.
                """);
    }

    @Test
    void a_file_of_200_megabytes_is_refused_without_reading_it() throws IOException {
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(200L << 20);
        }
        assertThat(mistakes()).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  %s
                """.formatted(TextLimit.ofThisHeap().over("the file")));
    }

    @Test
    void a_file_cut_short_anywhere_is_one_mistake() throws IOException {
        for (int length = 1; length < JobText.CABINET.length() - 2; length++) {
            String told = new JobText(JobText.CABINET.substring(0, length)).mistakes();
            assertThat(told)
                    .as(JobText.CABINET.substring(0, length))
                    .contains("1 mistake,")
                    .contains("   the text ends here, in the middle; the file seems cut short.\n");
        }
    }

    @Test
    void a_file_cut_short_is_told_where_it_ends() throws IOException {
        int at = JobText.CABINET.indexOf("\"width\": 6") + 5;
        assertThat(mistakes(JobText.CABINET.substring(0, at))).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  $.stack[0].thickness   the text ends here, in the middle; the file seems cut short.
                    11:65 | { "id": "ash-1", "species": "ash", "thickness": "3/4", "widt
                          |                                                             ^
                """);
    }

    @Test
    void something_after_the_value() throws IOException {
        assertThat(mistakes(JobText.CABINET + "{}")).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  $   something follows the end of the value; a file holds one value and nothing after it.
                    17:1 | {}
                         | ^
                """);
    }

    @Test
    void not_a_number() throws IOException {
        assertThat(mistakes(JobText.CABINET.replace("0.5", "NaN"))).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  $.salvage   NaN is not a number; write one in plain digits.
                    9:14 | "salvage": NaN,
                         |            ^
                """);
    }

    @Test
    void a_fraction_without_quotes() throws IOException {
        assertThat(mistakes(JobText.CABINET.replace("\"2 1/4\"", "2 1/4"))).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  $.parts[0].width   found 1 where a comma or } is due. A length with a fraction or a unit goes in double quotes, as in "2 3/8" or "38 mm".
                    14:60 | me": "door", "count": 2, "length": 24, "width": 2 1/4, "thickness": "3/4", "species": "ash", "face":
                          |                                                   ^
                """);
    }

    @Test
    void nested_a_hundred_thousand_deep() throws IOException {
        assertThat(new JobText("{\"a\": " + "[".repeat(100_000)).mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.a[0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0]   nested over 32 deep; no job or plan is.
                    1:39 | {"a": [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[
                         |                                       ^
                """);
    }

    @Test
    void five_million_values() throws IOException {
        assertThat(new JobText("[" + "0,".repeat(5_000_000) + "0]").mistakes())
                .startsWith("cabinet.job.json: 1 mistake, nothing was planned.\n")
                .contains(" values in one file");
    }

    @Test
    void two_hundred_thousand_fields() throws IOException {
        StringBuilder fields = new StringBuilder();
        for (int i = 0; i < 200_000; i++) fields.append(", \"f").append(i).append("\": 0");
        assertThat(mistakes(JobText.CABINET.replace(", \"face\"", fields + ", \"face\"")))
                .startsWith("FOLDER/cabinet.job.json: 1 mistake, nothing was planned.\n")
                .contains("$.parts[0].f")
                .contains("over 100,000 fields in one object; no job or plan has so many.\n");
    }

    @Test
    void a_million_letters_where_a_length_is_due_are_not_told_again() throws IOException {
        assertThat(mistakes(JobText.CABINET.replace("\"2 1/4\"", "\"" + "2 ".repeat(500_000) + "\"")))
                .startsWith("""
                        FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                          $.parts[0].width   "2 2 2 2 2 2 2 2 2 2 2 2 2 2 2 2 2 2 2 2 ...2 2 2 2 2 "; it must be a length, such as 23.5 or "2 3/8".
                        """);
    }

    @Test
    void bytes_that_are_no_utf_8() throws IOException {
        Files.write(file, JobText.CABINET.replace("door", "T\u00fcr").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(mistakes()).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  $   byte FC is not UTF-8 here; save the file as UTF-8.
                    14:17 | { "name": "T
                          |             ^
                """);
    }

    @Test
    void utf_16() throws IOException {
        Files.write(file, JobText.CABINET.getBytes(StandardCharsets.UTF_16));
        assertThat(mistakes()).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  the file is UTF-16; save it as UTF-8.
                """);
    }

    @Test
    void a_list_in_place_of_an_object() throws IOException {
        assertThat(new JobText("[]").mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $   a list; it must be an object, starting with {.
                    1:1 | []
                        | ^
                """);
    }

    @Test
    void a_file_of_somebody_else_is_not_told_again() throws IOException {
        assertThat(mistakes("root:x:0:0:root:/root:/bin/bash\n")).isEqualTo("""
                FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                  this is no file of Ripwright's: one is a JSON object, starting with {, and holds "format" and "job" or "units".
                """);
    }

    @Test
    void a_rack_that_is_not_there() throws IOException {
        assertThat(mistakes(JobText.CABINET.replace("\"stack\"", "\"rack\": \"shelf/rack.json\", \"stack\"")))
                .isEqualTo("""
                        FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                          $.rack   "shelf/rack.json" leads to FOLDER/shelf/rack.json: there is no such file.
                            10:11 | "rack": "shelf/rack.json", "stack": [
                                  |         ^
                        """);
    }

    @Test
    void mistakes_in_the_rack_come_with_those_in_the_job() throws IOException {
        Files.writeString(folder.resolve("rack.json"), """
                {
                  "format": 1,
                  "units": "mm",
                  "offcuts": [
                    { "id": "ash-1", "species": "ash", "thickness": 20, "width": 60, "length": 400, "straightEdges": 2, "since": 2026 },
                    { "id": "R2", "count": 2, "species": "ash", "thickness": 20, "width": 60, "length": 400, "straightEdges": 2,
                      "defects": [ { "from": 0, "to": 401, "left": 0, "right": 60, "kind": "check", "blocks": "all" } ] }
                  ]
                }
                """);
        assertThat(mistakes(JobText.CABINET
                        .replace("\"stack\"", "\"rack\": \"rack.json\", \"stack\"")
                        .replace("\"salvage\": 0.5", "\"salvage\": 1.5")))
                .isEqualTo("""
                        FOLDER/cabinet.job.json: 1 mistake, nothing was planned.
                          $.salvage   1.5; it must be a share from 0 to 1.
                            9:14 | "salvage": 1.5,
                                 |            ^
                        FOLDER/rack.json: 4 mistakes.
                          $.offcuts[0].id              "ash-1" is the id at $.stack[0].id in FOLDER/cabinet.job.json too; ids must differ.
                            5:13 | { "id": "ash-1", "species": "ash", "thickness": 20, "width": 60, "length": 400, "straightEdges":
                                 |         ^
                          $.offcuts[0].since           2026; it must be text of 1 to 300 characters.
                            5:114 | : 60, "length": 400, "straightEdges": 2, "since": 2026 },
                                  |                                                   ^
                          $.offcuts[1].count           no such field. The nearest known one is "crook".
                            6:19 | { "id": "R2", "count": 2, "species": "ash", "thickness": 20, "width": 60, "length": 400, "straig
                                 |               ^
                          $.offcuts[1].defects[0].to   401 mm is beyond the board's length of 400 mm.
                            7:39 | "defects": [ { "from": 0, "to": 401, "left": 0, "right": 60, "kind": "check", "blocks": "all"
                                 |                                 ^
                        """);
    }

    @Test
    void mistakes_in_the_rack_alone_keep_the_job_from_being_planned() throws IOException {
        Files.writeString(folder.resolve("rack.json"), "{ \"format\": 1, \"units\": \"in\" }");
        assertThat(mistakes(JobText.CABINET.replace("\"stack\"", "\"rack\": \"rack.json\", \"stack\"")))
                .isEqualTo("""
                        FOLDER/rack.json: 1 mistake, nothing was planned.
                          $.offcuts   missing. It must be a list.
                            1:1 | { "format": 1, "units": "in" }
                                | ^
                        """);
    }
}
