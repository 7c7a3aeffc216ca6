package ripwright.resume;

import java.util.List;
import java.util.stream.Collectors;
import ripwright.job.Problem;

/** Says all in which a report does not agree with its plan. */
public final class WrongReportException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    WrongReportException(List<Problem> problems) {
        super(problems.stream()
                .map(problem -> problem.where() + ": " + problem.what())
                .collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    /** What is wrong, each with its field, as in {@code done[3]} or {@code changes[0].width}. */
    public List<Problem> problems() {
        return problems;
    }
}
