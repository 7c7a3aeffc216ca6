/**
 * What the saws take and allow, and what minutes cost. Read {@link ripwright.saw.Saw} first. Immutable, safe on any thread.
 * Uses {@code measure}.
 */
@NullMarked
package ripwright.saw;

import org.jspecify.annotations.NullMarked;
