/**
 * All that is asked of one plan. Read {@link ripwright.job.Job} first. All but the builder is immutable, safe on any thread.
 * Uses {@code measure}, {@code stock}, {@code bill}, {@code saw}.
 */
@NullMarked
package ripwright.job;

import org.jspecify.annotations.NullMarked;
