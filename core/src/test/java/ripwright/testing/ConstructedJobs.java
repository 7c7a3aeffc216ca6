package ripwright.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/**
 * Jobs built up from their answer. Boards are put together from blanks and kerfs without a rest; more boards, decoys, lie
 * among them. Why no plan is cheaper than the built boards:
 *
 * <ul>
 *   <li>Make every blank one crosscut kerf longer and one rip kerf wider, towards the far end and away from the reference
 *       edge. Blanks of one board still do not overlap, as kerfs keep them apart, and stay within the board's usable length
 *       and width made larger by the same. Call the area of that the board's <i>room</i>: whatever is cut from a board, its
 *       enlarged blanks come to no more than its room.
 *   <li>The built boards are filled without a rest, so all enlarged blanks together come to their rooms together, R.
 *   <li>Every board has a price of its own, such that a built one costs v for each unit of its room, rounded up to a millionth of
 *       money a board foot, and a decoy 0.2 to 5 % more.
 *   <li>Boards that make every part have room R or more together. Without a decoy they are all the built ones. With a decoy they
 *       cost at least v R and what that decoy costs beyond v for its room, which is more than all that was rounded up on built
 *       boards (that is checked when a job is built).
 * </ul>
 *
 * <p>It holds for stock cost alone: of salvage and labor the built plan is one example. Features that would spoil it are left
 * off: tries (test blanks take wood) and short stock; built boards are not tapered, defects lie in their end trim or, sound,
 * in blanks of hidden parts; a rack offcut is a decoy, and there is none where salvage is 0.
 */
public final class ConstructedJobs {
    private static final int GRID = 32;
    private static final double SHORTER = 0.85; // blanks than in random jobs, so that decoys are left among the boards

    private final Dice dice;
    private final Features features;
    private final StockDraw stock;
    private final BillDraw bill;
    private final ShopDraw shop;
    private final Saw kerfs;
    private final Map<BuiltBoard.Key, Integer> lines = new LinkedHashMap<>(); // a kind of blank: its place in the bill
    private final List<Part> parts = new ArrayList<>();

    private ConstructedJobs(SplittableRandom random, JobSize size, Features features, int perInch) {
        this.features = features;
        this.dice = Dice.of(random, features, perInch);
        this.stock = new StockDraw(dice, features);
        this.shop = new ShopDraw(dice, features);
        this.kerfs = shop.kerfs();
        int sizes = Math.max(2, Math.min(30, size.parts() / 5));
        this.bill = new BillDraw(dice, features, sizes, SHORTER * RandomJobs.meanLength(size));
    }

    /** A job of about that size with those features, on a grid of 1/32 in. */
    public static Constructed constructed(SplittableRandom random, JobSize size, Features features) {
        return constructed(random, size, features, GRID);
    }

    /** A job of about that size with those features, on a grid of one {@code perInch}th of an inch. */
    public static Constructed constructed(SplittableRandom random, JobSize size, Features features, int perInch) {
        Features sound = features.without(Feature.TRIES, Feature.SHORT_STOCK);
        return new ConstructedJobs(random, size, sound, perInch).build(size);
    }

    /** A board of the stack, and how it was built unless it is a decoy. */
    private record Lying(Board board, Optional<BuiltBoard> built) {}

    private Constructed build(JobSize size) {
        List<BuiltBoard> built = built(size);
        bill(built);
        Rooms rooms = new Rooms(kerfs);
        List<Lying> stack = new ArrayList<>();
        for (BuiltBoard board : built) stack.add(new Lying(defects(rooms.built(board), board), Optional.of(board)));
        for (int i = Math.max(1, size.boards() - built.size()); i > 0; i--)
            stack.add(new Lying(
                    decoy(rooms, stock.board("decoy", bill.widths()).build(), BigDecimal.ONE), Optional.empty()));
        shuffle(stack);
        List<Board> boards = new ArrayList<>();
        List<Layout> layouts = new ArrayList<>();
        for (Lying lying : stack) {
            int place = boards.size();
            lying.built().ifPresent(board -> layouts.add(layout(place, board)));
            boards.add(lying.board().toBuilder().id("board " + (place + 1)).build());
        }
        List<Board> rack = new ArrayList<>();
        if (features.has(Feature.RACK) && shop.salvage().signum() > 0)
            for (int i = dice.whole(1, 4); i > 0; i--)
                rack.add(decoy(rooms, stock.offcut("rack " + i, bill.widths()).build(), shop.salvage()));
        JobBuilder job = shop.shop("constructed", limits(built))
                .parts(parts)
                .stack(boards)
                .rack(rack);
        return new Constructed(job.build(), rooms.best(), layouts);
    }

