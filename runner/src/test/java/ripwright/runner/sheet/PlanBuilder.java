package ripwright.runner.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.Caution;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.Step.Saw;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * Puts a plan together from sections somebody laid out by hand, and orders its steps as the contract asks. Judges nothing:
 * the plan is as right as the hand that laid it out.
 */
final class PlanBuilder {
    private final Job job;
    private final Map<String, List<Section>> sections = new TreeMap<>();
    private final List<TestBlank> tests = new ArrayList<>();
    private final List<Offcut> offcuts = new ArrayList<>();
    private final List<Shortage> shortages = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();
    private final Map<Length, Setting> settings = new TreeMap<>(Comparator.reverseOrder());
    private final List<Step> steps = new ArrayList<>();
    private int strips;
    private int blanks;

    PlanBuilder(Job job) {
        this.job = job;
    }

    /** What a strip is laid out of: its width, then part names, or lengths to be left out before the next part. */
    record Row(String width, List<String> things) {}

    static Row row(String width, String... things) {
        return new Row(width, List.of(things));
    }

    PlanBuilder section(String board, String from, String to, Edge reference, String loss, Row... rows) {
        List<Section> all = sections.computeIfAbsent(board, id -> new ArrayList<>());
        Length offset = Length.ZERO;
        List<Strip> laid = new ArrayList<>();
        for (Row row : rows) {
            Length width = Length.inches(row.width());
            settings.computeIfAbsent(width, any -> new Setting("", any, Optional.empty()));
            laid.add(new Strip("S" + ++strips, offset, width, Optional.of(""), blanks(row, Length.inches(from))));
            offset = offset.plus(width).plus(job.saw().ripKerf());
        }
        String id = board + "/" + (all.size() + 1);
        all.add(new Section(id, Length.inches(from), Length.inches(to), reference, Length.inches(loss), laid));
        return this;
    }

    private List<Blank> blanks(Row row, Length start) {
        List<Blank> laid = new ArrayList<>();
        Length from = start;
        for (String thing : row.things()) {
            Optional<Part> part =
                    job.parts().stream().filter(one -> one.name().equals(thing)).findFirst();
            if (part.isEmpty()) {
                from = from.plus(Length.inches(thing));
                continue;
            }
            Length length = part.get().blankLength();
            laid.add(new Blank("B" + ++blanks, thing, from, length));
            from = from.plus(length).plus(job.saw().crosscutKerf());
        }
        return laid;
    }

    PlanBuilder opened(String board) {
        sections.computeIfAbsent(board, id -> new ArrayList<>());
        return this;
    }

    PlanBuilder test(TestBlank test) {
        tests.add(test);
        return this;
    }

    PlanBuilder offcut(String from, Board piece) {
        offcuts.add(new Offcut(from, piece));
        return this;
    }

    PlanBuilder shortage(Shortage shortage) {
        shortages.add(shortage);
        return this;
    }

    PlanBuilder caution(String text, Integer... steps) {
        cautions.add(new Caution(List.of(steps), text));
        return this;
    }

    Plan build(Cost cost, Tally tally) {
        List<Setting> named = new ArrayList<>();
        for (Length width : settings.keySet()) {
            String id = "R" + (named.size() + 1);
            Optional<Setting.Test> test = tests.stream()
                    .filter(one -> one.proves().contains(id))
                    .findFirst()
                    .map(one -> new Setting.Test(one.id(), one.source()));
            named.add(new Setting(id, width, test));
        }
        List<CutBoard> boards = job.boards().stream()
                .filter(board -> sections.containsKey(board.id()))
                .map(board -> new CutBoard(
                        board.id(),
                        sections.getOrDefault(board.id(), List.of()).stream()
                                .map(section -> named(section, named))
                                .toList()))
                .toList();
        order(boards, named);
        Plan.Status status = shortages.isEmpty() ? Plan.Status.COMPLETE : Plan.Status.SHORT;
        return new Plan(
                job.name(),
                job.units(),
                status,
                cost,
                tally,
                boards,
                named,
                tests,
                steps,
                offcuts,
                shortages,
                cautions);
    }

    private static Section named(Section section, List<Setting> settings) {
        List<Strip> strips = section.strips().stream()
                .map(strip -> new Strip(
                        strip.id(),
                        strip.offset(),
                        strip.width(),
                        settings.stream()
                                .filter(setting -> setting.width().equals(strip.width()))
                                .map(Setting::id)
                                .findFirst(),
                        strip.blanks()))
                .toList();
        return new Section(
                section.id(), section.from(), section.to(), section.referenceEdge(), section.edgeLoss(), strips);
    }

