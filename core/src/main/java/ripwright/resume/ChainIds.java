package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ripwright.internal.geometry.Piece;
import ripwright.internal.meant.AsMeant;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Job;
import ripwright.measure.OnePlace;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Board;
import ripwright.stock.History;

/**
 * The ids that the plans of a chain have used so far, and which piece of which first board each means: a label printed once
 * stays true. It never changes once made; safe on any thread.
 */
public final class ChainIds {
    /** Where a board of the job underway lies in a board that the chain began with. */
    private record Frame(String board, long from, long left, boolean turned, long length, long width) {
        /** The same of what lies there in it. */
        Frame within(long from, long left, boolean turned, long length, long width) {
            long start = this.turned ? this.from + this.length - from - length : this.from + from;
            long side = this.turned ? this.left + this.width - left - width : this.left + left;
            return new Frame(board, start, side, this.turned != turned, length, width);
        }

        boolean isAt(Frame other) {
            return near(from, other.from)
                    && near(left, other.left)
                    && near(length, other.length)
                    && near(width, other.width);
        }

        private static boolean near(long one, long other) {
            return Math.abs(one - other) <= OnePlace.NANOMETERS;
        }
    }

    /** What is compared before places are: what a piece is, of which first board, for which part. */
    private record Sort(Kind kind, String board, String part) {}

    private record Meant(String id, Frame place) {}

    private final Map<String, Frame> frames; // of the boards of the job underway
    private final Map<Sort, List<Meant>> meant;
    private final Set<String> used;

    private ChainIds(Map<String, Frame> frames, Map<Sort, List<Meant>> meant, Set<String> used) {
        this.frames = frames;
        this.meant = meant;
        this.used = used;
    }

    /** Of a job that is begun and its plan, which holds. */
    public static ChainIds of(Job job, Plan plan) {
        Map<String, Frame> frames = new HashMap<>();
        for (Board board : job.boards()) {
            long width = board.width().min(board.widthAtFarEnd()).nanometers();
            frames.put(
                    board.id(),
                    new Frame(board.id(), 0, 0, false, board.length().nanometers(), width));
        }
        return new ChainIds(frames, Map.of(), Set.of()).with(job, plan);
    }

    /** The same, of a chain in which that plan came before, of which it is no longer known where its pieces lay. */
    public ChainIds after(Plan earlier) {
        Set<String> all = new HashSet<>(used);
        for (CutBoard cut : earlier.boards()) {
            all.add(cut.board());
            for (Section section : cut.sections()) {
                all.add(section.id());
                for (Strip strip : section.strips()) {
                    all.add(strip.id());
                    strip.blanks().forEach(blank -> all.add(blank.id()));
                }
            }
        }
        earlier.settings().forEach(setting -> all.add(setting.id()));
        earlier.testBlanks().forEach(blank -> all.add(blank.id()));
        for (Offcut offcut : earlier.offcuts()) {
            all.add(offcut.id());
            mark(offcut.piece()).ifPresent(all::add);
        }
        return new ChainIds(frames, meant, all);
    }

    /** Whether a plan of the chain, or its job, has used that id. */
    boolean used(String id) {
        return used.contains(id);
    }

    /** Before the next plan, of a job whose boards are those pieces of the job underway. */
    ChainIds now(Map<String, SizeNow> pieces) {
        Map<String, Frame> next = new HashMap<>();
        pieces.forEach((id, piece) -> {
            Piece wood = piece.wood();
            Frame of = frames.get(piece.board());
            if (of != null)
                next.put(id, of.within(wood.from(), wood.left(), piece.turned(), wood.length(), wood.narrowWidth()));
        });
        return new ChainIds(next, meant, used);
    }

