package ripwright.job;

import java.util.List;
import java.util.stream.Collectors;

/** Says all that is wrong with a job as a whole: in the message a line for each, in {@link #problems} each with its field. */
public final class WrongJobException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    WrongJobException(List<Problem> problems) {
        super(problems.stream()
                .map(problem -> problem.where() + ": " + problem.what())
                .collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    /** What is wrong: at least one thing. */
    public List<Problem> problems() {
        return problems;
    }
}
