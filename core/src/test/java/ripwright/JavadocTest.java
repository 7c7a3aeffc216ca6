package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What others may call says in its Javadoc what it is and what it throws. The formatter keeps the lines as they are read here. */
class JavadocTest {
    private static final List<Path> SOURCES = List.of(
            Path.of("src", "main", "java"), Path.of("..", "runner", "json", "src", "main", "java")); // seen from core

    private static final Pattern PUBLIC = Pattern.compile("( *)public .*");
    private static final Pattern TYPE = Pattern.compile(" *public [a-z -]*(class|record|interface|enum) .*");
    private static final Pattern THROWN = Pattern.compile("throw new (\\w+)\\(|\\bthrows ([\\w, ]+)[{;]");
    private static final Pattern COMMA = Pattern.compile(", *");
    private static final String NEVER = "UncheckedIOException"; // of what is written to memory

    private final List<String> faults = new ArrayList<>();

    @Test
    void what_is_public_has_javadoc_that_names_what_it_throws() throws IOException {
        int files = 0;
        for (Path source : SOURCES)
            for (Path file : files(source)) {
                List<String> lines = Files.readAllLines(file);
                if (lines.stream().noneMatch(line -> line.startsWith("public "))) continue;
                files++;
                for (int i = 0; i < lines.size(); i++) check(file, lines, i);
            }
        assertThat(files).isGreaterThan(90);
        assertThat(faults).isEmpty();
    }

    private static List<Path> files(Path source) throws IOException {
        try (Stream<Path> all = Files.walk(source)) {
            return all.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.toString().contains("internal"))
                    .sorted()
                    .toList();
        }
    }

    private void check(Path file, List<String> lines, int at) {
        Matcher line = PUBLIC.matcher(lines.get(at));
        if (!line.matches()) return;
        int above = at - 1;
        while (lines.get(above).strip().startsWith("@")) above--;
        if (lines.subList(above + 1, at).stream().anyMatch(annotation -> annotation.contains("@Override"))) return;
        String here = file + ":" + (at + 1);
        if (!lines.get(above).endsWith("*/")) faults.add(here + " has no Javadoc");
        else if (!TYPE.matcher(line.group()).matches())
            for (String thrown : thrown(body(lines, at, line.group(1))))
                if (!comment(lines, above).matches("(?s).*@throws ([\\w.]+\\.)?" + thrown + "\\b.*"))
                    faults.add(here + " does not say that it throws " + thrown);
    }

    /** The lines of a method, to its closing brace; those to its first semicolon where it has no body. */
    private static String body(List<String> lines, int at, String indent) {
        int head = at;
        while (!lines.get(head).matches(".*([;{]|\\{})")) head++;
        int end = head;
        if (lines.get(head).endsWith("{")) while (!lines.get(end).startsWith(indent + "}")) end++;
        return String.join("\n", lines.subList(at, end + 1));
    }

    private static List<String> thrown(String body) {
        List<String> thrown = new ArrayList<>();
        for (Matcher found = THROWN.matcher(body); found.find(); )
            COMMA.splitAsStream(
                            found.group(1) != null
                                    ? found.group(1)
                                    : found.group(2).strip())
                    .filter(name -> !name.equals(NEVER))
                    .forEach(thrown::add);
        return thrown;
    }

    private static String comment(List<String> lines, int end) {
        int begin = end;
        while (!lines.get(begin).strip().startsWith("/**")) begin--;
        return String.join("\n", lines.subList(begin, end + 1));
    }
}
