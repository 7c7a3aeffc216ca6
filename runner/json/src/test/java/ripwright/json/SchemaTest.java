package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schemas against what is read and written, by a validator that is not ours. */
class SchemaTest {
    private static final Path SAMPLES = Path.of("../../samples");

    private static String text(String name) throws IOException {
        String resource = "/ripwright/" + name + ".schema.json";
        try (InputStream in = Objects.requireNonNull(SchemaTest.class.getResourceAsStream(resource))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<String> complaints(String schema, String json) throws IOException {
        Schema compiled = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text(schema), InputFormat.JSON);
        return compiled.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.walk(SAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".json")
                            && !file.toString().contains("target")
                            && !file.toString().endsWith(".plan.json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sample_keeps_to_its_schema_and_is_read(Path sample) throws IOException, WrongInputException {
        String name = sample.toString();
        String schema = name.endsWith(".job.json") ? "job" : name.endsWith(".report.json") ? "report" : "rack";
        assertThat(complaints(schema, Files.readString(sample))).isEmpty();
        switch (schema) {
            case "job" -> JobReader.read(sample);
            case "report" -> ReportFile.read(sample, Unit.INCH);
            default -> RackReader.read(sample);
        }
    }

    @Test
    void there_are_samples() throws IOException {
        assertThat(samples()).hasSizeGreaterThanOrEqualTo(4);
    }

    static List<Plan> plans() {
        return List.of(Plans.cabinet(), Plans.strange());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void every_written_plan_keeps_to_its_schema(Plan plan) throws IOException {
        assertThat(complaints("plan", new String(PlanWriter.bytes(plan), StandardCharsets.UTF_8)))
                .isEmpty();
    }

    /** What both refuse: a schema that is too wide, or a reader that is, lets one of them through. */
    static List<JobText> wrongJobs() {
        JobText cabinet = JobText.cabinet();
        return List.of(
                cabinet.with("\"width\": 6", "\"widht\": 6"),
                cabinet.with("\"in\"", "\"inches\""),
                cabinet.with("\"format\": 1", "\"format\": 2"),
                cabinet.with("\"length\": 24", "\"length\": -24"),
                cabinet.with("\"length\": 24", "\"length\": 0"),
                cabinet.with("\"length\": 24", "\"length\": \"0\""),
                cabinet.with("\"length\": 24", "\"length\": \"0/8\""),
                cabinet.with("\"length\": 24", "\"length\": \"0 0/8 mm\""),
                cabinet.with("\"length\": 24", "\"length\": true"),
                cabinet.with("\"2 1/4\"", "\"1 9/0\""),
                cabinet.with("\"2 1/4\"", "\"2 1/4 cm\""),
                cabinet.with("\"2 1/4\"", "\"\""),
                cabinet.with("\"2 1/4\"", "\"-2\""),
                cabinet.with("\"ripKerf\": \"1/8\", ", ""),
                cabinet.with("\"count\": 2", "\"count\": 0"),
                cabinet.with("\"count\": 2", "\"count\": 1.5"),
                cabinet.with("\"count\": 2", "\"count\": 10000000"),
                cabinet.with("\"ash-1\"", "\"ash#1\""),
                cabinet.with("\"ash-1\"", "\"\""),
                cabinet.with("\"door\"", "\"  \""),
                cabinet.with("\"door\"", "\"a\\tb\""),
                cabinet.with("\"door\"", "\"" + "x".repeat(301) + "\""),
                cabinet.with("\"straightEdges\": 2", "\"straightEdges\": 3"),
                cabinet.with("\"endTrim\": 1", "\"endTrim\": { \"near\": 1 }"),
                cabinet.with("\"endTrim\": 1", "\"endTrim\": [1, 2]"),
                cabinet.with("0.5", "1.01"),
                cabinet.with("{ \"ash\": 6 }", "{ \"ash\": -6 }"),
                cabinet.with("\"species\": \"ash\", \"face\"", "\"species\": [], \"face\""),
                cabinet.with("\"show\"", "\"both\""),
                cabinet.with("\"tries\": 1", "\"tries\": -1"),
                cabinet.part(", \"fitted\": \"yes\""),
                cabinet.board(", \"defects\": [ {} ]"),
                cabinet.with("\"salvage\"", "\"rack\": 5, \"salvage\""),
                cabinet.with("\"salvage\"", "\"rack\": {}, \"salvage\""),
                cabinet.with("\"salvage\"", "\"rack\": { \"format\": 1, \"offcuts\": [] }, \"salvage\""),
                cabinet.with(
                        "\"salvage\"",
                        "\"rack\": { \"format\": 1, \"units\": \"in\", \"offcuts\": [ { \"id\": \"R1\" } ] }, \"salvage\""),
                cabinet.with("\"salvage\"", "\"limits\": { \"threads\": 0 }, \"salvage\""),
                cabinet.with("\"salvage\"", "\"labor\": { \"perHour\": 30 }, \"salvage\""));
    }

    @ParameterizedTest
    @MethodSource("wrongJobs")
    void what_the_schema_refuses_the_reader_refuses_too(JobText job) throws IOException {
        assertThat(complaints("job", job.text())).isNotEmpty();
        assertThat(job.mistakes()).doesNotContain("no mistake");
    }

    @Test
    void a_job_that_holds_its_rack_keeps_to_the_schema_and_is_written_so_too() throws IOException, WrongInputException {
        JobText held = JobText.cabinet()
                .with("\"salvage\"", "\"rack\": " + RackOfAJobTest.RACK.replace('\n', ' ') + ", \"salvage\"");
        String written = new String(JobWriter.bytes(held.job(), Optional.empty()), StandardCharsets.UTF_8);
        assertThat(complaints("job", held.text())).isEmpty();
        assertThat(complaints("job", written)).isEmpty();
        assertThat(new JobText(written).job()).isEqualTo(held.job());
        assertThat(held.job().rack()).hasSize(1);
    }

    static List<String> wrongReports() {
        String piece = "\"piece\": \"S1\"";
        String knot = "{ \"from\": 1, \"to\": 2, \"left\": 1, \"right\": 2, \"kind\": \"knot\", \"blocks\": \"all\" }";
        return List.of(
                "{ \"job\": \"Bench\", \"done\": [], \"changes\": [] }",
                report("{}").replace("\"job\"", "\"jbo\""),
                report("{}").replace("[1, 2]", "[1.5]"),
                report("{}").replace("[1, 2]", "\"all\""),
                report("{}"),
                report("{ " + piece + " }"),
                report("{ " + piece + ", \"spoiled\": false }"),
                report("{ " + piece + ", \"width\": 0 }"),
                report("{ " + piece + ", \"width\": 2, \"length\": 3 }"),
                report("{ " + piece + ", \"part\": \"leg\", \"width\": 2 }"),
                report("{ " + piece + ", \"defect\": {} }"),
                report("{ \"part\": \"leg\" }"),
                report("{ \"part\": \"leg\", \"spoiled\": true }"),
                report("{ \"part\": \"leg\", \"length\": 3, \"defect\": " + knot + " }"),
                report("{ \"width\": 2 }"));
    }

    private static String report(String change) {
        return "{ \"format\": 1, \"job\": \"Bench\", \"done\": [1, 2], \"changes\": [" + change + "] }";
    }

    @ParameterizedTest
    @MethodSource("wrongReports")
    void what_the_schema_of_reports_refuses_the_reader_refuses_too(String report, @TempDir Path folder)
            throws IOException {
        Path file = Files.writeString(folder.resolve("today.report.json"), report);
        assertThat(complaints("report", report)).isNotEmpty();
        assertThatThrownBy(() -> ReportFile.read(file, Unit.INCH)).isInstanceOf(WrongInputException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"job", "plan", "rack", "report"})
    void every_object_is_closed_and_every_field_is_described(String name) throws IOException {
        List<String> bare = new ArrayList<>();
        collectBare(JsonMapper.shared().readTree(text(name)), "$", bare);
        assertThat(bare).isEmpty();
    }

    private static void collectBare(JsonNode node, String path, List<String> bare) {
        if (node.has("properties")) {
            if (!node.has("additionalProperties")) bare.add(path + " is open");
            node.get("properties").forEachEntry((field, schema) -> {
                if (!schema.has("description")) bare.add(path + "." + field + " has no description");
            });
        }
        if (node.isObject()) node.forEachEntry((field, child) -> collectBare(child, path + "/" + field, bare));
        if (node.isArray()) node.forEach(child -> collectBare(child, path + "/*", bare));
    }
}
