package ripwright.runner.cli;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import ripwright.json.tree.Mistake;

/**
 * How one job of many ended.
 *
 * @param file the job
 * @param ending how
 * @param figures what its plan comes to, where there is one
 * @param mistakes what is wrong with its files; the first hundred
 * @param reason what else went wrong, in one line
 * @param took how long
 */
record Result(
        JobFile file,
        Ending ending,
        Optional<Figures> figures,
        List<Mistake> mistakes,
        Optional<String> reason,
        Duration took) {
    private static final int MOST_MISTAKES = 100;

    /** How a job of many can end. */
    enum Ending {
        /** It was planned now. */
        PLANNED,
        /** Its plan was there, made from just this. */
        STANDS,
        /** It was planned as far as the search came before it was interrupted. */
        CUT_SHORT,
        /** It was interrupted before its turn. */
        NOT_BEGUN,
        /** Something is wrong with its files or with where to write. */
        WRONG,
        /** This program is wrong. */
        FAULT
    }

    Result {
        mistakes = mistakes.stream().limit(MOST_MISTAKES).toList();
    }

    static Result of(JobFile file, Ending ending, Figures figures, Duration took) {
        return new Result(file, ending, Optional.of(figures), List.of(), Optional.empty(), took);
    }

    static Result notBegun(JobFile file) {
        return new Result(file, Ending.NOT_BEGUN, Optional.empty(), List.of(), Optional.empty(), Duration.ZERO);
    }

    static Result wrong(JobFile file, List<Mistake> mistakes, Duration took) {
        return new Result(file, Ending.WRONG, Optional.empty(), mistakes, Optional.empty(), took);
    }

    static Result without(JobFile file, Ending ending, String reason, Duration took) {
        return new Result(file, ending, Optional.empty(), List.of(), Optional.of(reason), took);
    }

    /** What a run of this job alone would end with. */
    ExitCode exit() {
        return switch (ending) {
            case PLANNED, STANDS -> figures.filter(Figures::complete).isPresent() ? ExitCode.COMPLETE : ExitCode.SHORT;
            case CUT_SHORT, NOT_BEGUN -> ExitCode.INTERRUPTED;
            case WRONG -> ExitCode.BAD_INPUT;
            case FAULT -> ExitCode.FAULT;
        };
    }

    /** How it ended, in a few words. */
    String words() {
        return switch (ending) {
            case PLANNED -> exit().word();
            case STANDS -> exit().word() + ", planned before";
            case CUT_SHORT -> "interrupted, best plan so far";
            case NOT_BEGUN -> "interrupted, not begun";
            case WRONG -> reason.orElseGet(() -> mistakes.size() == 1 ? "1 mistake" : mistakes.size() + " mistakes");
            case FAULT -> "a fault of Ripwright's";
        };
    }
}
