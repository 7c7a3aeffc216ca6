package ripwright.job;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.bill.Part;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Name;
import ripwright.measure.OnePlace;
import ripwright.measure.Unit;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** All that can be wrong with a job as a whole. */
final class JobCheck {
    private static final int MOST_PARTS = 100_000;
    private static final int MOST_BOARDS = 10_000;
    private static final Length MOST_OVER = Length.inches("6");
    private static final long MOST_MONEY = 1_000_000_000L;

    private JobCheck() {}

    static List<Problem> problems(
            String name,
            Unit units,
            Saw saw,
            TestRip testRip,
            Breakdown breakdown,
            Map<Species, BigDecimal> prices,
            BigDecimal salvage,
            Optional<Labor> labor,
            List<Board> stack,
            List<Board> rack,
            List<Part> parts) {
        List<Problem> problems = new ArrayList<>();
        try {
            Name.require("job's name", name);
        } catch (IllegalArgumentException e) {
            problems.add(new Problem("job", String.valueOf(e.getMessage())));
        }
        if (saw.shortestRip().isPresent() && saw.shortestRip().get().exceeds(testRip.length()))
            problems.add(new Problem(
                    "testRip.length",
                    text(testRip.length(), units) + " is under shortestRip, "
                            + text(saw.shortestRip().get(), units) + ". Make it as long at least."));
        over(breakdown.over(), saw, units, problems);
        if (salvage.signum() < 0 || salvage.compareTo(BigDecimal.ONE) > 0)
            problems.add(new Problem("salvage", salvage + " is not a share from 0 to 1."));
        prices.forEach((species, price) -> {
            if (price.signum() < 0) problems.add(new Problem("prices." + species, price + " is a negative price."));
        });
        if (stack.isEmpty() && rack.isEmpty())
            problems.add(new Problem("stack", "There is no board at all; list at least one."));
        if (stack.size() + rack.size() > MOST_BOARDS)
            problems.add(new Problem("stack", (stack.size() + rack.size()) + " boards; a job has at most 10,000."));
        boards(stack, prices, new HashMap<>(), "stack", problems);
        boards(rack, prices, ids(stack, "stack"), "rack", problems);
        parts(parts, problems);
        boardsOfParts(both(stack, rack), parts, problems);
        readable(both(stack, rack), stack.size(), units, problems);
        readable(parts, units, problems);
        if (problems.isEmpty()) money(both(stack, rack), prices, parts, labor, problems);
        return List.copyOf(problems);
    }

    private static List<Board> both(List<Board> stack, List<Board> rack) {
        List<Board> boards = new ArrayList<>(stack);
        boards.addAll(rack);
        return boards;
    }

    private static void over(Length over, Saw saw, Unit units, List<Problem> problems) {
        if (over.isZero()) return;
        if (saw.crosscutKerf().exceeds(over))
            problems.add(new Problem(
                    "breakdown.over",
                    text(over, units) + " is less than the crosscut kerf of " + text(saw.crosscutKerf(), units)
                            + ", which squares the end. Make it 0 or one kerf at least."));
        if (over.exceeds(MOST_OVER))
            problems.add(new Problem(
                    "breakdown.over",
                    text(over, units) + " is left on at each end; make it " + text(MOST_OVER, units) + " at most."));
    }

    private static void readable(List<Board> boards, int inStack, Unit units, List<Problem> problems) {
        for (int i = 0; i < boards.size(); i++) {
            Board board = boards.get(i);
            String here = i < inStack ? "stack[" + i + "]" : "rack[" + (i - inStack) + "]";
            readable(here + ".length", board.length(), units, problems);
            readable(here + ".width", board.width().min(board.widthAtFarEnd()), units, problems);
        }
    }

    private static void readable(List<Part> parts, Unit units, List<Problem> problems) {
        for (int i = 0; i < parts.size(); i++) {
            readable("parts[" + i + "].length", parts.get(i).length(), units, problems);
            readable("parts[" + i + "].width", parts.get(i).width(), units, problems);
        }
    }

    /** Where a piece begins and ends must be two places to whoever reads the plan. */
    private static void readable(String field, Length size, Unit units, List<Problem> problems) {
        if (!OnePlace.are(0, size.nanometers())) return;
        problems.add(new Problem(
                field,
                text(size, units) + " is too small to be read off a plan, which tells places apart that are more than "
                        + text(new Length(OnePlace.NANOMETERS), units) + " from one another."));
    }

