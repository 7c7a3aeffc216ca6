package ripwright.internal.meant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import ripwright.bill.Part;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * A plan as it was meant, where its file has six decimals of it: a piece that held its parts to the nanometer must not be too
 * short for them by what an inch's sixth decimal hides. Blanks are as the bill has them; each place is the one nearby, if
 * there is one, that the board, a kerf or a blank makes. A plan that is exact stays so, but for what nobody can see.
 */
public final class AsMeant {
    private static final long HIDDEN = 51; // nanometers: three roundings to a millionth of an inch come to 39.6

    private final Job job;
    private final Plan plan;
    private final long kerf;
    private final Map<String, Board> boards = new HashMap<>();
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, Length> widths = new HashMap<>(); // by setting

    /** Of that plan of that job. */
    public AsMeant(Job job, Plan plan) {
        this.job = job;
        this.plan = plan;
        kerf = job.saw().crosscutKerf().nanometers();
        for (Board board : job.boards()) boards.put(board.id(), board);
        for (Part part : job.parts()) parts.put(part.name(), part);
    }

    /** The plan, its places where they were meant to be. */
    public Plan plan() {
        List<CutBoard> cut = new ArrayList<>();
        for (CutBoard one : plan.boards()) cut.add(boards.containsKey(one.board()) ? of(one) : one);
        List<Setting> settings = plan.settings().stream()
                .map(setting ->
                        new Setting(setting.id(), widths.getOrDefault(setting.id(), setting.width()), setting.test()))
                .toList();
        return plan.toBuilder().boards(cut).settings(settings).build();
    }

    /**
     * Where a section lies, and whether anything makes it begin and end there.
     *
     * @param from where it begins
     * @param to where it ends
     * @param surelyFrom whether it surely begins there
     * @param surelyTo whether it surely ends there
     */
    private record Span(long from, long to, boolean surelyFrom, boolean surelyTo) {}

