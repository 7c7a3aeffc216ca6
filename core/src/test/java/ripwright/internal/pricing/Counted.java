package ripwright.internal.pricing;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The worth of the best layout of an {@link InchBoard} of which only so many of each blank are wanted: for every choice of
 * blanks the best layout that makes just these, by trying them all.
 */
public final class Counted {
    private static final double NONE = Double.NEGATIVE_INFINITY;

    private final InchBoard board;
    private final int count;
    private final int size; // choices: numbered in radix count + 1
    private final Map<String, double[]> known = new HashMap<>();

    Counted(InchBoard board, int count) {
        this.board = board;
        this.count = count;
        int all = 1;
        for (int i = 0; i < board.blanks().size(); i++) all *= count + 1;
        size = all;
    }

    double best() {
        double best = NONE;
        for (int from = board.near(); from < board.length() - board.far(); from++) {
            double before = from > 0 ? fullWidth(0, from - board.crosscutKerf()) - board.crosscut() : 0;
            for (double worth : sections(1, from)) best = Math.max(best, before + worth);
        }
        return best;
    }

    private double[] nothing(double worth) {
        double[] all = new double[size];
        Arrays.fill(all, NONE);
        all[0] = worth;
        return all;
    }

    private double[] sections(int number, int from) {
        String key = "sections " + number + " " + from;
        double[] made = known.get(key);
        if (made != null) return made;
        made = nothing(NONE);
        int last = Math.min(board.length() - board.far(), from + board.longest());
        for (int to = from + board.shortest(); to <= last; to++)
            take(made, together(section(to - from), behind(number, to)), 0);
        known.put(key, made);
        return made;
    }

    private double[] behind(int number, int to) {
        if (to == board.length()) return nothing(0);
        int next = to + board.crosscutKerf();
        double[] made = nothing(fullWidth(next, board.length()) - board.crosscut());
        for (int from = next; number < 3 && from < board.length() - board.far(); from++) {
            double gap = from > next ? fullWidth(next, from - board.crosscutKerf()) - board.crosscut() : 0;
            take(made, sections(number + 1, from), gap - board.crosscut());
        }
        return made;
    }

    private double[] section(int s) {
        double[] made = nothing(NONE);
        double straightened = board.edgeLoss() > 0 ? board.rip() : 0;
        for (InchBoard.Blank blank : board.blanks())
            take(made, strips(s, board.edgeLoss(), blank.width()), -straightened);
        return made;
    }

    private double[] strips(int s, int offset, int w) {
        if (offset + w > board.width() - board.edgeLoss()) return nothing(NONE);
        String key = "strips " + s + " " + offset + " " + w;
        double[] made = known.get(key);
        if (made != null) return made;
        int next = offset + w + board.ripKerf();
        int beside = board.width() - next;
        boolean kept = s >= board.keepLength() && beside >= board.keepWidth();
        double[] rest = nothing(kept ? beside * s * board.salvage() : 0);
        for (InchBoard.Blank blank : board.blanks())
            if (blank.width() <= w) take(rest, strips(s, next, blank.width()), 0);
        made = together(rest, strip(s, w));
        for (int u = 0; u < size; u++) made[u] -= board.rip();
        known.put(key, made);
        return made;
    }

    private double[] strip(int s, int w) {
        double[] made = nothing(piece(s, w));
        for (int from = 0; from < s; from++) {
            double before = from > 0 ? piece(from - board.crosscutKerf(), w) - board.crosscut() : 0;
            take(made, blanks(s, w, from), before);
        }
        return made;
    }

    private double[] blanks(int s, int w, int from) {
        double[] made = nothing(NONE);
        int one = 1;
        for (InchBoard.Blank blank : board.blanks()) {
            if (blank.width() == w && from + blank.length() <= s) {
                double[] just = nothing(NONE);
                just[one] = blank.price();
                take(made, together(just, behind(s, w, from + blank.length())), 0);
            }
            one *= count + 1;
        }
        return made;
    }

    private double[] behind(int s, int w, int to) {
        if (to == s) return nothing(0);
        int next = to + board.crosscutKerf();
        double[] made = nothing(piece(s - next, w) - board.crosscut());
        for (int from = next; from < s; from++) {
            double gap = from > next ? piece(from - board.crosscutKerf() - next, w) - board.crosscut() : 0;
            take(made, blanks(s, w, from), gap - board.crosscut());
        }
        return made;
    }

    private double piece(int l, int w) {
        return l < board.keepLength() || w < board.keepWidth() ? 0 : l * w * board.salvage();
    }

    private double fullWidth(int from, int to) {
        int counted = Math.min(to, board.length() - board.far()) - Math.max(from, board.near());
        boolean kept = counted >= board.keepLength() && board.width() >= board.keepWidth();
        return kept ? counted * board.width() * board.salvage() : 0;
    }

    private static void take(double[] made, double[] other, double more) {
        for (int u = 0; u < made.length; u++) made[u] = Math.max(made[u], other[u] + more);
    }

    private double[] together(double[] a, double[] b) {
        double[] made = nothing(NONE);
        for (int u = 0; u < size; u++)
            for (int x = 0; x < size; x++)
                if (a[u] > NONE && b[x] > NONE && sum(u, x)) made[u + x] = Math.max(made[u + x], a[u] + b[x]);
        return made;
    }

    /** Whether two choices together are one. */
    private boolean sum(int u, int x) {
        for (int one = 1; one < size; one *= count + 1)
            if (u / one % (count + 1) + x / one % (count + 1) > count) return false;
        return true;
    }
}
