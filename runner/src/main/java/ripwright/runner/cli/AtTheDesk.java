package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.runner.disk.Disk;
import ripwright.runner.rack.Desk;
import ripwright.runner.rack.RefusedException;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

/** What booking a plan and taking it back have in common: how a run ends that cannot do it, and how offcuts are named. */
final class AtTheDesk {
    private final Terminal terminal;
    private final Path plan;
    private final Path rack;
    private final String consequence;

    /** With what is said of a run that fails, as in "nothing was booked". */
    AtTheDesk(Terminal terminal, Path plan, Path rack, String consequence) {
        this.terminal = terminal;
        this.plan = plan;
        this.rack = rack;
        this.consequence = consequence;
    }

    /** What is done there. */
    interface Work {
        void at(Desk desk) throws IOException, WrongInputException, RefusedException;
    }

    ExitCode run(Disk disk, Work work) {
        try {
            work.at(new Desk(rack, disk));
            return ExitCode.COMPLETE;
        } catch (WrongInputException e) {
            terminal.err().print(e.text(consequence));
            boolean ofRack =
                    e.mistakes().stream().anyMatch(mistake -> mistake.file().equals(place(rack)));
            Path last = Desk.lastGood(rack);
            if (ofRack && Files.exists(last))
                terminal.err().println(last + " is the rack as it was before its last change.");
        } catch (RefusedException e) {
            terminal.err().println(plan + ": " + consequence + ".");
            for (String reason : e.reasons()) terminal.err().println("  " + reason);
        } catch (IOException e) {
            terminal.err().println(plan + ": " + consequence + ": " + PlanFiles.reason(e) + ".");
        }
        return ExitCode.BAD_INPUT;
    }

    private static String place(Path file) {
        try {
            return file.toRealPath().toString();
        } catch (IOException e) {
            return file.toString();
        }
    }

    static String names(List<Board> boards) {
        if (boards.isEmpty()) return "nothing";
        return boards.stream().map(AtTheDesk::name).collect(Collectors.joining(", "));
    }

    private static String name(Board board) {
        return board.fromRack() ? Settlement.mark(board) : board.id();
    }

    static String size(Board piece, Unit units) {
        String width =
                units.nearest(piece.width()) + (piece.tapered() ? " to " + units.nearest(piece.widthAtFarEnd()) : "");
        return piece.species() + ", " + units.nearest(piece.thickness()) + " x " + width + " x "
                + units.nearest(piece.length()) + " " + units.symbol();
    }
}
