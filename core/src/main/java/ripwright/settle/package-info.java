/**
 * What booking a finished plan does to stack and rack. Read {@link ripwright.settle.Settling} first. Uses {@code measure} to
 * {@code job} and {@code plan}. Immutable, safe on any thread.
 */
@NullMarked
package ripwright.settle;

import org.jspecify.annotations.NullMarked;
