package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Piece;
import ripwright.internal.sequence.Sequencer;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.resume.HeldPiece.Kind;
import ripwright.saw.TestRip;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.testing.JobBuilder;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** What a report makes of the pieces in hand, against a reckoning of each piece for itself. */
class MishapsTest {
    private static final long HAIR = 25_400_000 / 64;

    /** The first steps of a drawn plan, done. */
    private record Begun(Job job, Plan plan, List<Integer> done) {
        static Begun random(SplittableRandom random, int size) {
            Job job = RandomJobs.growing(random, size);
            try {
                return cut(job);
            } catch (NoTestWoodException e) {
                return cut(JobBuilder.like(job).testRip(TestRip.NONE).build());
            }
        }

        private static Begun cut(Job job) {
            return new Begun(job, new Sequencer(job, FirstFitDecreasing.plan(job), Money.ZERO).plan(), List.of());
        }

        Begun further(SplittableRandom random) {
            int upTo = random.nextInt(plan.steps().size() + 1);
            return new Begun(
                    job,
                    plan,
                    plan.steps().subList(0, upTo).stream().map(Step::n).toList());
        }

        List<SizeNow> pieces(List<Change> changes) {
            return new Resume(job, plan, new Report(job.name(), done, changes, Optional.empty())).pieces();
        }
    }

    /** What happened to one piece: a size is 0 where it is as before. */
    private record Mishap(SizeNow piece, long width, long length, Optional<Defect> found, boolean spoiled) {
        static Mishap random(SplittableRandom random, SizeNow piece) {
            Piece wood = piece.wood();
            boolean slanted =
                    piece.planned().kind() == Kind.BOARD && wood.board().tapered();
            long width = random.nextBoolean() ? less(random, wood.narrowWidth()) : 0;
            long length = random.nextBoolean() && !slanted ? less(random, wood.length()) : 0;
            Optional<Defect> found = random.nextInt(3) == 0
                    ? Optional.of(
                            defect(random, length > 0 ? length : wood.length(), width > 0 ? width : wood.narrowWidth()))
                    : Optional.empty();
            return new Mishap(piece, width, length, found, random.nextInt(4) == 0);
        }

        private static long less(SplittableRandom random, long size) {
            return Math.max(1, size - HAIR * (1 + random.nextInt(6)));
        }

        private static Defect defect(SplittableRandom random, long length, long width) {
            long from = random.nextLong(length);
            long left = random.nextLong(width);
            return new Defect(
                    new Length(from),
                    new Length(random.nextLong(from, length) + 1),
                    new Length(left),
                    new Length(random.nextLong(left, width) + 1),
                    "knot",
                    random.nextBoolean() ? Defect.Blocks.ALL : Defect.Blocks.SHOW);
        }

        List<Change> said() {
            List<Change> said = new ArrayList<>();
            if (width > 0) said.add(new Change.Width(piece.id(), new Length(width)));
            if (length > 0) said.add(new Change.Extent(piece.id(), new Length(length)));
            found.ifPresent(defect -> said.add(new Change.Found(piece.id(), defect)));
            if (spoiled) said.add(new Change.Spoiled(piece.id()));
            return said;
        }

        boolean usable() {
            return !spoiled || width > 0 || length > 0 || found.isPresent();
        }

        boolean good(Begun begun) {
            boolean bad = found.filter(defect -> defect.blocks() == Defect.Blocks.ALL || !hidden(begun))
                    .isPresent();
            return width == 0 && length == 0 && !spoiled && !bad;
        }

        /** Whether it is a blank of a part that does not show. */
        private boolean hidden(Begun begun) {
            if (piece.planned().kind() != Kind.BLANK) return false;
            String part = begun.plan.boards().stream()
                    .flatMap(board -> board.sections().stream())
                    .flatMap(section -> section.strips().stream())
                    .flatMap(strip -> strip.blanks().stream())
                    .filter(blank -> blank.id().equals(piece.planned().name()))
                    .findFirst()
                    .orElseThrow()
                    .part();
            return begun.job.parts().stream()
                    .anyMatch(one -> one.name().equals(part) && one.face() == Part.Face.HIDDEN);
        }

        /** The defects in their board that there must be: those known, as far as the board reaches now, and the new one. */
        Set<Defect> defects() {
            Set<Defect> defects = new HashSet<>();
            Piece wood = piece.wood();
            boolean whole = piece.planned().kind() == Kind.BOARD;
            long far = whole && length > 0 ? length : Long.MAX_VALUE;
            long right = whole && width > 0 ? width : Long.MAX_VALUE;
            for (Defect defect : wood.board().defects())
                if (defect.from().nanometers() < far && defect.left().nanometers() < right)
                    defects.add(moved(defect, 0, 0, far, right));
            found.ifPresent(defect -> defects.add(moved(defect, wood.from(), wood.left(), far, right)));
            return defects;
        }

        private static Defect moved(Defect defect, long along, long across, long far, long right) {
            return new Defect(
                    new Length(defect.from().nanometers() + along),
                    new Length(Math.min(far, defect.to().nanometers() + along)),
                    new Length(defect.left().nanometers() + across),
                    new Length(Math.min(right, defect.right().nanometers() + across)),
                    defect.kind(),
                    defect.blocks());
        }
    }

