/**
 * Turns the layouts a search found into the whole plan: ids, test blanks, order of work, offcuts, cost, what to buy,
 * cautions. The door is {@link ripwright.sequence.Sequencer}; what else is public serves the search. Uses {@code measure}
 * to {@code job}, {@code pattern.Layout} and {@code plan}.
 */
@NullMarked
package ripwright.sequence;

import org.jspecify.annotations.NullMarked;
