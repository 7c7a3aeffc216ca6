package ripwright.internal.replay.leftovers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.Tolerance;

/**
 * One way of cutting test blanks from a leftover: some from its near end, the others from its far end, from the end
 * itself or from the first clear wood behind it where it is raw.
 *
 * @param rest what is left of it; empty when nothing is
 * @param fewestCuts how many crosscuts that takes, at least: a test blank shorter than its piece is one
 * @param mostCuts how many it takes at most; behind a raw end the order of cutting can save one, and the decimals of a
 *     plan's file can hide one
 * @param blanks the test blanks, widest first
 */
public record CutDown(Optional<ReplayLeftover> rest, int fewestCuts, int mostCuts, List<Cut> blanks) {
    /**
     * A test blank as it is cut.
     *
     * @param along where it lies along the grain
     * @param width how wide it is at its own narrow end, in nanometers
     */
    public record Cut(CrosscutLine.Span along, long width) {}

    /** All ways of cutting {@code count} test blanks, each {@code length} long, from {@code piece}. */
    static List<CutDown> all(ReplayLeftover piece, int count, long length, long kerf) {
        if (count == 0) return List.of(new CutDown(Optional.of(piece), 0, 0, List.of()));
        List<CutDown> ways = new ArrayList<>();
        for (int atNear = 0; atNear <= count; atNear++)
            for (long skipNear : atNear > 0 && piece.rawNear() > 0 ? List.of(0L, piece.rawNear()) : List.of(0L))
                for (long skipFar : atNear < count && piece.rawFar() > 0 ? List.of(0L, piece.rawFar()) : List.of(0L))
                    way(piece, atNear, count - atNear, skipNear, skipFar, length, kerf)
                            .ifPresent(ways::add);
        return ways;
    }

    private static Optional<CutDown> way(
            ReplayLeftover piece, int atNear, int atFar, long skipNear, long skipFar, long length, long kerf) {
        long start = piece.along().from() + skipNear; // of the first test blank at the near end
        long end = piece.along().to() - skipFar; // of the last one at the far end
        long nearEnd = atNear == 0 ? start : start + atNear * length + (atNear - 1) * kerf;
        long farStart = atFar == 0 ? end : end - atFar * length - (atFar - 1) * kerf;
        boolean fromBothEnds = atNear > 0 && atFar > 0;
        long kerfs = fromBothEnds ? 2 * kerf : kerf; // that free a rest
        long between = farStart - nearEnd;
        if (Tolerance.less(between, fromBothEnds ? kerf : 0)) return Optional.empty();

        int count = atNear + atFar;
        long over = Math.abs(between - (fromBothEnds ? kerf : 0));
        boolean maybeNothing = over <= Tolerance.NANOMETERS + Tolerance.OF_PRINT;
        boolean surelyNothing = over <= Tolerance.NANOMETERS - Tolerance.OF_PRINT;
        boolean skips = skipNear > 0 || skipFar > 0;
        int fewest = maybeNothing && (!skips || count > 1) ? count - 1 : count;
        int most = surelyNothing && !skips ? count - 1 : count;
        Optional<ReplayLeftover> rest = between > kerfs
                ? Optional.of(piece.between(
                        atNear == 0 ? piece.along().from() : nearEnd + kerf,
                        atFar == 0 ? piece.along().to() : farStart - kerf))
                : Optional.empty();
        return Optional.of(new CutDown(rest, fewest, most, cuts(piece, start, atNear, end, atFar, length, kerf)));
    }

    private static List<Cut> cuts(
            ReplayLeftover piece, long start, int atNear, long end, int atFar, long length, long kerf) {
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < atNear; i++) {
            long from = start + i * (length + kerf);
            cuts.add(cut(piece, from, from + length));
        }
        for (int i = 0; i < atFar; i++) {
            long to = end - i * (length + kerf);
            cuts.add(cut(piece, to - length, to));
        }
        cuts.sort((one, other) -> Long.compare(other.width(), one.width()));
        return List.copyOf(cuts);
    }

    private static Cut cut(ReplayLeftover piece, long from, long to) {
        return new Cut(new CrosscutLine.Span(from, to), Math.min(piece.widthAt(from), piece.widthAt(to)));
    }
}
