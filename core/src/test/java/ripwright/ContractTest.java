package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever reads the name of a rule in a message finds it in CONTRACT.md. */
class ContractTest {
    private static final Pattern RULE = Pattern.compile("\"([1-6]\\.[a-zA-Z]+)\"");
    private static final Pattern HEADING = Pattern.compile("(?m)^### ([1-6]\\.[a-zA-Z]+)$");

    @Test
    void every_rule_that_a_message_names_has_a_paragraph_of_its_name() throws IOException {
        Set<String> named = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java", "ripwright"))) {
            for (Path source :
                    sources.filter(path -> path.toString().endsWith(".java")).toList())
                named.addAll(all(RULE, Files.readString(source)));
        }
        assertThat(named).hasSizeGreaterThan(20);
        assertThat(all(HEADING, Files.readString(Path.of("CONTRACT.md")))).containsAll(named);
    }

    private static Set<String> all(Pattern pattern, String text) {
        Set<String> all = new TreeSet<>();
        for (Matcher found = pattern.matcher(text); found.find(); ) all.add(found.group(1));
        return all;
    }
}
