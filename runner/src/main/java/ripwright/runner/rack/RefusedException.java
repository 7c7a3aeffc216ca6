package ripwright.runner.rack;

import java.util.List;

/** Why a plan is not booked, or not taken back; nothing was changed. */
public final class RefusedException extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<String> reasons;

    RefusedException(List<String> reasons) {
        super(String.join(System.lineSeparator(), reasons));
        this.reasons = List.copyOf(reasons);
    }

    RefusedException(String reason) {
        this(List.of(reason));
    }

    /** A sentence or more each. */
    public List<String> reasons() {
        return reasons;
    }
}
