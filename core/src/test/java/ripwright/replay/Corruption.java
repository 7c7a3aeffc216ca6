package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import ripwright.job.Job;

/**
 * One way to spoil a good plan, and all that replay says of it then.
 *
 * @param name what is spoiled
 * @param good the plan as it was, and its job
 * @param spoilt both as they are now
 * @param messages what is said, in this order
 */
record Corruption(String name, Sample good, Sample spoilt, List<String> messages) {
    /** Of the plan. */
    static Corruption of(String name, Sample good, Consumer<Draft> spoil, String... messages) {
        Draft draft = new Draft(good.plan());
        spoil.accept(draft);
        return new Corruption(name, good, new Sample(good.job(), draft.plan()), List.of(messages));
    }

    /** Of the job: the plan is a good one for another. */
    static Corruption ofJob(String name, Sample good, UnaryOperator<Job> spoil, String... messages) {
        return new Corruption(name, good, new Sample(spoil.apply(good.job()), good.plan()), List.of(messages));
    }

    /** And of the plan, too, so that nothing else is wrong. */
    Corruption and(Consumer<Draft> edit) {
        Draft draft = new Draft(spoilt.plan());
        edit.accept(draft);
        return new Corruption(name, good, new Sample(spoilt.job(), draft.plan()), messages);
    }

    void isRefused() {
        assertThat(good.faults()).isEmpty();
        assertThat(spoilt.faults()).containsExactlyElementsOf(messages);
    }

    @Override
    public String toString() {
        return name;
    }
}
