package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.replay.Replay;
import ripwright.saw.Labor;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;

/**
 * The words that small plans are written in: boards and parts 1 in thick, layouts, and the plan that comes of them. All
 * numbers are inches.
 */
public final class Shop {
    private Shop() {}

    /** A job to begin with: maple and walnut at 1 a board foot, half of it salvaged. */
    public static JobBuilder bench() {
        return new JobBuilder("bench")
                .price(JobBuilder.MAPLE, BigDecimal.ONE)
                .price("walnut", BigDecimal.ONE)
                .offcuts(new Keep(in("12"), in("2")), new BigDecimal("0.5"));
    }

    public static Length in(String inches) {
        return Length.inches(inches);
    }

    public static long nm(String inches) {
        return in(inches).nanometers();
    }

    /** A clear maple board 1 in thick with two straight edges and no trim. */
    public static Board.Builder maple(String id, String width, String length) {
        return maple(id, "1", width, length);
    }

    public static Board.Builder maple(String id, String thickness, String width, String length) {
        return Board.measured(id, "maple", in(thickness), in(width), in(length));
    }

    /** A maple offcut 1 in thick with two straight edges and no trim. */
    public static Board offcut(String id, String width, String length) {
        return maple(id, width, length).onRack(History.UNKNOWN).build();
    }

    /** A hidden part 1 in thick. */
    public static Part.Builder part(String name, String length, String width) {
        return Part.of(name, in(length), in(width), in("1"));
    }

    public static Layout cut(int board, Layout.Section... sections) {
        return new Layout(board, List.of(sections));
    }

    public static Layout.Section section(String from, String to, Layout.Strip... strips) {
        return section(from, to, Edge.LEFT, "0", strips);
    }

    public static Layout.Section section(String from, String to, Edge edge, String edgeLoss, Layout.Strip... strips) {
        return new Layout.Section(nm(from), nm(to), edge, nm(edgeLoss), List.of(strips));
    }

    public static Layout.Strip strip(String width, Layout.Blank... blanks) {
        return new Layout.Strip(nm(width), List.of(blanks));
    }

    public static Layout.Blank blank(int part, String from) {
        return new Layout.Blank(part, nm(from));
    }

    public static Labor labor(String perHour, String setting, String rip, String crosscut) {
        return new Labor(
                new BigDecimal(perHour), new BigDecimal(setting), new BigDecimal(rip), new BigDecimal(crosscut));
    }

    /** The plan of those layouts, replayed. */
    public static Plan planned(JobBuilder bench, List<Layout> layouts) {
        Job job = bench.build();
        Plan plan = new Sequencer(job, layouts, Money.ZERO).plan();
        assertThat(Replay.faults(job, plan)).isEmpty();
        return plan;
    }

    /** The same. */
    public static Plan planned(JobBuilder bench, Layout... layouts) {
        return planned(bench, List.of(layouts));
    }

    /** A plan's steps as lines: {@code rip S1 at R1 -> S1, S2}. */
    public static List<String> lines(Plan plan) {
        return plan.steps().stream().map(Shop::line).toList();
    }

    private static String line(Step step) {
        StringBuilder line = new StringBuilder();
        line.append(step.n()).append(' ').append(step.does().name().toLowerCase(Locale.ROOT));
        line.append(' ').append(step.piece());
        step.setting().ifPresent(setting -> line.append(" at ").append(setting));
        step.stop().ifPresent(stop -> line.append(" at stop ").append(Unit.INCH.exact(stop)));
        if (!step.makes().isEmpty()) line.append(" -> ").append(String.join(", ", step.makes()));
        step.spare().ifPresent(spare -> line.append(", spare ").append(Unit.INCH.exact(spare)));
        return line.toString();
    }
}
