package ripwright.shared;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ripwright.measure.Length;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Strip;

/**
 * The rip settings of several plans cut in one go, widest first: a width that several need is set once. It is set again in
 * a later run only for wood that is not there in time: what is left beside a section's last strip is there from that strip's
 * setting on, what is left of a strip only after the run, unless it is wanted just as wide as it is. Full-width offcuts are
 * there from the start. Where all that saves nothing, it is one job after the other. Fixed once it is made; safe on any thread.
 */
public final class SharedSettings {
    /**
     * One fence position.
     *
     * @param run the run it is set in, from 1
     * @param width the strips it makes
     * @param uses whose strips, in the order of the plans
     */
    public record Row(int run, Length width, List<Use> uses) {
        /** Keeps a copy of the list. */
        public Row {
            uses = List.copyOf(uses);
        }
    }

    /**
     * What one plan rips there.
     *
     * @param turn the plan's place among the turns, from 0
     * @param setting the setting's id in that plan
     * @param strips how many strips
     */
    public record Use(int turn, String setting, int strips) {}

    /**
     * From when on a piece is there: in that run, at that width or narrower.
     *
     * @param ripped the width it was ripped to already, 0 where it is no rest of a strip
     * @param rippedIn the run that was in
     */
    private record There(int run, long width, long ripped, int rippedIn) {
        static final There AT_ONCE = new There(1, Long.MAX_VALUE, 0, 0);

        static There besideStrips(int run, long narrowest) {
            return new There(run, narrowest, 0, 0);
        }

        static There restOfStrip(int run, long width) {
            return new There(run + 1, Long.MAX_VALUE, width, run);
        }

        /** The run in which a section of it is ripped; the one it was ripped in when it needs no more than that. */
        int runOf(Section section) {
            long widest = section.strips().get(0).width().nanometers();
            if (section.strips().get(0).setting().isEmpty()) return run;
            if (section.strips().size() == 1 && widest == ripped) return rippedIn;
            return widest <= width ? run : run + 1;
        }
    }

    private record Place(int run, long width) {}

    private static final Comparator<Place> ORDER = Comparator.comparingInt(Place::run)
            .thenComparing(Comparator.comparingLong(Place::width).reversed());

    private final List<SharedPlan.Turn> turns;
    private final Map<String, There> offcuts = new HashMap<>(); // of plans so far
    private final Map<Place, List<Use>> uses = new TreeMap<>(ORDER);

    /** Of those plans. */
    public SharedSettings(SharedPlan plans) {
        turns = plans.turns();
        for (int i = 0; i < turns.size(); i++) add(i, turns.get(i).plan());
        if (uses.size() >= apart()) jobByJob();
    }

    /** Where one go saves no setting, every job has a run of its own: that is simpler at the saw. */
    private void jobByJob() {
        uses.clear();
        for (int i = 0; i < turns.size(); i++) {
            Plan plan = turns.get(i).plan();
            for (Setting setting : plan.settings()) {
                long strips = plan.boards().stream()
                        .flatMap(board -> board.sections().stream())
                        .flatMap(section -> section.strips().stream())
                        .filter(strip ->
                                strip.setting().filter(setting.id()::equals).isPresent())
                        .count();
                Place place = new Place(i + 1, setting.width().nanometers());
                uses.put(place, List.of(new Use(i, setting.id(), (int) strips)));
            }
        }
    }

    /** The fence positions in the order they are set. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        uses.forEach((place, those) -> rows.add(new Row(place.run(), new Length(place.width()), those)));
        return rows;
    }

    /** How many fence positions it would take, plan by plan. */
    public int apart() {
        return turns.stream().mapToInt(turn -> turn.plan().settings().size()).sum();
    }

    private void add(int turn, Plan plan) {
        Map<String, There> pieces = new HashMap<>();
        Map<Place, Map<String, Integer>> strips = new TreeMap<>(ORDER);
        for (CutBoard board : plan.boards()) {
            There there = offcuts.getOrDefault(board.board(), There.AT_ONCE);
            pieces.put(board.board(), there);
            for (Section section : board.sections()) section(section, there, pieces, strips);
        }
        strips.forEach((place, counts) -> counts.forEach((setting, count) ->
                uses.computeIfAbsent(place, none -> new ArrayList<>()).add(new Use(turn, setting, count))));
        for (Offcut offcut : plan.offcuts())
            offcuts.put(offcut.id(), pieces.getOrDefault(offcut.from(), There.AT_ONCE));
    }

    private static void section(
            Section section, There there, Map<String, There> pieces, Map<Place, Map<String, Integer>> strips) {
        int run = there.runOf(section);
        for (Strip strip : section.strips()) {
            Place place = new Place(run, strip.width().nanometers());
            strip.setting()
                    .ifPresent(setting -> strips.computeIfAbsent(place, none -> new TreeMap<>())
                            .merge(setting, 1, Integer::sum));
            pieces.put(strip.id(), There.restOfStrip(run, place.width()));
            pieces.put(section.id(), There.besideStrips(run, place.width()));
        }
    }
}
