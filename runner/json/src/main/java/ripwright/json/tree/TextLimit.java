package ripwright.json.tree;

import java.util.Locale;

/**
 * How much of one text is read. What a job becomes in memory while it is read takes up to ten times its bytes, and half of
 * the heap is for that; so a text may be a twentieth of the heap, and 64 MB where the heap is large.
 *
 * @param heap what Java may use here, in bytes
 */
public record TextLimit(long heap) {
    private static final int MEGABYTE = 1 << 20;
    private static final long MOST = 64; // MB; a job of 100,000 lines has a third of that
    private static final int MOST_VALUES = 4_000_000; // a plan of 100,000 parts has half of that
    private static final int TIMES = 10; // what reading takes, in bytes for each byte of a job
    private static final int FOR_EACH_VALUE = 128; // what one takes, its share of objects and lists included

    /** That of the heap there is. */
    public static TextLimit ofThisHeap() {
        return new TextLimit(Runtime.getRuntime().maxMemory());
    }

    /** How many bytes a text may have. */
    public int bytes() {
        return (int) megabytes() * MEGABYTE;
    }

    private long megabytes() {
        return Math.min(MOST, Math.max(1, forReading() / TIMES / MEGABYTE));
    }

    /** How many bytes of the heap are for what is read, all texts together. */
    public long forReading() {
        return heap / 2;
    }

    /** How many of those a text of so many bytes takes. */
    public long taken(long bytes) {
        return TIMES * bytes;
    }

    /** How many values a text may hold. */
    int values() {
        return (int) Math.min(MOST_VALUES, forReading() / FOR_EACH_VALUE);
    }

    /** What is wrong with a text that is longer, called {@code what}. */
    public String over(String what) {
        return what + " is over " + megabytes() + " MB"
                + (megabytes() == MOST ? "; the largest job has fewer." : why());
    }

    /** What is wrong with a file that holds more values. */
    String overValues() {
        String many = String.format(Locale.ROOT, "over %,d values in one file", values());
        return many + (values() == MOST_VALUES ? "; the largest job or plan has fewer." : why());
    }

    private String why() {
        return ", the most that is read where Java may use " + heap / MEGABYTE
                + " MB. Let it use more, as in java -Xmx2g.";
    }
}
