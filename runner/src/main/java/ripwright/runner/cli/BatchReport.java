package ripwright.runner.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import ripwright.json.tree.JsonOut;
import ripwright.json.tree.Mistake;

/** What became of many jobs, for programs; {@code batch.schema.json} says what every field means. */
final class BatchReport {
    private final List<Result> results;
    private final Batch.How how;
    private final Duration took;

    BatchReport(List<Result> results, Batch.How how, Duration took) {
        this.results = results;
        this.how = how;
        this.took = took;
    }

    byte[] bytes() {
        return JsonOut.bytes(json -> {
            json.number("format", 1);
            json.text("by", how.version());
            json.number("exitCode", worst(results).number());
            json.number("seconds", seconds(took));
            json.number("atOnce", how.share().jobs());
            json.number("threadsEach", how.share().threads());
            json.number("jobs", results.size());
            for (ExitCode exit : ExitCode.values()) json.number(camel(exit.word()), count(exit));
            json.number("plannedBefore", (int) results.stream()
                    .filter(result -> result.ending() == Result.Ending.STANDS)
                    .count());
            json.list("results", results, result -> write(result, json));
        });
    }

    /** The exit code of all: the worst of them, in the order complete, short, bad input, fault, interrupted. */
    static ExitCode worst(List<Result> results) {
        return results.stream().map(Result::exit).reduce(ExitCode.COMPLETE, ExitCode::worse);
    }

    private int count(ExitCode exit) {
        return (int) results.stream().filter(result -> result.exit() == exit).count();
    }

    private static String camel(String words) {
        int space = words.indexOf(' ');
        return space < 0
                ? words
                : words.substring(0, space)
                        + Character.toUpperCase(words.charAt(space + 1))
                        + words.substring(space + 2);
    }

    private static BigDecimal seconds(Duration took) {
        return BigDecimal.valueOf(took.toMillis(), 3).setScale(2, RoundingMode.HALF_UP);
    }

    private void write(Result result, JsonOut json) {
        json.text("file", result.file().path().toString());
        outcome(result.exit(), result.figures(), json);
        if (result.ending() == Result.Ending.STANDS) json.flag("plannedBefore", true);
        json.number("seconds", seconds(result.took()));
        if (result.figures().isPresent()) {
            PlanFiles files = new PlanFiles(result.file(), how.out());
            json.text("plan", text(files.plan()));
            json.text("sheet", text(files.sheet()));
        }
        result.reason().ifPresent(reason -> json.text("reason", reason));
        if (!result.mistakes().isEmpty()) json.list("mistakes", result.mistakes(), mistake -> mistake(mistake, json));
    }

    private static String text(Path path) {
        return path.toString().replace('\\', '/');
    }

    /** How a job ended and the figures of its plan. */
    static void outcome(ExitCode exit, Optional<Figures> figures, JsonOut json) {
        figures.ifPresent(known -> json.text("job", known.job()));
        json.text("outcome", exit.word());
        json.number("exitCode", exit.number());
        figures.ifPresent(known -> {
            json.number("parts", known.made());
            json.number("wanted", known.wanted());
            json.number("net", known.net());
            json.number("bound", known.bound());
            json.number("gap", known.gap());
            json.number("consumed", known.consumed());
            json.number("yield", known.yield());
        });
    }

    /** One thing wrong with a file. */
    static void mistake(Mistake mistake, JsonOut json) {
        json.text("file", mistake.file());
        json.text("path", mistake.path());
        mistake.spot().ifPresent(spot -> {
            json.number("line", spot.line());
            json.number("column", spot.column());
        });
        json.text("what", mistake.what());
    }
}
