package ripwright.replay;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.testing.JobBuilder;

/** A job with one thing changed. */
final class Jobs {
    private Jobs() {}

    static Job saw(Job job, UnaryOperator<Saw> edit) {
        return JobBuilder.like(job).saw(edit.apply(job.saw())).build();
    }

    static Job testRip(Job job, TestRip testRip) {
        return JobBuilder.like(job).testRip(testRip).build();
    }

    static Job board(Job job, String id, UnaryOperator<Board.Builder> edit) {
        return JobBuilder.of(job, edit(job.stack(), id, edit), edit(job.rack(), id, edit))
                .build();
    }

    private static List<Board> edit(List<Board> boards, String id, UnaryOperator<Board.Builder> edit) {
        return boards.stream()
                .map(board ->
                        board.id().equals(id) ? edit.apply(board.toBuilder()).build() : board)
                .toList();
    }

    static Job addToRack(Job job, Board offcut) {
        return JobBuilder.like(job).rack(offcut).build();
    }

    static Job part(Job job, String name, UnaryOperator<Part> edit) {
        List<Part> parts = job.parts().stream()
                .map(part -> part.name().equals(name) ? edit.apply(part) : part)
                .toList();
        return JobBuilder.like(job, job.name(), job.rack(), parts).build();
    }

    static Saw longest(Saw saw, Length longest) {
        return new Saw(
                saw.ripKerf(),
                saw.crosscutKerf(),
                Optional.of(longest),
                saw.shortestRip(),
                saw.narrowestRip(),
                saw.shortestCrosscut());
    }

    static Saw shortest(Saw saw, Length shortest) {
        return new Saw(
                saw.ripKerf(),
                saw.crosscutKerf(),
                saw.longestRip(),
                Optional.of(shortest),
                saw.narrowestRip(),
                saw.shortestCrosscut());
    }

    static Saw narrowest(Saw saw, Length narrowest) {
        return new Saw(
                saw.ripKerf(),
                saw.crosscutKerf(),
                saw.longestRip(),
                saw.shortestRip(),
                Optional.of(narrowest),
                saw.shortestCrosscut());
    }

    static Part count(Part p, int count) {
        return new Part(
                p.name(),
                count,
                p.length(),
                p.width(),
                p.thickness(),
                p.species(),
                p.face(),
                p.sneakUp(),
                p.edgeAllowance(),
                p.fitted(),
                p.together(),
                p.boards());
    }
}
