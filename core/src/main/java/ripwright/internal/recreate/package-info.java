/**
 * Ruin and recreate: cuts a few boards again from a pool of blanks. Read {@link
 * ripwright.internal.recreate.RuinAndRecreate} first. Uses {@code model}, {@code knapsack}.
 *
 * @see "G. Schrimpf et al., Record breaking optimization results using the ruin and recreate principle, Journal of
 *     Computational Physics 159 (2000) 139-171; pages from memory"
 */
@NullMarked
package ripwright.internal.recreate;

import org.jspecify.annotations.NullMarked;
