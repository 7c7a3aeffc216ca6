package ripwright.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** Writes job files with the saws, rules and prices of a job. */
final class JobOut {
    private final Job job;
    private final JsonOut json;
    private final LengthOut length;

    JobOut(Job job, JsonOut json) {
        this.job = job;
        this.json = json;
        this.length = new LengthOut(json, job.units());
    }

    /** Under that name, with those boards, the rack of that path or else the job's own, and those parts. */
    void write(String name, List<Board> stack, Optional<String> rack, List<Part> parts) {
        json.number("format", Format.NUMBER);
        json.text("job", name);
        json.text("units", job.units().symbol());
        json.object("saw", () -> write(job.saw()));
        json.object("testRip", () -> {
            length.write("length", job.testRip().length());
            json.number("tries", job.testRip().tries());
        });
        json.object("keep", () -> {
            length.write("length", job.keep().length());
            length.write("width", job.keep().width());
        });
        if (job.breakdown().leavesOver())
            json.object("breakdown", () -> length.write("over", job.breakdown().over()));
        json.object("prices", this::prices);
        json.number("salvage", job.salvage());
        job.labor().ifPresent(labor -> json.object("labor", () -> write(labor)));
        StockOut stock = new StockOut(json, job.units());
        json.list("stack", alike(stack), boards -> stock.board(boards.first(), boards.count()));
        rack.ifPresentOrElse(path -> json.text("rack", path), this::rack);
        PartOut part = new PartOut(json, length);
        json.list("parts", parts, part::write);
        if (!job.limits().equals(Limits.NONE)) json.object("limits", () -> write(job.limits()));
    }

    /** One without a file of its own is held by the job. */
    private void rack() {
        if (job.rack().isEmpty()) return;
        json.object("rack", () -> RackWriter.write(new Rack(job.units(), job.rack()), json));
    }

    private void write(Saw saw) {
        length.write("ripKerf", saw.ripKerf());
        length.write("crosscutKerf", saw.crosscutKerf());
        limit("longestRip", saw.longestRip());
        limit("shortestRip", saw.shortestRip());
        limit("narrowestRip", saw.narrowestRip());
        limit("shortestCrosscut", saw.shortestCrosscut());
    }

    private void limit(String name, Optional<Length> limit) {
        limit.ifPresent(length -> this.length.write(name, length));
    }

    private void prices() {
        List<Map.Entry<Species, BigDecimal>> prices =
                new ArrayList<>(job.prices().entrySet());
        prices.sort(Comparator.comparing(price -> price.getKey().name()));
        for (Map.Entry<Species, BigDecimal> price : prices)
            json.number(price.getKey().name(), price.getValue());
    }

    private void write(Labor labor) {
        json.number("perHour", labor.perHour());
        json.number("settingMinutes", labor.settingMinutes());
        json.number("ripMinutes", labor.ripMinutes());
        json.number("crosscutMinutes", labor.crosscutMinutes());
    }

    private void write(Limits limits) {
        limits.seconds().ifPresent(seconds -> json.number("seconds", seconds));
        limits.seed().ifPresent(seed -> json.number("seed", BigDecimal.valueOf(seed)));
        limits.threads().ifPresent(threads -> json.number("threads", threads));
    }

    /** Boards of one entry, as many as are left of it. */
    private record Alike(Board first, int count) {}

    /** The copies of an entry, {@code id#1} and so on, are measured alike: how many are left is all that matters. */
    private static List<Alike> alike(List<Board> left) {
        Map<Board, Integer> counts = left.stream()
                .map(JobOut::unnumbered)
                .collect(Collectors.toMap(board -> board, board -> 1, Integer::sum, LinkedHashMap::new));
        List<Alike> alike = new ArrayList<>();
        counts.forEach((board, count) -> alike.add(new Alike(board, count)));
        return alike;
    }

    private static Board unnumbered(Board board) {
        int number = board.id().indexOf('#');
        return number < 0
                ? board
                : board.toBuilder().id(board.id().substring(0, number)).build();
    }
}