    /** The same, that plan of the job underway used too. */
    ChainIds with(Job job, Plan plan) {
        Map<Sort, List<Meant>> more = new HashMap<>();
        meant.forEach((sort, those) -> more.put(sort, new ArrayList<>(those)));
        Set<String> all = new HashSet<>(used);
        for (Board board : job.boards()) all.add(board.id());
        for (Setting setting : plan.settings()) all.add(setting.id());
        plan.offcuts().forEach(offcut -> mark(offcut.piece()).ifPresent(all::add));
        places(job, plan).forEach((id, place) -> {
            all.add(id);
            if (earlier(place).isEmpty())
                more.computeIfAbsent(place.sort(), key -> new ArrayList<>()).add(new Meant(id, place.frame()));
        });
        return new ChainIds(frames, more, all);
    }

    private static Optional<String> mark(Board piece) {
        return piece.history().flatMap(History::mark);
    }

    /** A piece of a plan of the job underway. */
    record Place(Sort sort, Frame frame) {}

    /** The id under which an earlier plan meant to make that piece. */
    Optional<String> earlier(Place place) {
        return meant.getOrDefault(place.sort(), List.of()).stream()
                .filter(one -> one.place().isAt(place.frame()))
                .map(Meant::id)
                .findFirst();
    }

    /** All pieces that a plan of the job underway makes, in its order. */
    Map<String, Place> places(Job job, Plan plan) {
        Plan exact = new AsMeant(job, plan).plan();
        PlannedPieces pieces = new PlannedPieces(job, exact);
        PiecesInHand bench = new PiecesInHand(job, pieces);
        for (Step step : plan.steps()) bench.does(step);
        Map<String, Piece> made = bench.places();
        Map<String, Place> places = new LinkedHashMap<>();
        for (String id : pieces.ids()) {
            Piece wood = made.get(id);
            if (wood == null) continue; // the section of a ripped board
            Frame of = frames.get(wood.board().id());
            if (of == null) continue;
            Frame frame = of.within(wood.from(), wood.left(), false, wood.length(), wood.narrowWidth());
            String part = pieces.blank(id).map(Blank::part).orElse("");
            places.put(id, new Place(new Sort(kind(pieces, id), of.board(), part), frame));
        }
        return places;
    }

    private static Kind kind(PlannedPieces pieces, String id) {
        if (pieces.section(id).isPresent()) return Kind.SECTION;
        if (pieces.strip(id).isPresent()) return Kind.STRIP;
        if (pieces.blank(id).isPresent()) return Kind.BLANK;
        return pieces.offcut(id).isPresent() ? Kind.OFFCUT : Kind.TEST_BLANK;
    }

    /** The new ids of that plan's pieces by those it gave them: the ids they had before, or such as none had. */
    Map<String, String> renamed(Job job, Plan plan) {
        Map<String, Place> places = places(job, plan);
        Set<String> taken = new HashSet<>();
        for (Board board : job.boards()) taken.add(board.id());
        Map<String, String> names = new LinkedHashMap<>();
        places.forEach((id, place) -> earlier(place).filter(taken::add).ifPresent(name -> names.put(id, name)));
        Set<String> others = new TreeSet<>(new PlannedPieces(job, plan).ids());
        plan.offcuts().forEach(offcut -> mark(offcut.piece()).ifPresent(others::add));
        for (String id : others) if (!names.containsKey(id)) names.put(id, unused(id, taken));
        for (Setting setting : plan.settings())
            names.put(setting.id(), taken.add(setting.id()) ? setting.id() : unused(setting.id(), taken));
        return names;
    }

    /** That id, or the next like it that nothing has or had. */
    private String unused(String id, Set<String> taken) {
        String name = id;
        while (used.contains(name) || !taken.add(name)) name = next(name);
        return name;
    }

    /** S9 becomes S10, ash/B becomes ash/C, anything else has a number put behind. */
    private static String next(String id) {
        int end = id.length();
        int start = end;
        while (start > 0 && Character.digit(id.charAt(start - 1), 10) >= 0 && end - start < 9) start--;
        if (start < end) return id.substring(0, start) + (Integer.parseInt(id.substring(start)) + 1);
        char last = id.charAt(end - 1);
        boolean letter = end > 1 && id.charAt(end - 2) == '/' && last >= 'A' && last < 'Z';
        return letter ? id.substring(0, end - 1) + (char) (last + 1) : id + ".2";
    }
}
