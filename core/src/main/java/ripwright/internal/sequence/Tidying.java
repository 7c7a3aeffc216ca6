package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.measure.Length;

/**
 * Sets layouts in order at no cost, as a careful shop would: free wood goes beside fitted blanks, blanks of one group side by
 * side, hidden parts into poor wood, and what is left over into one long piece rather than several short ones; the first
 * counts most. Blanks are moved and exchanged between strips of one width that no defect lies on, as long as that betters
 * something; the order of the strips and all that is cut before them stays. At most {@value #MOST_LOOKS} looks.
 */
public final class Tidying {
    private static final int MOST_LOOKS = 400_000;
    private static final int MOST_PASSES = 4;

    private final Job job;
    private final List<Layout> layouts;
    private final Map<Width, List<TidyStrip>> alike = new LinkedHashMap<>();
    private final Map<Integer, List<TidyStrip>> ofBoard = new LinkedHashMap<>();
    private int looks;

    /** For layouts of that job. */
    public Tidying(Job job, List<Layout> layouts) {
        this.job = job;
        this.layouts = layouts;
        for (Layout layout : layouts)
            for (int s = 0; s < layout.sections().size(); s++)
                for (int i = 0; i < layout.sections().get(s).strips().size(); i++)
                    add(new TidyStrip(job, layout, s, i));
        boolean bettered = true;
        for (int pass = 0; bettered && pass < MOST_PASSES; pass++) bettered = pass();
    }

    private record Width(long width, Length thickness) {}

    private void add(TidyStrip strip) {
        ofBoard.computeIfAbsent(strip.place, key -> new ArrayList<>()).add(strip);
        if (strip.movable())
            alike.computeIfAbsent(new Width(strip.width(), strip.thickness()), key -> new ArrayList<>())
                    .add(strip);
    }

    /** The layouts in order, boards as before. */
    public List<Layout> layouts() {
        List<Layout> tidied = new ArrayList<>();
        for (Layout layout : layouts) {
            List<TidyStrip> strips = ofBoard.getOrDefault(layout.board(), List.of());
            List<Layout.Section> sections = new ArrayList<>();
            for (Layout.Section section : layout.sections()) {
                int place = sections.size();
                sections.add(new Layout.Section(
                        section.from(),
                        section.to(),
                        section.referenceEdge(),
                        section.edgeLoss(),
                        strips.stream()
                                .filter(strip -> strip.sectionPlace == place)
                                .map(TidyStrip::strip)
                                .toList()));
            }
            tidied.add(new Layout(layout.board(), sections));
        }
        return tidied;
    }

    private boolean pass() {
        boolean bettered = false;
        for (List<TidyStrip> strips : alike.values())
            for (int a = 0; a < strips.size(); a++)
                for (int b = a + 1; b < strips.size(); b++) bettered |= between(strips.get(a), strips.get(b));
        return bettered;
    }

    private boolean between(TidyStrip a, TidyStrip b) {
        boolean bettered = a.place == b.place && a.sectionPlace == b.sectionPlace && tried(a, b, Tidying::exchangeAll);
        for (int i = -1; i < a.parts().size(); i++)
            for (int j = -1; j < b.parts().size(); j++) {
                if (looks >= MOST_LOOKS) return bettered;
                if (!mayChange(a, i, b, j)) continue;
                int from = i;
                int to = j;
                if (tried(a, b, (one, other) -> exchange(one, from, other, to))) {
                    bettered = true;
                    break;
                }
            }
        return bettered;
    }

    /** Whether blank {@code i} may go to {@code b} and {@code j} to {@code a}; -1 is none. */
    private boolean mayChange(TidyStrip a, int i, TidyStrip b, int j) {
        if (i < 0 && j < 0) return false;
        if ((i < 0 && b.parts().size() == 1) || (j < 0 && a.parts().size() == 1)) return false;
        if (i >= 0 && j >= 0 && a.parts().get(i).equals(b.parts().get(j))) return false;
        return (i < 0 || mayMove(a.parts().get(i), a, b))
                && (j < 0 || mayMove(b.parts().get(j), b, a));
    }

    private boolean mayMove(int part, TidyStrip from, TidyStrip to) {
        boolean bound = job.parts().get(part).together().isPresent() && from.place != to.place;
        return !bound && to.takes(part);
    }

    private interface Change {
        void on(TidyStrip a, TidyStrip b);
    }

    private static void exchangeAll(TidyStrip a, TidyStrip b) {
        List<Integer> parts = new ArrayList<>(a.parts());
        a.parts().clear();
        a.parts().addAll(b.parts());
        b.parts().clear();
        b.parts().addAll(parts);
    }

    private static void exchange(TidyStrip a, int i, TidyStrip b, int j) {
        Integer there = j < 0 ? null : b.parts().remove(j);
        if (i >= 0) b.parts().add(a.parts().remove(i));
        if (there != null) a.parts().add(there);
    }

    /** Makes the change, and takes it back unless it betters something and costs nothing. */
    private boolean tried(TidyStrip a, TidyStrip b, Change change) {
        looks++;
        List<Integer> ofA = List.copyOf(a.parts());
        List<Integer> ofB = List.copyOf(b.parts());
        TidyWorth before = worth(a, b);
        change.on(a, b);
        boolean fits = a.gap() >= 0 && b.gap() >= 0;
        if (fits && worth(a, b).betterThan(before)) return true;
        a.parts().clear();
        a.parts().addAll(ofA);
        b.parts().clear();
        b.parts().addAll(ofB);
        return false;
    }

    private TidyWorth worth(TidyStrip a, TidyStrip b) {
        long apart = apart(a.place) + (a.place == b.place ? 0 : apart(b.place));
        return TidyWorth.of(job, List.of(a, b), apart);
    }

    /** How far blanks of one group lie apart on a board: strips and sections they are spread over. */
    private long apart(int board) {
        Map<String, TreeMap<Integer, int[]>> groups = new HashMap<>();
        for (TidyStrip strip : ofBoard.getOrDefault(board, List.of()))
            for (int part : strip.parts())
                job.parts().get(part).together().ifPresent(group -> {
                    int[] span = groups.computeIfAbsent(group, key -> new TreeMap<>())
                            .computeIfAbsent(strip.sectionPlace, key -> new int[] {strip.stripPlace, 0});
                    span[1] = strip.stripPlace - span[0];
                });
        long apart = 0;
        for (TreeMap<Integer, int[]> sections : groups.values()) {
            apart += 100L * (sections.size() - 1);
            for (int[] span : sections.values()) apart += span[1];
        }
        return apart;
    }
}
