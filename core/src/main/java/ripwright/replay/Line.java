package ripwright.replay;

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
record Line(long from, long to, List<Span> spans, long kerf) {
    /**
     * A stretch of a line.
     *
     * @param from where it starts
     * @param to where it ends
     */
    record Span(long from, long to) {
        long length() {
            return to - from;
        }
    }

    Line {
        spans = spans.stream().sorted(Comparator.comparingLong(Span::from)).toList();
    }

    /** The pieces left beside the spans: a gap between two cuts loses two kerfs, one beside an end of the line one. */
    List<Span> free() {
        List<Span> free = new ArrayList<>();
        long start = from;
        for (Span span : spans) {
            if (span.from() - kerf > start) free.add(new Span(start, span.from() - kerf));
            start = Math.max(start, span.to() + kerf);
        }
        if (to > start) free.add(new Span(start, to));
        return free;
    }

    /** How many cuts free the spans: none at the line's own ends, one for two neighbors exactly one kerf apart. */
    int cuts() {
        int cuts = 0;
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            boolean shared =
                    i > 0 && Tolerance.same(span.from(), spans.get(i - 1).to() + kerf);
            if (!shared && !Tolerance.same(span.from(), from)) cuts++;
            if (!Tolerance.same(span.to(), to)) cuts++;
        }
        return cuts;
    }
}