    private List<BuiltBoard> built(JobSize size) {
        BuiltDraw draw = new BuiltDraw(dice, features, stock, bill, kerfs);
        int mean = Math.max(2, 2 * size.parts() / size.boards());
        List<BuiltBoard> built = new ArrayList<>();
        int count = 0;
        while (count < size.parts()) {
            BuiltBoard board = draw.board("built " + built.size(), size.parts() - count >= mean);
            built.add(board);
            count += board.keys().size();
        }
        return built;
    }

    private Saw limits(List<BuiltBoard> built) {
        List<Length> lengths = built.stream()
                .filter(board -> !board.board().ripped())
                .flatMap(board -> board.sections().stream())
                .map(BuiltBoard.Section::length)
                .sorted()
                .toList();
        return lengths.isEmpty() ? kerfs : shop.limited(kerfs, lengths.get(0), lengths.get(lengths.size() - 1));
    }

    private Board decoy(Rooms rooms, Board board, BigDecimal share) {
        return rooms.decoy(board, BigDecimal.valueOf(dice.whole(1_002, 1_050), 3), share);
    }

    /** One line for every kind of blank. */
    private void bill(List<BuiltBoard> built) {
        Map<BuiltBoard.Key, Integer> counts = new LinkedHashMap<>();
        Map<BuiltBoard.Key, Set<BuiltBoard>> homes = new HashMap<>();
        for (BuiltBoard board : built)
            for (BuiltBoard.Key key : board.keys()) {
                counts.merge(key, 1, Integer::sum);
                homes.computeIfAbsent(key, any -> new HashSet<>()).add(board);
            }
        Set<BuiltBoard.Key> grouped = new HashSet<>();
        if (features.has(Feature.TOGETHER)) {
            BuiltBoard home = dice.of(built);
            home.keys().stream()
                    .filter(key -> Set.of(home).equals(homes.get(key)))
                    .limit(4)
                    .forEach(grouped::add);
        }
        counts.forEach((key, count) -> {
            lines.put(key, parts.size());
            Set<Species> species = bill.including(key.wood(), stock.woods());
            Part.Builder line =
                    bill.line("part " + (parts.size() + 1), count, key.length(), key.width(), key.thickness(), species);
            parts.add(grouped.contains(key) ? line.together("group").build() : line.build());
        });
    }

    private int line(BuiltBoard.Key key) {
        return Objects.requireNonNull(lines.get(key));
    }

    private Part part(BuiltBoard.Key key) {
        return parts.get(line(key));
    }

    /** Bad wood in the end trim, and sound defects in blanks of hidden parts. */
    private Board defects(Board board, BuiltBoard built) {
        if (!features.has(Feature.DEFECTS)) return board;
        List<Defect> defects = new ArrayList<>();
        Length near = board.endTrim().near();
        if (!near.isZero())
            defects.add(new Defect(Length.ZERO, near, Length.ZERO, board.width(), "split", Defect.Blocks.ALL));
        for (BuiltBoard.Place place : built.places(kerfs)) {
            BuiltBoard.Key key = place.key();
            if (part(key).face() == Part.Face.SHOW || !dice.chance(0.2)) continue;
            Length to = place.from().plus(key.length());
            Length right = place.left().plus(key.width());
            defects.add(new Defect(place.from(), to, place.left(), right, "pin knot", Defect.Blocks.SHOW));
        }
        return board.toBuilder().defects(defects).build();
    }

    private Layout layout(int place, BuiltBoard built) {
        List<Layout.Section> sections = new ArrayList<>();
        long from = built.board().endTrim().near().nanometers();
        for (BuiltBoard.Section section : built.sections()) {
            List<Layout.Strip> strips = new ArrayList<>();
            for (BuiltBoard.Strip strip : section.strips()) {
                List<Layout.Blank> blanks = new ArrayList<>();
                long at = from;
                for (Length length : strip.blanks()) {
                    blanks.add(new Layout.Blank(line(built.key(strip, length)), at));
                    at += length.nanometers() + kerfs.crosscutKerf().nanometers();
                }
                strips.add(new Layout.Strip(strip.width().nanometers(), blanks));
            }
            long to = from + section.length().nanometers();
            sections.add(
                    new Layout.Section(from, to, Edge.LEFT, built.leftLoss().nanometers(), strips));
            from = to + kerfs.crosscutKerf().nanometers();
        }
        return new Layout(place, sections);
    }

    private void shuffle(List<Lying> stack) {
        for (int i = stack.size() - 1; i > 0; i--) Collections.swap(stack, i, dice.whole(0, i));
    }
}
