package ripwright.resume;

import java.util.List;
import java.util.stream.Collectors;
import ripwright.job.Problem;

/** Says in what a report does not agree with its plan: all of it in {@link #problems}, the first of it in the message. */
public final class WrongReportException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private static final int MOST_TOLD = 100;

    private final transient List<Problem> problems;

    WrongReportException(List<Problem> problems) {
        super(text(problems));
        this.problems = List.copyOf(problems);
    }

    private static String text(List<Problem> problems) {
        int more = problems.size() - MOST_TOLD;
        return problems.stream()
                        .limit(MOST_TOLD)
                        .map(problem -> problem.where() + ": " + problem.what())
                        .collect(Collectors.joining(System.lineSeparator()))
                + (more > 0 ? System.lineSeparator() + "and " + more + " more" : "");
    }

    /** What is wrong, each with its field, as in {@code done[3]} or {@code changes[0].width}. */
    public List<Problem> problems() {
        return problems;
    }
}
