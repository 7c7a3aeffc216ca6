/**
 * A proven floor under what any plan of a job can cost. Read {@code Floor} first. Uses {@code measure} to
 * {@code pattern}.
 */
@NullMarked
package ripwright.bound;

import org.jspecify.annotations.NullMarked;
