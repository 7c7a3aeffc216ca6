package ripwright.runner.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.json.tree.Nearest;
import ripwright.measure.Length;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.stock.Species;

/** What a plan comes to, in a dozen lines. The same text for the same plan. */
final class Summary {
    private static final int MOST_LISTED = 12; // the sheet has them all
    private static final String MARGIN = "\n" + " ".repeat(16);

    private final Job job;
    private final Plan plan;

    Summary(Job job, Plan plan) {
        this.job = job;
        this.plan = plan;
    }

    /** Every line ended by a line break. */
    String text() {
        StringBuilder text = new StringBuilder();
        text.append(plan.job()).append(": ").append(parts()).append('\n');
        line(text, "boards", boards());
        line(text, "cost", cost());
        line(text, "bound", bound());
        line(text, "yield", wood());
        line(text, "settings", settings());
        line(text, "cuts", cuts());
        if (!plan.testBlanks().isEmpty()) line(text, "test blanks", testBlanks());
        line(text, "to the rack", list(plan.offcuts(), this::offcut, "nothing"));
        return text + shorts(plan.shortages());
    }

    /** Those parts and what to buy for them; nothing when there are none. */
    String shorts(List<Shortage> shortages) {
        StringBuilder text = new StringBuilder();
        if (!shortages.isEmpty()) line(text, "short", list(shortages, this::shortage, ""));
        return text.toString();
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append("  ")
                .append(name)
                .append(" ".repeat(14 - name.length()))
                .append(value)
                .append('\n');
    }

    private String parts() {
        int wanted = job.parts().stream().mapToInt(Part::count).sum();
        int missing = plan.shortages().stream().mapToInt(Shortage::count).sum();
        if (missing == 0) return "complete, " + (wanted == 1 ? "the one part." : "all " + wanted + " parts.");
        return "short, " + (wanted - missing) + " of " + wanted + " parts.";
    }

    private String boards() {
        Set<String> used = new LinkedHashSet<>();
        for (CutBoard board : plan.boards()) used.add(board.board());
        long fromStack =
                job.stack().stream().filter(board -> used.contains(board.id())).count();
        long fromRack =
                job.rack().stream().filter(board -> used.contains(board.id())).count();
        String stack = fromStack + " of " + job.stack().size() + " from the stack";
        return job.rack().isEmpty()
                ? stack
                : stack + ", " + fromRack + " of " + job.rack().size() + " from the rack";
    }

    private String cost() {
        Cost cost = plan.cost();
        String labor =
                cost.labor().signum() == 0 ? "" : " + labor " + cost.labor().toPlainString();
        return cost.net().toPlainString() + " = stock " + cost.stock().toPlainString() + " - offcuts kept "
                + cost.salvage().toPlainString() + labor;
    }

    private String bound() {
        Cost cost = plan.cost();
        boolean isShort = plan.status() == Plan.Status.SHORT;
        String such = isShort ? "No plan that makes as much" : "No plan";
        if (cost.bound().signum() <= 0 && cost.net().signum() > 0) return "How cheap a plan could be is not known.";
        if (cost.proven()) return such + " can be cheaper; that is proven.";
        BigDecimal most = cost.net().subtract(cost.bound());
        return such + " can cost less than " + cost.bound().toPlainString() + ": at most " + most.toPlainString()
                + " could be saved.";
    }

    private String wood() {
        Tally tally = plan.tally();
        BigDecimal percent = tally.yield().movePointRight(2).setScale(1, RoundingMode.HALF_UP);
        return percent.toPlainString() + " % of " + feet(tally.consumed(), RoundingMode.HALF_UP) + " board feet; "
                + feet(tally.offcuts(), RoundingMode.HALF_UP) + " go to the rack";
    }

    private String settings() {
        Set<Length> stops = new LinkedHashSet<>();
        for (Step step : plan.steps()) step.stop().ifPresent(stops::add);
        return plan.settings().size() + " rip, " + stops.size() + " stop";
    }

    private String cuts() {
        CutCount count = new CutCount(job, plan);
        long minutes = plan.tally().minutes().setScale(0, RoundingMode.UP).longValue();
        String time = minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
        return count.rips() + " rips, " + count.crosscuts() + " crosscuts, about " + time;
    }

    private String testBlanks() {
        return plan.testBlanks().stream()
                .collect(Collectors.groupingBy(TestBlank::source, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(entry -> entry.getValue()
                        + switch (entry.getKey()) {
                            case RACK -> " from the rack";
                            case WASTE -> " from waste";
                            case FRESH -> " from fresh wood";
                        })
                .collect(Collectors.joining(", "));
    }

    private String offcut(Offcut offcut) {
        Board piece = offcut.piece();
        String mark = piece.history().flatMap(History::mark).orElse(offcut.id());
        String width = piece.tapered() ? in(piece.width()) + " to " + in(piece.widthAtFarEnd()) : in(piece.width());
        return mark + ": " + piece.species() + ", " + in(piece.thickness()) + " x " + width + " x " + in(piece.length())
                + " " + plan.units().symbol();
    }

    private String shortage(Shortage shortage) {
        Shortage.Buy buy = shortage.buy();
        String wood = buy.species().isEmpty()
                ? "any wood"
                : buy.species().stream().map(Species::name).collect(Collectors.joining(" or "));
        String unit = " " + plan.units().symbol();
        return shortage.count() + " x " + shortage.part() + ": buy " + feet(buy.boardFeet(), RoundingMode.UP)
                + " board feet of " + wood + " that mills to " + in(buy.thickness()) + unit + ", no board under "
                + in(buy.narrowest()) + " x " + in(buy.shortest()) + unit + misspelled(buy.species());
    }

    /** A wood that no board is of may only be misspelled in the bill. */
    private String misspelled(List<Species> woods) {
        Set<String> here = new LinkedHashSet<>();
        for (Board board : job.boards()) here.add(board.species().name());
        boolean any = job.boards().stream().map(Board::species).anyMatch(woods::contains);
        if (any || here.isEmpty()) return "";
        return woods.stream()
                .map(wood -> new Nearest(wood.name(), here))
                .filter(Nearest::near)
                .map(nearest -> ". No board is of that wood. " + nearest.sentence())
                .findFirst()
                .orElse("");
    }

    private static <T> String list(List<T> items, Function<T, String> line, String none) {
        if (items.isEmpty()) return none;
        String lines = items.stream().limit(MOST_LISTED).map(line).collect(Collectors.joining(MARGIN));
        int more = items.size() - MOST_LISTED;
        return more <= 0 ? lines : lines + MARGIN + "and " + more + " more, see the sheet";
    }

    private String in(Length length) {
        return plan.units().nearest(length);
    }

    private static String feet(BigDecimal boardFeet, RoundingMode rounding) {
        return boardFeet.setScale(1, rounding).toPlainString();
    }
}
