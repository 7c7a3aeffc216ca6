package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.labor;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.nm;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.strip;

import java.util.List;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.testing.JobBuilder;
import ripwright.testing.Printed;
import ripwright.testing.Slivers;

/** What is left over by next to nothing: a plan's own figures and the judge's, as it is made and as its file has it. */
public class SliverTest {
    private static final long KERF = nm("0.125");
    private static final long RAIL = nm("20");

    private record Cut(JobBuilder shop, Layout layout) {}

    private static Layout.Section section(long from, long to, long edgeLoss, Layout.Strip... strips) {
        return new Layout.Section(from, to, Edge.LEFT, edgeLoss, List.of(strips));
    }

    private static Layout.Strip rail() {
        return strip("2", blank(0, "0"));
    }

    private static JobBuilder rails(Board.Builder... boards) {
        return bench().labor(labor("60", "1", "1", "1")).stack(boards).parts(part("rail", "20", "2"));
    }

    private static JobBuilder twoRails(Board.Builder... boards) {
        return bench().labor(labor("60", "1", "1", "1"))
                .stack(boards)
                .parts(part("rail", "20", "2").count(2));
    }

    /** In inches the file rounds, in millimeters it is exact. */
    private static void holds(LongFunction<Cut> of) {
        for (Unit unit : Unit.values())
            Slivers.all().forEach(sliver -> {
                Cut cut = of.apply(sliver);
                Job job = cut.shop().units(unit).build();
                Plan plan = new Sequencer(job, List.of(cut.layout()), Money.ZERO).plan();
                assertThat(Replay.faults(job, plan))
                        .as("%s nm, as planned", sliver)
                        .isEmpty();
                assertThat(Replay.faults(job, Printed.plan(plan)))
                        .as("%s nm, in %s", sliver, unit)
                        .isEmpty();
            });
    }

    private static Board.Builder long_(long nanometers) {
        return maple("a", "6", "1").length(new Length(nanometers));
    }

    @Test
    void a_blank_a_little_shorter_than_its_strip() {
        holds(sliver -> new Cut(rails(long_(RAIL + sliver)), cut(0, section(0, RAIL + sliver, 0, rail()))));
    }

    @Test
    void a_blank_a_little_behind_its_strips_start() {
        holds(sliver -> new Cut(
                rails(long_(RAIL + sliver)),
                cut(0, section(0, RAIL + sliver, 0, new Layout.Strip(nm("2"), List.of(new Layout.Blank(0, sliver)))))));
    }

    @Test
    void ripped_stock_a_little_longer_than_its_blank() {
        holds(sliver -> new Cut(
                rails(maple("a", "2", "1").length(new Length(RAIL + sliver)).ripped(true)),
                cut(0, section(0, RAIL + sliver, 0, rail()))));
    }

    @Test
    void blanks_a_little_more_than_a_kerf_apart() {
        holds(sliver -> new Cut(
                twoRails(long_(2 * RAIL + KERF + sliver)),
                cut(
                        0,
                        section(
                                0,
                                2 * RAIL + KERF + sliver,
                                0,
                                new Layout.Strip(
                                        nm("2"),
                                        List.of(new Layout.Blank(0, 0), new Layout.Blank(0, RAIL + KERF + sliver)))))));
    }

    @Test
    void blanks_a_little_more_than_two_kerfs_apart() {
        holds(sliver -> new Cut(
                twoRails(long_(2 * RAIL + 2 * KERF + sliver)),
                cut(
                        0,
                        section(
                                0,
                                2 * RAIL + 2 * KERF + sliver,
                                0,
                                new Layout.Strip(
                                        nm("2"),
                                        List.of(
                                                new Layout.Blank(0, 0),
                                                new Layout.Blank(0, RAIL + 2 * KERF + sliver)))))));
    }

    @Test
    void sections_a_little_more_than_a_kerf_apart_and_a_little_off_the_boards_ends() {
        holds(sliver -> {
            long second = sliver + RAIL + KERF + sliver;
            Layout.Strip near = new Layout.Strip(nm("2"), List.of(new Layout.Blank(0, sliver)));
            Layout.Strip far = new Layout.Strip(nm("2"), List.of(new Layout.Blank(0, second)));
            return new Cut(
                    twoRails(long_(second + RAIL + sliver)),
                    cut(0, section(sliver, sliver + RAIL, 0, near), section(second, second + RAIL, 0, far)));
        });
    }

    @Test
    void trims_of_next_to_nothing() {
        holds(sliver -> new Cut(
                rails(maple("a", "2", "1")
                        .length(new Length(RAIL + 2 * sliver))
                        .endTrim(new Length(sliver), new Length(sliver))
                        .ripped(true)),
                cut(
                        0,
                        section(
                                sliver,
                                sliver + RAIL,
                                0,
                                new Layout.Strip(nm("2"), List.of(new Layout.Blank(0, sliver)))))));
    }

    @Test
    void an_edge_that_gives_up_next_to_nothing() {
        holds(sliver -> new Cut(rails(long_(RAIL)), cut(0, section(0, RAIL, sliver, rail()))));
    }

    @Test
    void a_section_a_little_wider_than_its_strips() {
        for (long kerfs = 0; kerfs <= 1; kerfs++) {
            long beside = kerfs * KERF;
            holds(sliver -> {
                Length width = new Length(nm("2") + beside + sliver);
                return new Cut(rails(long_(RAIL).width(width, width)), cut(0, section(0, RAIL, 0, rail())));
            });
        }
    }

    @Test
    void strips_a_little_narrower_than_others() {
        holds(sliver -> new Cut(
                rails(long_(RAIL))
                        .parts(ripwright.bill.Part.of("slat", in("20"), new Length(nm("2") - sliver), in("1"))),
                cut(
                        0,
                        section(
                                0,
                                RAIL,
                                0,
                                rail(),
                                new Layout.Strip(nm("2") - sliver, List.of(new Layout.Blank(1, 0)))))));
    }

    @Test
    void a_leftover_a_little_larger_or_smaller_than_the_rack_keeps() {
        for (int sign : new int[] {-1, 1})
            holds(sliver -> {
                long left = nm("12") + sign * sliver;
                long length = RAIL + KERF + left;
                Length width = new Length(nm("2") + KERF + nm("2") + sign * sliver);
                return new Cut(rails(long_(length).width(width, width)), cut(0, section(0, length, 0, rail())));
            });
    }

    @Test
    void a_test_blank_a_little_shorter_than_its_piece() {
        holds(sliver -> new Cut(
                rails(long_(RAIL), maple("t", "3", "1").length(new Length(nm("12") + sliver)))
                        .tries(1),
                cut(0, section(0, RAIL, 0, rail()))));
        holds(sliver -> new Cut(
                rails(
                                long_(RAIL),
                                maple("t", "3", "1")
                                        .length(new Length(nm("24.125") + sliver))
                                        .endTrim(new Length(sliver), Length.ZERO))
                        .tries(2),
                cut(0, section(0, RAIL, 0, rail()))));
    }
}
