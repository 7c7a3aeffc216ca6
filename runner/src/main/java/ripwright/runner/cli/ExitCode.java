package ripwright.runner.cli;

/** How a run ends, the better first. */
enum ExitCode {
    /** Every part is made. */
    COMPLETE(0, "complete"),
    /** The stack is short of some. */
    SHORT(1, "short"),
    /** The input, or where to write, is wrong. */
    BAD_INPUT(2, "bad input"),
    /** This program is wrong. */
    FAULT(3, "fault"),
    /** Stopped by the user. */
    INTERRUPTED(130, "interrupted");

    private final int number;
    private final String word;

    ExitCode(int number, String word) {
        this.number = number;
        this.word = word;
    }

    int number() {
        return number;
    }

    /** As a report has it. */
    String word() {
        return word;
    }

    ExitCode worse(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
