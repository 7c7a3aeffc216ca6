package ripwright.json;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import ripwright.job.Limits;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;

/** How hard to look for a plan. */
final class LimitsFields extends ObjectKind<Limits> {
    private static final int MOST_THREADS = 256;

    @Override
    public String expected() {
        return "an object with seconds, seed or threads";
    }

    @Override
    protected Limits read(Fields fields) {
        Optional<BigDecimal> seconds = fields.optional("seconds", Amounts.seconds());
        Optional<Long> seed = fields.optional("seed", Kinds.whole(Long.MIN_VALUE, Long.MAX_VALUE));
        Optional<Integer> threads = fields.optional("threads", Kinds.wholeInt(1, MOST_THREADS));
        return fields.build(
                () -> new Limits(
                        seconds,
                        seed.map(OptionalLong::of).orElseGet(OptionalLong::empty),
                        threads.map(OptionalInt::of).orElseGet(OptionalInt::empty)),
                () -> Limits.NONE);
    }
}
