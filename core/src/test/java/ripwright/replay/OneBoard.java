package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.internal.replay.ReplayIndex;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.testing.JobBuilder;

/** The layout of one board without steps or figures, for rules and arithmetic that need no more. */
public final class OneBoard {
    private OneBoard() {}

    /**
     * A board {@code length} by {@code width} with {@code count} strips, side by side, as long as it between its trims.
     */
    public static ReplayIndex ripped(Board board, String kerf, int count, String width) {
        List<Strip> strips = new ArrayList<>();
        Length offset = Length.ZERO;
        for (int i = 0; i < count; i++) {
            strips.add(new Strip("S" + i, offset, IN.length(width), Optional.of("R1"), List.of()));
            offset = offset.plus(IN.length(width)).plus(IN.length(kerf));
        }
        return pieces(board, kerf, section(board, strips));
    }

    /** One strip 3 wide off {@code board} with {@code count} blanks, end to end. */
    public static ReplayIndex crosscut(Board board, String kerf, int count, String length) {
        List<Blank> blanks = new ArrayList<>();
        Length from = board.endTrim().near();
        for (int i = 0; i < count; i++) {
            blanks.add(new Blank("B" + i, "part", from, IN.length(length)));
            from = from.plus(IN.length(length)).plus(IN.length(kerf));
        }
        Strip strip = new Strip("S0", Length.ZERO, IN.length("3"), Optional.of("R1"), blanks);
        return pieces(board, kerf, section(board, List.of(strip)));
    }

    private static Section section(Board board, List<Strip> strips) {
        Length to = board.length().minus(board.endTrim().far());
        return new Section("1", board.endTrim().near(), to, Edge.LEFT, Length.ZERO, strips);
    }

    public static ReplayIndex pieces(Board board, String kerf, Section... sections) {
        Job job = new JobBuilder("one board")
                .kerfs(kerf, kerf)
                .offcuts(new Keep(IN.length("12"), IN.length("1")), BigDecimal.ONE)
                .price(JobBuilder.MAPLE, new BigDecimal("6"))
                .stack(List.of(board))
                .parts(JobBuilder.part("part", 1, "22 1/2", "3"))
                .build();
        return new ReplayIndex(
                job,
                new Plan(
                        "one board",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        Make.cost("0", "0", "0", "0", "0", "0", true),
                        Make.tally("0", "0", "0", "0", "0", "0"),
                        List.of(new CutBoard(board.id(), List.of(sections))),
                        List.of(IN.setting("R1", "3")),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of()));
    }

    public static Board maple(String width, String length) {
        return JobBuilder.maple("m", width, length).build();
    }
}
