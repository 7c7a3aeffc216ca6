package ripwright.replay;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;

/** A job with one thing changed. */
final class Jobs {
    private Jobs() {}

    private static Job with(Job job, Saw saw, TestRip testRip, List<Board> stack, List<Board> rack, List<Part> parts) {
        return new Job(
                job.name(),
                job.units(),
                saw,
                testRip,
                job.keep(),
                job.prices(),
                job.salvage(),
                job.labor(),
                stack,
                rack,
                parts,
                job.limits());
    }

    static Job saw(Job job, UnaryOperator<Saw> edit) {
        return with(job, edit.apply(job.saw()), job.testRip(), job.stack(), job.rack(), job.parts());
    }

    static Job testRip(Job job, TestRip testRip) {
        return with(job, job.saw(), testRip, job.stack(), job.rack(), job.parts());
    }

    static Job board(Job job, String id, UnaryOperator<Board.Builder> edit) {
        return with(
                job, job.saw(), job.testRip(), edit(job.stack(), id, edit), edit(job.rack(), id, edit), job.parts());
    }

    private static List<Board> edit(List<Board> boards, String id, UnaryOperator<Board.Builder> edit) {
        return boards.stream()
                .map(board ->
                        board.id().equals(id) ? edit.apply(board.toBuilder()).build() : board)
                .toList();
    }

    static Job addToRack(Job job, Board offcut) {
        List<Board> rack = Stream.concat(job.rack().stream(), Stream.of(offcut)).toList();
        return with(job, job.saw(), job.testRip(), job.stack(), rack, job.parts());
    }

    static Job part(Job job, String name, UnaryOperator<Part> edit) {
        List<Part> parts = job.parts().stream()
                .map(part -> part.name().equals(name) ? edit.apply(part) : part)
                .toList();
        return with(job, job.saw(), job.testRip(), job.stack(), job.rack(), parts);
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
