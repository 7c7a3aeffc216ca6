package ripwright.replay;

import java.util.List;
import java.util.stream.Collectors;

/** Refuses a plan that does not hold, with all its faults. */
public final class ReplayException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Fault> faults;

    ReplayException(List<Fault> faults) {
        super(faults.stream()
                .map(fault -> "  " + fault.message())
                .collect(Collectors.joining(
                        "\n",
                        "The plan does not hold: " + faults.size() + (faults.size() == 1 ? " fault.\n" : " faults.\n"),
                        "")));
        this.faults = List.copyOf(faults);
    }

    /** What does not hold, in the order of {@link Replay#faults}: at least one thing. */
    public List<Fault> faults() {
        return faults;
    }
}
