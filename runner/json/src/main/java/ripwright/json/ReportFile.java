package ripwright.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ripwright.job.Problem;
import ripwright.json.tree.Fields;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Problems;
import ripwright.json.tree.Value;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.resume.Report;

/** A report as it was read, and where in its file everything stands. For one thread. */
public final class ReportFile {
    private static final Pattern DONE_OR_MADE = Pattern.compile("(done|made)\\[(\\d+)]");
    private static final Pattern CHANGE = Pattern.compile("changes\\[(\\d+)]\\.(\\w+)(?:\\.(\\w+))?");

    private final Problems problems;
    private final Value root;
    private final Report report;
    private final Map<String, List<Value>> lists = new HashMap<>(); // looked up once, however many problems there are

    private ReportFile(Problems problems, Value root, Report report) {
        this.problems = problems;
        this.root = root;
        this.report = report;
    }

    /**
     * The report of that file, its plain numbers in those units. Whether it agrees with a plan is for {@link
     * ripwright.resume.Resume}.
     *
     * @throws WrongInputException with all that is wrong with its form
     */
    public static ReportFile read(Path file, Unit units) throws WrongInputException {
        Problems problems = new Problems();
        return read(new JsonFile(problems).value(file), problems, units);
    }

    /**
     * The same from a stream, which messages call {@code name}; it is read to its end, and the caller closes it.
     *
     * @throws WrongInputException with all that is wrong with its form
     * @throws IOException when the stream throws it
     */
    public static ReportFile read(InputStream in, String name, Unit units) throws WrongInputException, IOException {
        Problems problems = new Problems();
        return read(new JsonFile(problems).value(name, in), problems, units);
    }

    private static ReportFile read(Optional<Value> value, Problems problems, Unit units) throws WrongInputException {
        Optional<Value> root = value.flatMap(FileKind.REPORT::required);
        Optional<Report> report = root.map(new ReportFields(Lengths.written(Optional.of(units)))::read);
        problems.throwIfAny();
        return new ReportFile(problems, root.orElseThrow(), report.orElseThrow());
    }

    /** What it says. */
    public Report report() {
        return report;
    }

    /**
     * Throws those problems, as a {@link ripwright.resume.WrongReportException} has them, each with the place where it stands.
     *
     * @throws WrongInputException with all of them, unless there are none
     */
    public void refuse(List<Problem> found) throws WrongInputException {
        found.forEach(this::note);
        problems.throwIfAny();
    }

    private void note(Problem problem) {
        Matcher listed = DONE_OR_MADE.matcher(problem.where());
        Matcher change = CHANGE.matcher(problem.where());
        if (listed.matches()) item(listed.group(1), listed.group(2)).ifPresent(value -> value.wrong(problem.what()));
        else if (change.matches()) {
            Optional<Fields> fields = item("changes", change.group(1)).flatMap(Value::fields);
            if (change.group(3) == null) fields.ifPresent(those -> those.wrong(change.group(2), problem.what()));
            else
                fields.flatMap(those -> those.value(change.group(2)))
                        .flatMap(Value::fields)
                        .ifPresent(those -> those.wrong(change.group(3), problem.what()));
        } else root.fields().ifPresent(fields -> fields.wrong(problem.where(), problem.what()));
    }

    private Optional<Value> item(String list, String place) {
        List<Value> items = lists.computeIfAbsent(list, this::items);
        int at = Integer.parseInt(place);
        return at < items.size() ? Optional.of(items.get(at)) : Optional.empty();
    }

    private List<Value> items(String list) {
        return root.fields()
                .flatMap(fields -> fields.value(list))
                .flatMap(Value::items)
                .orElse(List.of());
    }
}
