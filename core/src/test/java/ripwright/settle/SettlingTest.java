package ripwright.settle;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.testing.JobBuilder;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

class SettlingTest {
    private static final Options QUICK = Options.defaults().withMostRecuts(40);

    @Test
    void settled_and_unsettled_the_rack_is_what_it_was() {
        Seeds.each(40, (random, size) -> {
            Job job = RandomJobs.growing(random, size / 2);
            Plan plan = Planner.plan(job, QUICK);
            List<Board> rack = shuffled(job.rack(), random);
            Settling settling = new Settling(job, plan, rack);
            assertThat(settling.missing()).isEmpty();
            assertThat(Replay.faults(settling.job(), plan)).isEmpty();
            Settlement settlement = settling.settlement(Set.of(), "today");
            List<Board> after = settlement.settled(rack);
            assertThat(settlement.gone(after)).isEmpty();
            assertThat(settlement.inTheWay(after)).isEmpty();
            assertThat(settlement.unsettled(after)).isEqualTo(rack);
        });
    }

    /** Offcuts feed the next job; none is lost, none is there twice, and all is undone one by one. */
    @Test
    void one_job_after_another_and_all_of_them_undone() {
        Seeds.each(12, (random, size) -> {
            List<List<Board>> racks = new ArrayList<>(List.of(List.of()));
            List<Settlement> settlements = new ArrayList<>();
            Set<String> used = new HashSet<>();
            for (int i = 0; i < 3; i++) {
                List<Board> rack = racks.get(i);
                Job job = onRack(RandomJobs.growing(random, size / 2), rack);
                Settlement settlement = new Settling(job, Planner.plan(job, QUICK), rack).settlement(used, "day " + i);
                for (Board entered : settlement.entered())
                    assertThat(used.add(entered.id())).isTrue();
                List<Board> after = settlement.settled(rack);
                assertThat(after.stream().map(Board::id)).doesNotHaveDuplicates();
                assertThat(after.stream().map(Settlement::markKey)).doesNotHaveDuplicates();
                assertThat(after)
                        .hasSize(rack.size()
                                - settlement.taken().size()
                                + settlement.entered().size());
                settlements.add(settlement);
                racks.add(after);
            }
            for (int i = 2; i >= 0; i--)
                assertThat(settlements.get(i).unsettled(racks.get(i + 1))).isEqualTo(racks.get(i));
        });
    }

    /** The plan takes the longer of two offcuts, as more of it is left; of the other, which the part might have come from, no more is said. */
    @Test
    void a_part_that_may_come_from_an_offcut_the_plan_does_not_take_is_booked_all_the_same() {
        List<Board> rack = List.of(offcut("R1", "30"), offcut("R2", "60"));
        Job job = new JobBuilder("Stool")
                .price("ash", new BigDecimal("6"))
                .salvage(new BigDecimal("0.5"))
                .rack(rack)
                .parts(List.of(JobBuilder.part("leg", 1, "25", "2")
                        .boards(Set.of("R1", "R2"))
                        .build()))
                .build();
        Plan plan = Planner.plan(job, QUICK);
        Settling settling = new Settling(job, plan, rack);
        assertThat(settling.job().rack()).extracting(Board::id).containsExactly("R2");
        assertThat(settling.job().parts().get(0).boards()).containsExactly("R2");
        assertThat(Replay.faults(settling.job(), plan)).isEmpty();
    }

    private static Board offcut(String id, String length) {
        return Board.measured(id, "ash", Length.inches("3/4"), Length.inches("3"), Length.inches(length))
                .onRack(History.UNKNOWN)
                .build();
    }

    private static Job onRack(Job job, List<Board> rack) {
        return JobBuilder.like(job, job.name(), rack, job.parts()).build();
    }

    private static List<Board> shuffled(List<Board> rack, SplittableRandom random) {
        List<Board> shuffled = new ArrayList<>(rack);
        for (int i = shuffled.size() - 1; i > 0; i--)
            shuffled.set(i, shuffled.set(random.nextInt(i + 1), shuffled.get(i)));
        return shuffled;
    }
}
