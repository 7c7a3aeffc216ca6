package ripwright.json.tree;

import java.util.Collection;
import java.util.Locale;

/**
 * The word that a mistyped one was likely meant to be: the one that takes the fewest letters put in, left out, changed or
 * swapped with their neighbor, upper and lower case alike; the first of several. Its first letters alone are one mistake.
 *
 * @see "R. Lowrance and R. A. Wagner, An extension of the string-to-string correction problem, J. ACM 22 (1975) 177-183,
 *     with swapped letters left alone afterwards"
 */
public final class Nearest {
    private static final int LONGEST = 100; // a longer word is nobody's typing mistake

    private static final int FEWEST_FIRST = 3; // letters that shorten a word

    private final String word;
    private final String best;
    private final int distance;

    /** Of {@code known}, which are one at least, as the first of those that are equally near. */
    public Nearest(String word, Collection<String> known) {
        this.word = word;
        String best = "";
        int distance = Integer.MAX_VALUE;
        for (String candidate : known) {
            int here = distance(word, candidate);
            if (here >= distance) continue;
            distance = here;
            best = candidate;
        }
        this.best = best;
        this.distance = distance;
    }

    /** The nearest of the known ones. */
    String best() {
        return best;
    }

    /** Whether it is likely to be meant. */
    public boolean near() {
        return distance <= Math.max(1, Math.max(word.length(), best.length()) / 3);
    }

    /** What a message says about it. */
    public String sentence() {
        return near() ? "Did you mean \"" + best + "\"?" : "The nearest known one is \"" + best + "\".";
    }

    private static int distance(String a, String b) {
        if (a.length() > LONGEST) return Integer.MAX_VALUE - 1;
        String left = a.toLowerCase(Locale.ROOT);
        String right = b.toLowerCase(Locale.ROOT);
        if (left.length() >= FEWEST_FIRST && left.length() < right.length() && right.startsWith(left)) return 1;
        int[][] steps = new int[left.length() + 1][right.length() + 1]; // from the first i letters to the first j
        for (int i = 0; i <= left.length(); i++) {
            for (int j = 0; j <= right.length(); j++) {
                if (i == 0 || j == 0) {
                    steps[i][j] = i + j;
                    continue;
                }
                int changed = left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1;
                steps[i][j] = Math.min(steps[i - 1][j - 1] + changed, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
                boolean swapped = i > 1
                        && j > 1
                        && left.charAt(i - 1) == right.charAt(j - 2)
                        && left.charAt(i - 2) == right.charAt(j - 1);
                if (swapped) steps[i][j] = Math.min(steps[i][j], 1 + steps[i - 2][j - 2]);
            }
        }
        return steps[left.length()][right.length()];
    }
}
