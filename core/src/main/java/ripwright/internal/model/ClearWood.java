package ripwright.internal.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the strips of one section meet its board's defects. A strip's view is the set of defects its band across the
 * board overlaps (touching is no overlap); strips of one view have the same clear intervals.
 */
public final class ClearWood {
    /** A length of clear wood, in nanometers along the grain. */
    public record Interval(long start, long end) {}

    /** The clear intervals of one view, in order, and whether show parts and hidden parts have the same. */
    public record View(int number, List<Interval> forShow, List<Interval> forHidden, boolean alike) {
        View(int number, List<Interval> forShow, List<Interval> forHidden) {
            this(number, forShow, forHidden, forShow.equals(forHidden));
        }
    }

    private final long[][] defects; // those within the section
    private final long start;
    private final long end;
    private final long width; // of the section
    private final boolean left; // whether the left edge is the reference
    private final Map<Long, View> views = new HashMap<>();
    private final View clear;

    /** Of a section from {@code start} to {@code end}: the wood in it that blanks may lie in. */
    public ClearWood(BoardNumbers board, long start, long end, boolean left) {
        this.start = board.spanFrom(start);
        this.end = board.spanTo(end);
        this.left = left;
        width = board.sectionWidth(start, end);
        List<long[]> inside = new ArrayList<>();
        for (long[] defect : board.defects) if (defect[0] < this.end && defect[1] > this.start) inside.add(defect);
        if (inside.size() > Long.SIZE) inside = List.of(box(inside)); // a board that bad is taken as bad throughout
        defects = inside.toArray(long[][]::new);
        clear = new View(0, List.of(new Interval(this.start, this.end)), List.of(new Interval(this.start, this.end)));
        views.put(0L, clear);
    }

    private static long[] box(List<long[]> defects) {
        long[] box = {Long.MAX_VALUE, 0, Long.MAX_VALUE, 0, 1};
        for (long[] defect : defects) {
            box[0] = Math.min(box[0], defect[0]);
            box[1] = Math.max(box[1], defect[1]);
            box[2] = Math.min(box[2], defect[2]);
            box[3] = Math.max(box[3], defect[3]);
        }
        return box;
    }

    /** Whether every strip is clear from end to end. */
    public boolean everywhere() {
        return defects.length == 0;
    }

    /** The view of a strip {@code y} to {@code y + w} from the reference edge as the board lies. */
    public View view(long y, long w) {
        if (defects.length == 0) return clear;
        long mask = 0;
        for (int d = 0; d < defects.length; d++) if (near(defects[d]) < y + w && far(defects[d]) > y) mask |= 1L << d;
        View view = views.get(mask);
        if (view == null) {
            view = new View(views.size(), intervals(mask, false), intervals(mask, true));
            views.put(mask, view);
        }
        return view;
    }

    /** Distances from the reference edge, as the board lies, at which a strip could begin just past a defect. */
    public long[] pastDefects() {
        long[] past = new long[defects.length];
        for (int d = 0; d < past.length; d++) past[d] = far(defects[d]);
        return past;
    }

    private long near(long[] defect) {
        return left ? defect[2] : width - defect[3];
    }

    private long far(long[] defect) {
        return left ? defect[3] : width - defect[2];
    }

    private List<Interval> intervals(long mask, boolean hidden) {
        List<long[]> bad = new ArrayList<>();
        for (int d = 0; d < defects.length; d++)
            if ((mask >>> d & 1) != 0 && (!hidden || defects[d][4] == 1)) bad.add(defects[d]);
        bad.sort((a, b) -> Long.compare(a[0], b[0]));
        List<Interval> intervals = new ArrayList<>();
        long x = start;
        for (long[] defect : bad) {
            if (defect[0] > x) intervals.add(new Interval(x, defect[0]));
            x = Math.max(x, defect[1]);
        }
        if (x < end) intervals.add(new Interval(x, end));
        return intervals;
    }
}
