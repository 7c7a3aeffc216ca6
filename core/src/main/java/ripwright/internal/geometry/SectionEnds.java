package ripwright.internal.geometry;

import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.stock.Board;

/**
 * The ends of a board's sections, in nanometers from its marked end: where it may be cut into sections, and which span of
 * a section blanks may lie in. Without {@code over} both are the same, and sections lie between the end trims. With it no blank
 * lies in an end trim nor within {@code over} of an end of its section, but for an end that is the board's own and square; a
 * section's end is the board's own, which stays on it raw, or lies between the trims on a whole reading of the tape.
 *
 * @see "CONTRACT.md 2, Ends, and 3, Sections"
 */
public final class SectionEnds {
    private static final long INCH_READING = Length.inches("1/8").nanometers();
    private static final long MILLIMETER_READING = Length.millimeters("5").nanometers();

    private final Board board;
    private final long length;
    private final long near; // the end trims
    private final long far;
    private final long over;
    private final long reading;
    private final long withheld;

    /** Of a board of that job, cut as the job says; the last {@code withheld} nanometers before its far trim stay uncut. */
    public SectionEnds(Board board, Job job, long withheld) {
        this.board = board;
        this.withheld = withheld;
        length = board.length().nanometers();
        near = board.endTrim().near().nanometers();
        far = board.endTrim().far().nanometers();
        over = job.breakdown().over().nanometers();
        reading = reading(job);
    }

    /** The readings of the tape at which boards of that job are cut into sections, in nanometers; 0 where it asks for none. */
    public static long reading(Job job) {
        if (!job.breakdown().leavesOver()) return 0;
        return job.units() == Unit.INCH ? INCH_READING : MILLIMETER_READING;
    }

    /** Where a section may begin at the earliest. */
    public long begin() {
        return over == 0 ? near : 0;
    }

    /** Where a section may end at the latest. */
    public long end() {
        if (over == 0) return length - far - withheld;
        return withheld == 0 ? length : readingUpTo(length - far - withheld);
    }

    /** Where the first blank of a section may begin that begins there. */
    public long spanFrom(long from) {
        if (over == 0) return from;
        if (from > 0) return from + over;
        return board.squareEnds() >= 1 ? 0 : Math.max(near, over);
    }

    /** Where the last blank of a section may end that ends there. */
    public long spanTo(long to) {
        if (over == 0) return to;
        if (to < length) return to - over;
        return board.squareEnds() == 2 ? length : length - Math.max(far, over);
    }

    /** Where a section may begin whose first blank begins there: as late as its end may be cut. */
    public long sectionFrom(long span) {
        return beginUpTo(span - over);
    }

    /** Where a section may end whose last blank ends there: as early as its end may be cut. */
    public long sectionTo(long span) {
        return endFrom(span + over);
    }

    /** The last place up to there at which a section may begin. */
    public long beginUpTo(long place) {
        if (over == 0) return place;
        long from = readingUpTo(place);
        return from > 0 && from >= near ? from : 0;
    }

    /** The first place from there on at which a section may end. */
    public long endFrom(long place) {
        if (over == 0) return place;
        long to = -readingUpTo(-place);
        return to < length && to <= length - far - withheld ? to : end();
    }

    /** The last place up to there at which a section may end. */
    public long endUpTo(long place) {
        if (over == 0 || place >= end()) return Math.min(place, end());
        return readingUpTo(Math.min(place, length - far - withheld));
    }

    private long readingUpTo(long place) {
        return over == 0 ? place : Math.floorDiv(place, reading) * reading;
    }
}
