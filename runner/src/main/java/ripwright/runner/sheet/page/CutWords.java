package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.plan.Blank;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.runner.sheet.drawing.Isolated;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/**
 * Tells crosscuts from the end that is there when they are made: the squared end, the end the last blank left, the far side
 * of a defect. A place on the tape is told only where no such end is there.
 */
final class CutWords {

    private static final String NO_CUT = "no cut: the strip is the blank";

    private final Pieces pieces;
    private final Tape tape;
    private final Length kerf;
    private final Set<String> squared; // ids of strips
    private final Map<String, Integer> making = new HashMap<>(); // piece -> step

    CutWords(Job job, Plan plan, Pieces pieces, Tape tape) {
        this.pieces = pieces;
        this.tape = tape;
        this.kerf = job.saw().crosscutKerf();
        this.squared = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.SQUARE)
                .map(Step::piece)
                .collect(Collectors.toSet());
        plan.steps().forEach(step -> step.makes().forEach(id -> making.putIfAbsent(id, step.n())));
    }

    /** All of a strip's blanks at one stop, in words. */
    String atStop(Step step, List<Pieces.BlankOf> blanks) {
        if (blanks.isEmpty()) return "";
        if (uncut(blanks.get(0))) return NO_CUT;
        List<String> words = new ArrayList<>();
        words.add("from " + end(blanks.get(0)));
        int inRow = 1;
        for (int i = 1; i < blanks.size(); i++) {
            Pieces.BlankOf blank = blanks.get(i);
            Blank before = before(blank).orElseThrow();
            if (before.equals(blanks.get(i - 1).blank()) && touch(before, blank.blank())) {
                inRow++;
                continue;
            }
            words.add(inRow + " at the stop");
            inRow = 1;
            String between = " between the " + ordinal(i) + " and the " + ordinal(i + 1);
            if (!before.equals(blanks.get(i - 1).blank())) words.add(between(blank, between));
            else
                words.add(passed(before, blank)
                        .map(what -> "pass " + what + between)
                        .orElse("cut " + gap(before, blank) + " off" + between));
        }
        words.add(inRow + " at the stop");
        return String.join(", ", words);
    }

    /** What lies between two blanks of one stop: blanks that are made already, or such as are still to be made. */
    private String between(Pieces.BlankOf blank, String between) {
        return laterBefore(blank).isEmpty() ? "go on from " + end(blank) : setAside(blank) + between;
    }

    /** The end that a blank is measured from when its turn comes. */
    String end(Pieces.BlankOf blank) {
        if (uncut(blank)) return NO_CUT;
        Optional<Blank> before = before(blank);
        if (before.isEmpty()) return nearEnd(blank);
        if (laterBefore(blank).isEmpty()) {
            if (touch(before.get(), blank.blank()))
                return "where " + Isolated.name(before.get().id()) + " ended";
            return passed(before.get(), blank)
                    .map(what -> "past " + what)
                    .orElse(gap(before.get(), blank) + " past "
                            + Isolated.name(before.get().id()));
        }
        boolean last = blanks(blank).indexOf(blank.blank()) == blanks(blank).size() - 1;
        if (last && same(end(blank.blank()), section(blank).to())) return "its far end";
        String from = madeBefore(blank)
                .map(made -> "where " + Isolated.name(made.id()) + " ended")
                .orElse(squared.contains(blank.strip().strip().id()) ? "the squared end" : "its marked end");
        return from + ", " + setAside(blank);
    }

    /** The piece between the end that is there and a blank, kept for what is cut from it later. */
    private String setAside(Pieces.BlankOf blank) {
        boolean squaredStart = squared.contains(blank.strip().strip().id());
        Length start = madeBefore(blank)
                .map(made -> end(made).plus(kerf))
                .orElse(
                        squaredStart
                                ? blanks(blank).get(0).from()
                                : section(blank).from());
        Length cut = start.plus(kerf);
        String length = cut.exceeds(blank.blank().from())
                ? ""
                : tape.full(blank.blank().from().minus(cut)) + " ";
        return "set " + length + "aside for "
                + laterBefore(blank).stream()
                        .map(one -> Isolated.name(one.id()))
                        .collect(Collectors.joining(" and "));
    }

    /** The nearest blank before this one that is made by then. */
    private Optional<Blank> madeBefore(Pieces.BlankOf blank) {
        List<Blank> all = blanks(blank);
        for (int i = all.indexOf(blank.blank()) - 1; i >= 0; i--)
            if (turnOf(all.get(i)) <= turnOf(blank.blank())) return Optional.of(all.get(i));
        return Optional.empty();
    }

    /** The blanks right before this one that are made after it. */
    private List<Blank> laterBefore(Pieces.BlankOf blank) {
        List<Blank> all = blanks(blank);
        int here = all.indexOf(blank.blank());
        int start = madeBefore(blank).map(made -> all.indexOf(made) + 1).orElse(0);
        return all.subList(start, Math.max(start, here));
    }

    private String nearEnd(Pieces.BlankOf blank) {
        if (squared.contains(blank.strip().strip().id())) return "the squared end";
        Length off = blank.blank().from().minus(section(blank).from());
        if (same(blank.blank().from(), section(blank).from())) return "its marked end";
        return passed(section(blank).from(), blank)
                .map(what -> "past " + what + " at its marked end")
                .orElse(tape.full(off) + " past its marked end");
    }

    /** What squaring takes off the strip: how much, and what that passes. */
    String offTheEnd(Pieces.StripOf strip) {
        List<Blank> blanks = strip.strip().blanks();
        if (blanks.isEmpty()) return "";
        Pieces.BlankOf first = new Pieces.BlankOf(blanks.get(0), strip);
        Length off = first.blank().from().minus(section(first).from());
        return tape.read(off)
                + passed(section(first).from(), first)
                        .map(what -> ", past " + what)
                        .orElse("");
    }

    /** Whether that blank is its whole strip, so that nothing is cut. */
    boolean uncut(Pieces.BlankOf blank) {
        return same(blank.blank().from(), section(blank).from())
                && same(end(blank.blank()), section(blank).to());
    }

    private int turnOf(Blank blank) {
        return making.getOrDefault(blank.id(), Integer.MAX_VALUE);
    }

    private static Section section(Pieces.BlankOf blank) {
        return blank.strip().section().section();
    }

    private static List<Blank> blanks(Pieces.BlankOf blank) {
        return blank.strip().strip().blanks();
    }

    private static Optional<Blank> before(Pieces.BlankOf blank) {
        int i = blanks(blank).indexOf(blank.blank());
        return i <= 0 ? Optional.empty() : Optional.of(blanks(blank).get(i - 1));
    }

    private static Length end(Blank blank) {
        return blank.from().plus(blank.length());
    }

    private boolean touch(Blank before, Blank blank) {
        return !blank.from().exceeds(end(before).plus(kerf))
                || same(blank.from(), end(before).plus(kerf));
    }

    private static boolean same(Length a, Length b) {
        return OnePlace.are(a.nanometers(), b.nanometers());
    }

    private String gap(Blank before, Pieces.BlankOf blank) {
        return tape.full(blank.blank().from().minus(end(before)).minus(kerf));
    }

    private Optional<String> passed(Blank before, Pieces.BlankOf blank) {
        return passed(end(before), blank);
    }

    /** The defects on the strip between {@code from} and the blank. */
    private Optional<String> passed(Length from, Pieces.BlankOf blank) {
        List<Defect> all = pieces.board(blank.strip().section().board())
                .map(Board::defects)
                .orElse(List.of());
        List<Defect> passed = all.stream()
                .filter(defect ->
                        defect.to().exceeds(from) && blank.blank().from().exceeds(defect.from()))
                .filter(defect -> pieces.across(blank.strip())
                        .filter(across -> defect.left().nanometers() < across.right()
                                && defect.right().nanometers() > across.left())
                        .isPresent())
                .toList();
        if (passed.isEmpty()) return Optional.empty();
        if (passed.size() > 1) return Optional.of(passed.size() + " defects");
        return Optional.of("the " + Isolated.name(passed.get(0).kind()));
    }

    private static String ordinal(int number) {
        int last = number / 10 % 10 == 1 ? 0 : number % 10; // 11th, 12th, 13th
        return number + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
    }
}