    private void order(List<CutBoard> boards, List<Setting> settings) {
        for (CutBoard board : boards) {
            List<String> makes =
                    new ArrayList<>(board.sections().stream().map(Section::id).toList());
            makes.addAll(leftOf(board.board()));
            step(Saw.CROSSCUT, Does.BREAKDOWN, Optional.empty(), Optional.empty(), board.board(), makes);
        }
        List<Section> all =
                boards.stream().flatMap(board -> board.sections().stream()).toList();
        for (CutBoard board : boards) {
            if (!board(board.board()).rough()) continue;
            for (Section section : board.sections())
                steps.add(new Step(
                        steps.size() + 1,
                        Optional.empty(),
                        Does.MILL,
                        Optional.empty(),
                        Optional.empty(),
                        section.id(),
                        List.of(),
                        Optional.empty()));
        }
        for (Section section : all)
            if (!section.edgeLoss().isZero())
                step(Saw.RIP, Does.STRAIGHTEN, Optional.empty(), Optional.empty(), section.id(), List.of());
        settings.forEach(setting -> rips(setting, all));
        if (job.breakdown().leavesOver()) all.forEach(this::square);
        crosscuts(all.stream().flatMap(section -> section.strips().stream()).toList());
    }

    private void square(Section section) {
        for (Strip strip : section.strips())
            if (!strip.blanks().isEmpty() && strip.blanks().get(0).from().exceeds(section.from()))
                step(Saw.CROSSCUT, Does.SQUARE, Optional.empty(), Optional.empty(), strip.id(), List.of());
    }

    private void rips(Setting setting, List<Section> all) {
        Optional<String> id = Optional.of(setting.id());
        for (TestBlank test : tests) {
            boolean first = test.proves().get(0).equals(setting.id());
            boolean cut = steps.stream().anyMatch(step -> step.makes().contains(test.id()));
            if (first && !cut)
                step(Saw.CROSSCUT, Does.TRIM, Optional.empty(), Optional.empty(), test.from(), List.of(test.id()));
        }
        setting.test().ifPresent(test -> step(Saw.RIP, Does.TEST, id, Optional.empty(), test.blank(), List.of()));
        long count = all.stream()
                .flatMap(section -> section.strips().stream())
                .filter(strip -> strip.setting().equals(id))
                .count();
        boolean checked = count < 2;
        for (Section section : all) {
            List<Strip> here = section.strips().stream()
                    .filter(strip -> strip.setting().equals(id))
                    .toList();
            if (here.isEmpty()) continue;
            if (!checked) {
                rip(id, section, here.subList(0, 1));
                step(null, Does.CHECK, id, Optional.empty(), here.get(0).id(), List.of());
                here = here.subList(1, here.size());
                checked = true;
            }
            if (!here.isEmpty()) rip(id, section, here);
        }
    }

    private void rip(Optional<String> setting, Section section, List<Strip> strips) {
        List<String> makes = new ArrayList<>(strips.stream().map(Strip::id).toList());
        if (section.strips().indexOf(strips.get(strips.size() - 1))
                == section.strips().size() - 1)
            offcuts.stream().filter(one -> one.from().equals(section.id())).forEach(one -> makes.add(one.id()));
        step(Saw.RIP, Does.RIP, setting, Optional.empty(), section.id(), makes);
    }

    private void crosscuts(List<Strip> strips) {
        Set<Length> stops = new LinkedHashSet<>(strips.stream()
                .flatMap(strip -> strip.blanks().stream())
                .filter(blank -> !part(blank).fitted())
                .map(Blank::length)
                .sorted(Comparator.reverseOrder())
                .toList());
        for (Length stop : stops) {
            for (Strip strip : strips) {
                List<String> makes = new ArrayList<>(strip.blanks().stream()
                        .filter(blank ->
                                blank.length().equals(stop) && !part(blank).fitted())
                        .map(Blank::id)
                        .toList());
                if (makes.isEmpty()) continue;
                boolean last = strip.blanks().stream().noneMatch(blank -> stop.exceeds(blank.length()));
                if (last) makes.addAll(leftOf(strip.id()));
                step(Saw.CROSSCUT, Does.BLANK, Optional.empty(), Optional.of(stop), strip.id(), makes);
            }
        }
        for (Strip strip : strips)
            for (Blank blank : strip.blanks())
                if (part(blank).fitted())
                    steps.add(new Step(
                            steps.size() + 1,
                            Optional.of(Saw.CROSSCUT),
                            Does.BLANK,
                            Optional.empty(),
                            Optional.empty(),
                            strip.id(),
                            List.of(blank.id()),
                            Optional.of(Length.inches("3/8"))));
    }

    private void step(
            @org.jspecify.annotations.Nullable Saw saw,
            Does does,
            Optional<String> setting,
            Optional<Length> stop,
            String piece,
            List<String> makes) {
        steps.add(new Step(
                steps.size() + 1, Optional.ofNullable(saw), does, setting, stop, piece, makes, Optional.empty()));
    }

    private List<String> leftOf(String piece) {
        return Stream.concat(
                        offcuts.stream().filter(one -> one.from().equals(piece)).map(Offcut::id),
                        tests.stream().filter(one -> one.from().equals(piece)).map(TestBlank::id))
                .toList();
    }

    private Board board(String id) {
        return job.boards().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Part part(Blank blank) {
        return job.parts().stream()
                .filter(one -> one.name().equals(blank.part()))
                .findFirst()
                .orElseThrow();
    }

    static Cost cost(String stock, String salvage, String net, String bound, String gap) {
        return new Cost(
                new BigDecimal(stock),
                new BigDecimal(salvage),
                new BigDecimal("0.00"),
                new BigDecimal(net),
                new BigDecimal(bound),
                new BigDecimal(gap),
                net.equals(bound));
    }
}
