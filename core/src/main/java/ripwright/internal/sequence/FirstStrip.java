package ripwright.internal.sequence;

import java.util.Comparator;
import java.util.List;
import ripwright.bill.Part;
import ripwright.internal.pieces.SectionCut;
import ripwright.internal.pieces.StripCut;

/**
 * Which strip of a setting is ripped first and measured before the rest: of those at least three quarters as long as
 * the longest, so that a bow in the cut would show, the one whose loss would hurt least. Parts that must match others
 * are the worst to lose, then fitted ones, then ones that show; a strip without blanks is best. Common practice; the
 * three quarters are our own.
 */
public final class FirstStrip {
    private final List<Candidate> candidates;

    /** Among the strips that could come off next, in the order of the job. */
    FirstStrip(List<Candidate> candidates) {
        this.candidates = candidates;
    }

    /** A strip that could come off its section next. */
    record Candidate(SectionCut section, StripCut strip) {
        private long harm() {
            long harm = 0;
            for (Part part : strip.parts()) harm = Math.max(harm, harmOf(part));
            return harm;
        }

        private static long harmOf(Part part) {
            if (part.together().isPresent()) return 4;
            if (part.fitted()) return 3;
            return part.face() == Part.Face.SHOW ? 2 : 1;
        }

        private long blankLength() {
            return strip.strip().blanks().stream()
                    .mapToLong(blank -> blank.length().nanometers())
                    .sum();
        }
    }

    /** The strip; the first of several as good. */
    Candidate choice() {
        long longest = candidates.stream()
                .mapToLong(candidate -> candidate.section().length())
                .max()
                .orElseThrow();
        return candidates.stream()
                .filter(candidate -> 4 * candidate.section().length() >= 3 * longest)
                .min(Comparator.comparingLong(Candidate::harm)
                        .thenComparingLong(Candidate::blankLength)
                        .thenComparingLong(
                                (Candidate candidate) -> -candidate.section().length()))
                .orElseThrow();
    }
}
