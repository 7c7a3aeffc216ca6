/**
 * A job in bare numbers, a layout priced by them, and what the test wood of an answer costs. Read {@link
 * ripwright.internal.model.JobNumbers} first. Uses {@code measure} to {@code job} and {@code geometry}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.model;

import org.jspecify.annotations.NullMarked;
