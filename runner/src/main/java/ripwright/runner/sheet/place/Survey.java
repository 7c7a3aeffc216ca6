package ripwright.runner.sheet.place;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.stock.Board;

/** The door of this package: maps every consumed board of a plan. */
public final class Survey {
    private final List<BoardMap> maps;

    /** Maps the boards of {@code plan}, which answers {@code job}; boards the job does not know are left out. */
    public Survey(Job job, Plan plan) {
        PlanIndex index = new PlanIndex(plan);
        Map<String, Board> boards = job.boards().stream().collect(toMap(Board::id, Function.identity()));
        maps = plan.boards().stream()
                .flatMap(cut -> Optional.ofNullable(boards.get(cut.board())).stream()
                        .flatMap(board -> Stream.of(new BoardSurvey(board, cut, job.saw(), index).map())))
                .toList();
    }

    /** The boards, in the order of the plan. */
    public List<BoardMap> maps() {
        return maps;
    }
}