    /** Programs reckon in whole millionths of the currency, which must not overflow. */
    private static void money(
            List<Board> boards,
            Map<Species, BigDecimal> prices,
            List<Part> parts,
            Optional<Labor> labor,
            List<Problem> problems) {
        BigFraction stock = BigFraction.ZERO;
        for (Board board : boards) {
            BigDecimal price = board.price().orElse(prices.getOrDefault(board.species(), BigDecimal.ZERO));
            stock = stock.add(
                    BoardFeet.counted(board.area(), board.thickness()).at(price).value());
        }
        tooMuch("prices", "The boards come to", stock, problems);
        if (labor.isEmpty()) return;
        Labor each = labor.get();
        BigDecimal minutes = each.settingMinutes().add(each.ripMinutes()).add(each.crosscutMinutes());
        BigDecimal count =
                BigDecimal.valueOf(parts.stream().mapToLong(Part::count).sum());
        BigFraction work = Money.of(each.perHour().multiply(minutes).multiply(count))
                .value()
                .divide(60);
        tooMuch("labor", "Setting, ripping and crosscutting for every part alone comes to", work, problems);
    }

    private static void tooMuch(String field, String what, BigFraction money, List<Problem> problems) {
        if (money.compareTo(BigFraction.of(BigInteger.valueOf(MOST_MONEY))) <= 0) return;
        String about = money.bigDecimalValue(0, RoundingMode.HALF_UP)
                .round(new MathContext(3))
                .toEngineeringString();
        problems.add(new Problem(field, what + " about " + about + "; a job may come to 1,000,000,000 at most."));
    }

    private static String text(Length length, Unit units) {
        return units.exact(length) + " " + units.symbol();
    }

    private static Map<String, String> ids(List<Board> boards, String where) {
        Map<String, String> seen = new HashMap<>();
        for (int i = 0; i < boards.size(); i++) seen.putIfAbsent(boards.get(i).id(), where + "[" + i + "]");
        return seen;
    }

    private static void boards(
            List<Board> boards,
            Map<Species, BigDecimal> prices,
            Map<String, String> seen,
            String where,
            List<Problem> problems) {
        boolean rack = where.equals("rack");
        for (int i = 0; i < boards.size(); i++) {
            Board board = boards.get(i);
            String here = where + "[" + i + "]";
            String first = seen.putIfAbsent(board.id(), here);
            if (first != null)
                problems.add(new Problem(
                        here + ".id", "\"" + board.id() + "\" is the id of " + first + " too; ids must differ."));
            if (rack != board.fromRack())
                problems.add(new Problem(
                        here,
                        "\"" + board.id() + "\" is " + (rack ? "no offcut of the rack." : "an offcut of the rack.")));
            if (!rack && board.price().isEmpty() && !prices.containsKey(board.species()))
                problems.add(new Problem(
                        here + ".price",
                        "No price for \"" + board.species() + "\". Add it to prices, or give the board its own."));
        }
    }

    private static void parts(List<Part> parts, List<Problem> problems) {
        if (parts.isEmpty()) problems.add(new Problem("parts", "The cutting bill is empty; list at least one part."));
        Set<String> names = new HashSet<>();
        long count = 0;
        for (int i = 0; i < parts.size(); i++) {
            count += parts.get(i).count();
            if (!names.add(parts.get(i).name()))
                problems.add(new Problem(
                        "parts[" + i + "].name",
                        "\"" + parts.get(i).name() + "\" is in the bill twice; names must differ."));
        }
        if (count > MOST_PARTS) problems.add(new Problem("parts", count + " parts wanted; a job has at most 100,000."));
    }

    private static void boardsOfParts(List<Board> boards, List<Part> parts, List<Problem> problems) {
        Set<String> ids = new HashSet<>();
        for (Board board : boards) ids.add(board.id());
        for (int i = 0; i < parts.size(); i++)
            for (String id : new TreeSet<>(parts.get(i).boards()))
                if (!ids.contains(id) && !id.endsWith(Part.USED_UP))
                    problems.add(new Problem(
                            "parts[" + i + "].boards",
                            "\"" + id + "\" is no board of this job; name boards of the stack or the rack."));
    }
}
