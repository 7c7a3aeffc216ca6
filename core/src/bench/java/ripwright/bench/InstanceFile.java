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
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.pattern.Layout;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.testing.HandRule;
import ripwright.testing.JobBuilder;

/**
 * Reads published one-dimensional instances, one JSON object a line, as jobs: ripped stock of one width, no kerf. A stock
 * length is a board of 144 in x 1 in x 1 in, which is one board foot and costs 1, so that the cost counts stock lengths.
 */
final class InstanceFile {
    private static final BigDecimal SECONDS = BigDecimal.valueOf(3);
    private static final long STOCK = 144 * 25_400_000L; // nanometers
    private static final Length INCH = Length.inches("1");
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
        if (STOCK % length != 0)
            throw new IllegalArgumentException("144 in do not come to " + length + " lengths of whole nanometers.");
        String name = found(NAME, line).get(0).group(1);
        Optional<BigDecimal> known = found(OPTIMUM, line).stream()
                .map(found -> new BigDecimal(found.group(1)))
                .findFirst();
        int most =
                items.stream().mapToInt(item -> Integer.parseInt(item.group(2))).sum();
        // As many as the hand rule wants, so that it can make everything and the stack does not tell what is best.
        Job plenty = job(name, items, STOCK / length, most);
        List<Layout> byHand = HandRule.plan(plenty);
        int enough = Math.max(byHand.size(), known.orElse(BigDecimal.ZERO).intValueExact() + SPARE);
        return new Case(job(name, items, STOCK / length, enough), known.map(best -> best.setScale(2)), 1);
    }

    private static Job job(String name, List<MatchResult> items, long unit, int copies) {
        List<Part> parts = new ArrayList<>();
        for (MatchResult item : items)
            parts.add(Part.of(
                            "part " + (parts.size() + 1),
                            new Length(Math.multiplyExact(Long.parseLong(item.group(1)), unit)),
                            INCH,
                            INCH)
                    .count(Integer.parseInt(item.group(2)))
                    .build());
        List<Board> boards = new ArrayList<>();
        Board.Builder board = Board.measured("", JobBuilder.MAPLE, INCH, INCH, new Length(STOCK))
                .ripped(true)
                .price(BigDecimal.ONE);
        for (int i = 1; i <= copies; i++) boards.add(board.id("length " + i).build());
        return new JobBuilder(name)
                .saw(Saw.of(Length.ZERO, Length.ZERO))
                .offcuts(new Keep(INCH, INCH), BigDecimal.ZERO)
                .parts(parts)
                .stack(boards)
                .build();
    }

    private static List<MatchResult> found(Pattern pattern, String line) {
        return pattern.matcher(line).results().toList();
    }
}
