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
        if (uncut(blanks.get(0))) return "no cut: the strip is the blank";
        List<String> words = new ArrayList<>();
        int inRow = 0;
        for (int i = 0; i < blanks.size(); i++) {
            Pieces.BlankOf blank = blanks.get(i);
            Optional<Blank> before = before(blank);
            boolean follows =
                    i > 0 && before.equals(Optional.of(blanks.get(i - 1).blank()));
            if (!follows) {
                if (inRow > 0) words.add(inRow + " at the stop");
                inRow = 0;
                words.add("from " + end(blank));
            } else if (!touch(before.orElseThrow(), blank.blank())) {
                String between = " between the " + ordinal(i) + " and the " + ordinal(i + 1);
                words.add(inRow + " at the stop");
                inRow = 0;
                words.add(passed(before.orElseThrow(), blank)
                        .map(what -> "pass " + what + between)
                        .orElse("cut " + gap(before.orElseThrow(), blank) + " off" + between));
            }
            inRow++;
        }
        words.add(inRow + " at the stop");
        return String.join(", ", words);
    }

    /** The end that a blank is measured from when its turn comes. */
    String end(Pieces.BlankOf blank) {
        if (uncut(blank)) return "no cut: the strip is the blank";
        Optional<Blank> before = before(blank);
        if (before.isEmpty()) return nearEnd(blank);
        if (turnOf(before.get()) <= turnOf(blank.blank())) {
            if (touch(before.get(), blank.blank()))
                return "where " + Isolated.name(before.get().id()) + " ended";
            return passed(before.get(), blank)
                    .map(what -> "past " + what)
                    .orElse(gap(before.get(), blank) + " past "
                            + Isolated.name(before.get().id()));
        }
        boolean last = blanks(blank).indexOf(blank.blank()) == blanks(blank).size() - 1;
        if (last && same(end(blank.blank()), section(blank).to())) return "its far end";
        return tape.read(blank.blank().from().minus(section(blank).from())) + " from its marked end";
    }

    private String nearEnd(Pieces.BlankOf blank) {
        if (squared.contains(blank.strip().strip().id())) return "the squared end";
        Length off = blank.blank().from().minus(section(blank).from());
        if (same(blank.blank().from(), section(blank).from())) return "its marked end";
        return passed(section(blank).from(), blank)
                .map(what -> "past " + what + " at its marked end")
                .orElse(tape.read(off) + " from its marked end");
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
