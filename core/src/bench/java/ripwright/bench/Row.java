package ripwright.bench;

import java.math.BigDecimal;
import java.util.function.IntFunction;

/**
 * A row of the table: jobs of one kind.
 *
 * @param name what the table calls it
 * @param seconds how long each may be planned
 * @param size how many jobs
 * @param cases draws each of them, when its turn comes
 */
record Row(String name, BigDecimal seconds, int size, IntFunction<Case> cases) {}
