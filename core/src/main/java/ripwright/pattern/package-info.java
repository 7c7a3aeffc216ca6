/** Exact programs for strips, sections, boards, and what they answer with. Read {@link ripwright.pattern.Layout} first. Uses {@code measure} to {@code job}. */
@NullMarked
package ripwright.pattern;

import org.jspecify.annotations.NullMarked;
