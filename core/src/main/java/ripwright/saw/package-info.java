/** What the saws take and allow, and what minutes cost. Read {@link ripwright.saw.Saw} first. Uses {@code measure}. */
@NullMarked
package ripwright.saw;

import org.jspecify.annotations.NullMarked;
