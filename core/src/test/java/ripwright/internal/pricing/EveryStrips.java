package ripwright.internal.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.testing.JobBuilder;

/**
 * Blanks of one width with prices, and a board at 1 a square inch that has room for a few strips of them; and what so many
 * strips are worth, by laying every choice of blanks into every one of them. The slow twin of {@link EnumeratedStrips}.
 */
record EveryStrips(
        List<Blank> blanks,
        int width,
        int strips,
        int length,
        int kerf,
        int keepLength,
        int keepWidth,
        double salvage,
        double crosscut) {
    /** A blank, how many are wanted, what one is worth and how many of them there may be at that price. */
    record Blank(int length, int wanted, double price, int most) {
        int allowed() {
            return Math.min(wanted, most);
        }
    }

    static EveryStrips random(SplittableRandom random, int size, boolean money) {
        List<Blank> blanks = new ArrayList<>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            int length = 1 + random.nextInt(5);
            if (blanks.stream().noneMatch(other -> other.length == length))
                blanks.add(
                        new Blank(length, 1 + random.nextInt(3), random.nextInt(8 * length) / 4.0, random.nextInt(4)));
        }
        return new EveryStrips(
                blanks,
                1 + random.nextInt(3),
                2 + random.nextInt(2),
                3 + random.nextInt(4 + size / 4),
                random.nextInt(2),
                1 + random.nextInt(4),
                1 + random.nextInt(3),
                money ? random.nextInt(5) / 4.0 : 0,
                money ? random.nextInt(4) / 4.0 : 0);
    }

    Job job() {
        Part.Builder[] bill = blanks.stream()
                .map(blank -> JobBuilder.part("part " + blank.length, blank.wanted, text(blank.length), text(width)))
                .toArray(Part.Builder[]::new);
        return new JobBuilder("strips")
                .stack(JobBuilder.maple("board", text(strips * width), text(length)))
                .parts(bill)
                .kerfs("0", text(kerf))
                .offcuts(
                        new Keep(Length.inches(text(keepLength)), Length.inches(text(keepWidth))),
                        BigDecimal.valueOf(salvage))
                .price(JobBuilder.MAPLE, BigDecimal.valueOf(144))
                .labor(new Labor(
                        BigDecimal.valueOf(60), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.valueOf(crosscut)))
                .build();
    }

    private static String text(int inches) {
        return Integer.toString(inches);
    }

    /** What so many strips of a section are worth at best, no blank in two of them. */
    double best(int count, int section) {
        int[] left = blanks.stream().mapToInt(Blank::allowed).toArray();
        return best(count, section, left, new double[1 << 8]);
    }

    private double best(int count, int section, int[] left, double[] known) {
        if (count == 0) return 0;
        int key = count;
        for (int n : left) key = 4 * key + n;
        if (known[key] != 0) return known[key] - 1; // 0: not known yet
        double best = Double.NEGATIVE_INFINITY;
        for (int[] strip : choices(left)) {
            if (used(strip) > section + kerf) continue;
            int[] rest = left.clone();
            for (int i = 0; i < rest.length; i++) rest[i] -= strip[i];
            best = Math.max(best, worth(strip, section) + best(count - 1, section, rest, known));
        }
        known[key] = best + 1;
        return best;
    }

    private static List<int[]> choices(int[] left) {
        List<int[]> all = new ArrayList<>(List.of(new int[left.length]));
        for (int i = 0; i < left.length; i++)
            for (int[] choice : List.copyOf(all))
                for (int n = 1; n <= left[i]; n++) {
                    int[] more = choice.clone();
                    more[i] = n;
                    all.add(more);
                }
        return all;
    }

    private int used(int[] strip) {
        int used = 0;
        for (int i = 0; i < strip.length; i++) used += strip[i] * (blanks.get(i).length + kerf);
        return used;
    }

    /** What the blanks of one strip fetch, and what is left behind them, less the cuts that part them. */
    double worth(int[] strip, int section) {
        double worth = 0;
        for (int i = 0; i < strip.length; i++) worth += strip[i] * blanks.get(i).price;
        int count = Arrays.stream(strip).sum();
        int behind = count == 0 ? section : section - used(strip);
        boolean flush = section + kerf == used(strip);
        if (count > 0) worth -= (flush ? count - 1 : count) * crosscut;
        return behind >= keepLength && width >= keepWidth ? worth + behind * width * salvage : worth;
    }

    /** How many of each blank there are in a strip of those; empty when it is too long. */
    Optional<int[]> counted(List<Integer> lengths, int section) {
        int[] strip = new int[blanks.size()];
        for (int length : lengths)
            for (int i = 0; i < strip.length; i++) if (blanks.get(i).length == length) strip[i]++;
        return used(strip) <= section + kerf ? Optional.of(strip) : Optional.empty();
    }
}
