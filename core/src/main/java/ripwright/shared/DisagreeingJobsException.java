package ripwright.shared;

import java.util.List;

/** Says all in which jobs that are to share a stack do not agree, in the message a line for each. */
public final class DisagreeingJobsException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<String> disagreements;

    DisagreeingJobsException(List<String> disagreements) {
        super(String.join(System.lineSeparator(), disagreements));
        this.disagreements = List.copyOf(disagreements);
    }

    /** A sentence for each: at least one. */
    public List<String> disagreements() {
        return disagreements;
    }
}
