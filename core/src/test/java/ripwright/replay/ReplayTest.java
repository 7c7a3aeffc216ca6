package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.plan.Plan;

class ReplayTest {
    private static final Sample RAILS = BenchRails.sample();

    @Test
    void a_plan_that_holds_passes() {
        assertThatCode(() -> Replay.require(RAILS.job(), RAILS.plan())).doesNotThrowAnyException();
    }

    @Test
    void a_plan_that_does_not_hold_is_refused_with_all_its_faults() {
        Plan spoilt = new Draft(RAILS.plan()).job("bench").minutes("20.50").plan();
        assertThatThrownBy(() -> Replay.require(RAILS.job(), spoilt))
                .isInstanceOfSatisfying(
                        ReplayException.class,
                        refused -> assertThat(refused.faults()).isEqualTo(Replay.faults(RAILS.job(), spoilt)))
                .hasMessage("""
                        The plan does not hold: 2 faults.
                          plan: its job is "bench"; "bench rails" is due. [5.head]
                          plan: minutes is 20.50; 19.50 is due for 1 setting, 3 rips and 9 crosscuts. [4.labor]""");
    }

    @Test
    void one_fault_is_called_one() {
        Plan spoilt = new Draft(RAILS.plan()).job("bench").plan();
        assertThatThrownBy(() -> Replay.require(RAILS.job(), spoilt)).hasMessage("""
                        The plan does not hold: 1 fault.
                          plan: its job is "bench"; "bench rails" is due. [5.head]""");
    }

    @Test
    void a_fault_says_piece_what_and_rule() {
        assertThat(Replay.faults(
                        RAILS.job(), new Draft(RAILS.plan()).job("bench").plan()))
                .isEqualTo(List.of(new Fault("plan", "its job is \"bench\"; \"bench rails\" is due.", "5.head")));
    }
}
