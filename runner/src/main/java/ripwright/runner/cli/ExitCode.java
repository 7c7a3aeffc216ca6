package ripwright.runner.cli;

/** How a run ends, the better first. */
enum ExitCode {
    /** Every part is made. */
    COMPLETE(0),
    /** The stack is short of some. */
    SHORT(1),
    /** The input, or where to write, is wrong. */
    BAD_INPUT(2),
    /** This program is wrong. */
    FAULT(3),
    /** Stopped by the user. */
    INTERRUPTED(130);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    int number() {
        return number;
    }

    ExitCode worse(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
