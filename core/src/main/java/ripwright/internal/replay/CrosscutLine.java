package ripwright.internal.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Spans that crosscuts free from a line of wood: the sections of a board, or the blanks of a strip. The line's own two
 * ends need no cut. All in nanometers from the board's marked end.
 *
 * @param from where the line starts
 * @param to where it ends
 * @param spans what is cut from it, by where it starts
 * @param kerf what one cut takes
 */
public record CrosscutLine(long from, long to, List<Span> spans, long kerf) {
    /**
     * A stretch of a line.
     *
     * @param from where it starts
     * @param to where it ends
     */
    public record Span(long from, long to) {
        public long length() {
            return to - from;
        }
    }

    public CrosscutLine {
        spans = spans.stream().sorted(Comparator.comparingLong(Span::from)).toList();
    }

    /** The pieces left beside the spans: a gap between two cuts loses two kerfs, one beside an end of the line one. */
    public List<Span> free() {
        List<Span> free = new ArrayList<>();
        long start = from;
        for (Span span : spans) {
            if (span.from() - kerf > start) free.add(new Span(start, span.from() - kerf));
            start = Math.max(start, span.to() + kerf);
        }
        if (to > start) free.add(new Span(start, to));
        return free;
    }

    /** How many cuts free the spans, at least; the plan's file leaves those open that its decimals hide. */
    public int fewestCuts() {
        return cuts(Tolerance.NANOMETERS + Tolerance.OF_PRINT);
    }

    /** How many it can be at most. */
    public int mostCuts() {
        return cuts(Tolerance.NANOMETERS - Tolerance.OF_PRINT);
    }

    /** None at the line's own ends, one for two neighbors exactly one kerf apart: two places that close are one. */
    private int cuts(long close) {
        int cuts = 0;
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            boolean shared = i > 0 && Math.abs(span.from() - spans.get(i - 1).to() - kerf) <= close;
            if (!shared && Math.abs(span.from() - from) > close) cuts++;
            if (Math.abs(span.to() - to) > close) cuts++;
        }
        return cuts;
    }
}
