package ripwright.runner.cli;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;

/** How many cuts a plan makes, each saw cut counted once. */
final class CutCount {
    private final Map<String, Board> boards;
    private final Length kerf;
    private final Plan plan;

    CutCount(Job job, Plan plan) {
        this.boards = job.boards().stream().collect(Collectors.toMap(Board::id, Function.identity()));
        this.kerf = job.saw().crosscutKerf();
        this.plan = plan;
    }

    /** Strips, straightened edges, and test blanks once for every setting they prove. */
    int rips() {
        int strips = plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .mapToInt(strip -> strip.setting().isPresent() ? 1 : 0)
                .sum();
        long straightened = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.STRAIGHTEN)
                .count();
        int tests = plan.testBlanks().stream()
                .mapToInt(blank -> blank.proves().size())
                .sum();
        return strips + (int) straightened + tests;
    }

    /** Ends of sections that are not raw, ends of blanks that are not their strip's, and test blanks cut off. */
    int crosscuts() {
        int cuts = 0;
        for (CutBoard board : plan.boards()) {
            cuts += sectionCuts(board);
            for (Section section : board.sections())
                for (Strip strip : section.strips()) cuts += blankCuts(section, strip);
        }
        for (TestBlank blank : plan.testBlanks()) if (isCutOff(blank)) cuts++;
        return cuts;
    }

    private int sectionCuts(CutBoard cut) {
        Board board = boards.get(cut.board());
        if (board == null) return 0;
        List<Section> sections = cut.sections();
        int cuts = 0;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            boolean shared = i > 0 && touches(sections.get(i - 1).to(), section.from());
            if (!one(section.from(), Length.ZERO) && !shared) cuts++;
            if (!one(section.to(), board.length())) cuts++;
        }
        return cuts;
    }

    private int blankCuts(Section section, Strip strip) {
        List<Blank> blanks = strip.blanks();
        int cuts = 0;
        for (int i = 0; i < blanks.size(); i++) {
            Blank blank = blanks.get(i);
            boolean shared = i > 0 && touches(end(blanks.get(i - 1)), blank.from());
            if (!one(blank.from(), section.from()) && !shared) cuts++;
            if (!one(end(blank), section.to())) cuts++;
        }
        return cuts;
    }

    private static Length end(Blank blank) {
        return blank.from().plus(blank.length());
    }

    private boolean touches(Length end, Length start) {
        return one(start, end.plus(kerf));
    }

    private static boolean one(Length place, Length other) {
        return OnePlace.are(place.nanometers(), other.nanometers());
    }

    /** Not when its piece, whole, is just as long: a board opened for test wood, or the wood beside a section's strips. */
    private boolean isCutOff(TestBlank blank) {
        Board board = boards.get(blank.from());
        if (board != null && one(board.length(), blank.length())) return false;
        return plan.boards().stream()
                .flatMap(cut -> cut.sections().stream())
                .filter(section -> section.id().equals(blank.from()))
                .noneMatch(section -> one(section.to().minus(section.from()), blank.length()));
    }
}