    private static void isAsSaid(SizeNow now, Mishap mishap, Begun begun) {
        Piece was = mishap.piece.wood();
        Piece is = now.wood();
        assertThat(now.id()).isEqualTo(mishap.piece.id());
        assertThat(now.planned()).isEqualTo(mishap.piece.planned());
        assertThat(is.from()).isEqualTo(was.from());
        assertThat(is.left()).isEqualTo(was.left());
        assertThat(is.length()).isEqualTo(mishap.length > 0 ? mishap.length : was.length());
        for (boolean far : new boolean[] {false, true}) {
            long before = was.widthAt(far && mishap.length == 0 ? was.to() : was.from());
            long width = is.widthAt(far && mishap.length == 0 ? is.to() : is.from());
            assertThat(width).isEqualTo(mishap.width > 0 ? mishap.width : before);
        }
        assertThat(is.leftStraight()).isEqualTo(was.leftStraight());
        assertThat(is.rightStraight()).isEqualTo(was.rightStraight());
        assertThat(is.milled()).isEqualTo(was.milled());
        assertThat(Set.copyOf(is.board().defects())).isEqualTo(mishap.defects());
        assertThat(now.usable()).isEqualTo(mishap.usable());
        assertThat(now.good()).isEqualTo(mishap.good(begun));
    }

    @Test
    void a_piece_is_as_the_report_has_it_in_whatever_order_that_is_said_and_others_are_as_planned() {
        Seeds.each(120, 110, (random, size) -> {
            Begun begun = Begun.random(random, size);
            int spoken = 0;
            for (int again = 0; again < 5; again++) {
                begun = begun.further(random);
                List<SizeNow> before = begun.pieces(List.of());
                Map<Integer, Mishap> mishaps = new TreeMap<>(); // by the piece's place
                for (int i = random.nextInt(4); i >= 0; i--) {
                    int place = random.nextInt(before.size());
                    mishaps.putIfAbsent(place, Mishap.random(random, before.get(place)));
                }
                List<Change> said = new ArrayList<>();
                for (Mishap mishap : mishaps.values()) said.addAll(mishap.said());
                Collections.shuffle(said, new Random(random.nextLong()));
                List<SizeNow> after = begun.pieces(said);
                assertThat(after).hasSameSizeAs(before);
                for (int place = 0; place < before.size(); place++) {
                    Mishap mishap = mishaps.get(place);
                    if (mishap == null) assertThat(after.get(place)).isEqualTo(before.get(place));
                    else isAsSaid(after.get(place), mishap, begun);
                }
                spoken += said.size();
            }
            return spoken > 5;
        });
    }

    /** Ripped too wide, a strip took that much of what is left of its section; where that is not as wide, nobody can have. */
    @Test
    void a_strip_too_wide_has_its_wood_from_beside_it() {
        Seeds.each(150, 50, (random, size) -> {
            Begun begun = Begun.random(random, size);
            int taken = 0;
            for (int again = 0; again < 5; again++) {
                begun = begun.further(random);
                List<SizeNow> before = begun.pieces(List.of());
                for (SizeNow strip : before)
                    if (strip.planned().kind() == Kind.STRIP && ripped(begun, strip, before, random)) taken++;
            }
            return taken > 0;
        });
    }

    private static boolean ripped(Begun begun, SizeNow strip, List<SizeNow> before, SplittableRandom random) {
        long more = HAIR * (1 + random.nextInt(200));
        Optional<Section> section = section(begun.plan, strip.planned().name());
        List<SizeNow> beside = before.stream()
                .filter(piece -> section.filter(
                                of -> of.id().equals(piece.planned().of()))
                        .isPresent())
                .filter(piece -> piece.planned().kind() != Kind.STRIP
                        && piece.planned().kind() != Kind.BLANK
                        && piece.planned().kind() != Kind.TEST_BLANK)
                .toList();
        Change wider = new Change.Width(strip.id(), new Length(strip.wood().narrowWidth() + more));
        if (beside.isEmpty() || beside.get(0).wood().narrowWidth() <= more) {
            assertThat(catchThrowable(() -> begun.pieces(List.of(wider)))).isInstanceOf(WrongReportException.class);
            return false;
        }
        List<SizeNow> after = begun.pieces(List.of(wider));
        for (int place = 0; place < before.size(); place++) {
            SizeNow was = before.get(place);
            SizeNow is = after.get(place);
            if (was.id().equals(strip.id()))
                assertThat(is.wood().narrowWidth() - was.wood().narrowWidth()).isEqualTo(more);
            else if (!was.id().equals(beside.get(0).id())) assertThat(is).isEqualTo(was);
            else {
                boolean left = section.orElseThrow().referenceEdge() == Edge.LEFT;
                assertThat(is.wood().left() - was.wood().left()).isEqualTo(left ? more : 0);
                assertThat(was.wood().narrowWidth() - is.wood().narrowWidth()).isEqualTo(more);
            }
        }
        return true;
    }

    private static Optional<Section> section(Plan plan, String strip) {
        for (CutBoard board : plan.boards())
            for (Section section : board.sections())
                for (Strip one : section.strips()) if (one.id().equals(strip)) return Optional.of(section);
        return Optional.empty();
    }
}