    private CutBoard of(CutBoard cut) {
        Board board = boards.getOrDefault(cut.board(), job.boards().get(0));
        List<Section> sections = cut.sections();
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++)
            spans.add(span(sections.get(i), board, behind(spans, i), OptionalLong.empty()));
        for (int i = sections.size() - 2; i >= 0; i--)
            if (!spans.get(i).surelyTo() && spans.get(i + 1).surelyFrom()) {
                OptionalLong next = OptionalLong.of(spans.get(i + 1).from() - kerf);
                spans.set(i, span(sections.get(i), board, behind(spans, i), next));
            }
        List<Section> meant = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) meant.add(of(sections.get(i), board, spans.get(i)));
        return new CutBoard(cut.board(), meant);
    }

    /** A kerf behind the section before that in place {@code i}. */
    private OptionalLong behind(List<Span> spans, int i) {
        boolean sure = i > 0 && spans.get(i - 1).surelyTo();
        return sure ? OptionalLong.of(spans.get(i - 1).to() + kerf) : OptionalLong.empty();
    }

    /** From the board's end or trim, the section before or a defect to where its blanks end; or from there back. */
    private Span span(Section section, Board board, OptionalLong behind, OptionalLong next) {
        if (job.breakdown().leavesOver()) return onTheTape(section, board, behind);
        long length = board.length().nanometers();
        long near = board.endTrim().near().nanometers();
        long far = length - board.endTrim().far().nanometers();
        OptionalLong start = near(section.from().nanometers(), places(behind, ends(board), 0, near));
        OptionalLong end = near(section.to().nanometers(), places(next, starts(board), length, far));
        OptionalLong from = start.isPresent() ? start : begins(section, board, end);
        long begin = from.orElse(section.from().nanometers());
        OptionalLong filled = ends(section, board, begin);
        long to = filled.orElse(end.orElse(section.to().nanometers()));
        boolean surelyTo = end.isPresent() || (from.isPresent() && filled.isPresent());
        return new Span(begin, to, from.isPresent(), surelyTo);
    }

    /** Where sections are left long they begin and end on readings of the tape, whatever their blanks do. */
    private Span onTheTape(Section section, Board board, OptionalLong behind) {
        long reading = SectionEnds.reading(job);
        long length = board.length().nanometers();
        long from = section.from().nanometers();
        long to = section.to().nanometers();
        OptionalLong start = near(from, places(behind, LongStream.of(nearest(from, reading)), 0));
        OptionalLong end = near(to, length, nearest(to, reading));
        return new Span(start.orElse(from), end.orElse(to), true, true);
    }

    private static long nearest(long place, long reading) {
        return (place + reading / 2) / reading * reading;
    }

    private static long[] places(OptionalLong one, LongStream some, long... others) {
        return LongStream.concat(stream(one), LongStream.concat(some, LongStream.of(others)))
                .toArray();
    }

    private Section of(Section section, Board board, Span span) {
        List<Strip> strips = new ArrayList<>();
        SectionEnds ends = new SectionEnds(board, job, 0);
        OptionalLong first = OptionalLong.of(ends.spanFrom(span.from()));
        OptionalLong last = OptionalLong.of(ends.spanTo(span.to()));
        long offset = 0;
        for (Strip strip : section.strips()) {
            Length width = width(strip);
            strip.setting().ifPresent(setting -> widths.put(setting, width));
            List<Blank> blanks = blanks(strip, board, first, last);
            strips.add(new Strip(strip.id(), new Length(offset), width, strip.setting(), blanks));
            offset += width.nanometers() + job.saw().ripKerf().nanometers();
        }
        return new Section(
                section.id(),
                new Length(span.from()),
                new Length(span.to()),
                section.referenceEdge(),
                new Length(loss(section, board, span)),
                strips);
    }

    /** Where the first of its blanks begins when they are laid back from that end, if it begins with them. */
    private OptionalLong begins(Section section, Board board, OptionalLong end) {
        if (end.isEmpty()) return OptionalLong.empty();
        long printed = section.from().nanometers();
        return section.strips().stream()
                .map(strip -> blanks(strip, board, OptionalLong.empty(), end))
                .filter(blanks -> !blanks.isEmpty())
                .mapToLong(blanks -> blanks.get(0).from().nanometers())
                .filter(from -> Math.abs(printed - from) <= HIDDEN)
                .min();
    }

    /** Where the last of its blanks ends when they are laid from there, if it ends with them. */
    private OptionalLong ends(Section section, Board board, long from) {
        long printed = section.to().nanometers();
        return section.strips().stream()
                .map(strip -> blanks(strip, board, OptionalLong.of(from), OptionalLong.empty()))
                .filter(blanks -> !blanks.isEmpty())
                .map(blanks -> blanks.get(blanks.size() - 1))
                .mapToLong(last -> last.from().plus(last.length()).nanometers())
                .filter(to -> Math.abs(printed - to) <= HIDDEN)
                .max();
    }

    private static LongStream starts(Board board) {
        return board.defects().stream().mapToLong(defect -> defect.from().nanometers());
    }

    private static LongStream ends(Board board) {
        return board.defects().stream().mapToLong(defect -> defect.to().nanometers());
    }

    private static OptionalLong near(long place, long... meant) {
        return LongStream.of(meant)
                .filter(one -> Math.abs(place - one) <= HIDDEN)
                .findFirst();
    }

    private Length length(Blank blank) {
        Part part = parts.get(blank.part());
        if (part == null) return blank.length();
        long meant = part.blankLength().nanometers();
        return new Length(
                near(blank.length().nanometers(), meant).orElse(blank.length().nanometers()));
    }

    private Length width(Strip strip) {
        long printed = strip.width().nanometers();
        long[] ofBlanks = strip.blanks().stream()
                .filter(blank -> parts.containsKey(blank.part()))
                .mapToLong(blank -> parts.getOrDefault(blank.part(), job.parts().get(0))
                        .blankWidth()
                        .nanometers())
                .toArray();
        long[] ofBill = job.parts().stream()
                .mapToLong(part -> part.blankWidth().nanometers())
                .toArray();
        OptionalLong meant = near(printed, ofBlanks);
        return new Length((meant.isPresent() ? meant : near(printed, ofBill)).orElse(printed));
    }

    /** One after the other from the strip's start or a defect, the others up to the strip's end or a defect. */
    private List<Blank> blanks(Strip strip, Board board, OptionalLong start, OptionalLong end) {
        int count = strip.blanks().size();
        long[] from = new long[count];
        boolean[] sure = new boolean[count];
        OptionalLong next = start;
        for (int i = 0; i < count; i++) {
            Blank blank = strip.blanks().get(i);
            long printed = blank.from().nanometers();
            OptionalLong meant = near(printed, places(next, ends(board)));
            sure[i] = meant.isPresent();
            from[i] = meant.orElse(printed);
            next = OptionalLong.of(from[i] + length(blank).nanometers() + kerf);
        }
        OptionalLong before = end;
        for (int i = count - 1; i >= 0; i--) {
            Blank blank = strip.blanks().get(i);
            long length = length(blank).nanometers();
            if (!sure[i]) {
                long[] lasts = LongStream.of(places(before, starts(board)))
                        .map(last -> last - length)
                        .toArray();
                from[i] = near(from[i], lasts).orElse(from[i]);
            }
            before = OptionalLong.of(from[i] - kerf);
        }
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Blank blank = strip.blanks().get(i);
            blanks.add(new Blank(blank.id(), blank.part(), new Length(from[i]), length(blank)));
        }
        return blanks;
    }

    private static LongStream stream(OptionalLong place) {
        return place.isPresent() ? LongStream.of(place.getAsLong()) : LongStream.empty();
    }

    /** What an edge gives up to pass a defect ends with it. */
    private static long loss(Section section, Board board, Span span) {
        long printed = section.edgeLoss().nanometers();
        long width = Math.min(
                board.widthAt(new Length(span.from())).nanometers(),
                board.widthAt(new Length(span.to())).nanometers());
        long[] past = board.defects().stream()
                .mapToLong(defect -> section.referenceEdge() == Edge.LEFT
                        ? defect.right().nanometers()
                        : width - defect.left().nanometers())
                .toArray();
        return near(printed, past).orElse(printed);
    }
}
