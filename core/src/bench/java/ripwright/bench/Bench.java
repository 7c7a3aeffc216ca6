package ripwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Measures the planner: what its plans cost, how far they can be from the cheapest, and what the hand rule and plain
 * OptaPlanner make of the same jobs. Told by system properties, each of which may be empty:
 *
 * <ul>
 *   <li>{@code bench.rows}: rows of drawn jobs, with commas between, see {@link DrawnRow}; {@code none} for none
 *   <li>{@code bench.folder}: where published one-dimensional instances lie, {@code *.jsonl}
 *   <li>{@code bench.instances}: how many of each file at most
 *   <li>{@code bench.out}: where {@code table.md} and {@code table.svg} go, written again after each row
 *   <li>{@code bench.recuts}: {@code false} where the time of a recut is not wanted
 * </ul>
 */
public final class Bench {
    private static final String ROWS = """
            30 random, 30 constructed, 75 random, 75 constructed, 150 random, 150 constructed, 600 random, 600 constructed,
            2500 random, 2500 constructed, 75 random defects, 75 random crook, 75 random salvage, 75 random labor,
            75 random defects crook salvage labor""";

    private final Path out;
    private final List<Line> lines = new ArrayList<>();
    private String recuts = "";

    private Bench(Path out) {
        this.out = out;
    }

    /** Measures what the system properties ask for. */
    public static void main(String[] none) throws IOException {
        Bench bench = new Bench(Path.of(told("bench.out", "target/bench")));
        if (told("bench.recuts", "true").equals("true")) bench.recuts = "\n" + RecutTimes.text();
        System.out.print(bench.recuts);
        for (Row row : rows()) bench.measure(row);
    }

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        String drawn = told("bench.rows", ROWS);
        if (!drawn.equals("none"))
            for (String row : drawn.replace('\n', ' ').split(",", -1)) rows.add(new DrawnRow(row).row());
        String folder = told("bench.folder", "");
        if (folder.isEmpty()) return rows;
        int most = Integer.parseInt(told("bench.instances", "1000"));
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".jsonl"))
                    .sorted()
                    .toList()) rows.add(new InstanceFile(file).row(most));
        }
        return rows;
    }

    private static String told(String property, String otherwise) {
        String value = System.getProperty(property, "").strip();
        return value.isEmpty() ? otherwise : value;
    }

    private void measure(Row row) throws IOException {
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            Case drawn = row.cases().apply(i);
            Outcome outcome = new Contest(drawn, row.seconds()).outcome();
            outcomes.add(outcome);
            System.out.println(row.name() + " " + (i + 1) + ": " + outcome);
        }
        lines.add(new Line(row, outcomes));
        Files.createDirectories(out);
        Files.writeString(out.resolve("table.md"), machine() + "\n\n" + new Table(lines).text() + recuts);
        Files.writeString(out.resolve("table.svg"), new Picture(lines).text());
    }

    private static String machine() {
        Runtime runtime = Runtime.getRuntime();
        return LocalDate.now(ZoneOffset.UTC) + ", " + runtime.availableProcessors() + " cores, JDK "
                + Runtime.version().feature() + ", heap " + runtime.maxMemory() / 1_000_000 + " MB; medians.";
    }
}
