package ripwright.bench;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.testing.RippedJobs;

/** Reads published one-dimensional instances, one JSON object a line, as jobs: see {@link RippedJobs#published}. */
final class InstanceFile {
    private static final BigDecimal SECONDS = BigDecimal.valueOf(3);
    private static final int SPARE = 2; // stock lengths beyond the best known
    private static final Pattern NAME = Pattern.compile("\"name\":\"([^\"]*)\"");
    private static final Pattern STOCKED = Pattern.compile("\\{\"length\":(\\d+),\"count\":null}");
    private static final Pattern ITEM = Pattern.compile("\\{\"length\":(\\d+),\"qty\":(\\d+)}");
    private static final Pattern LENGTH = Pattern.compile("\"length\"");
    private static final Pattern OPTIMUM = Pattern.compile("\"optimum\":(\\d+)");

    private final Path file;

    InstanceFile(Path file) {
        this.file = file;
    }

    /** The row of at most so many of its instances, evenly spread over the file. */
    Row row(int most) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.removeIf(String::isBlank);
        int size = Math.min(most, lines.size());
        String name = String.valueOf(file.getFileName()).replace(".jsonl", "");
        return new Row(name, SECONDS, size, i -> instance(lines.get(i * lines.size() / size)));
    }

    private static Case instance(String line) {
        List<MatchResult> stocked = found(STOCKED, line);
        List<MatchResult> items = found(ITEM, line);
        if (stocked.size() != 1 || items.isEmpty() || found(LENGTH, line).size() != 1 + items.size())
            throw new IllegalArgumentException("No instance with one stock length: " + line);
        long length = Long.parseLong(stocked.get(0).group(1));
        String name = found(NAME, line).get(0).group(1);
        Optional<BigDecimal> known = found(OPTIMUM, line).stream()
                .map(found -> new BigDecimal(found.group(1)))
                .findFirst();
        List<long[]> lengths = items.stream()
                .map(item -> new long[] {Long.parseLong(item.group(1)), Long.parseLong(item.group(2))})
                .toList();
        int most = (int) lengths.stream().mapToLong(item -> item[1]).sum();
        // As many as the hand rule wants, so that it can make everything and the stack does not tell what is best.
        Job plenty = RippedJobs.published(name, length, lengths, most);
        List<Layout> byHand = FirstFitDecreasing.plan(plenty);
        int enough = Math.max(byHand.size(), known.orElse(BigDecimal.ZERO).intValueExact() + SPARE);
        return new Case(RippedJobs.published(name, length, lengths, enough), known.map(best -> best.setScale(2)), 1);
    }

    private static List<MatchResult> found(Pattern pattern, String line) {
        return pattern.matcher(line).results().toList();
    }
}
