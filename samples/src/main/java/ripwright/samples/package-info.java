/** How other shop software embeds the library. Read {@link ripwright.samples.BenchSlats} first. Uses {@code core}. */
@NullMarked
package ripwright.samples;

import org.jspecify.annotations.NullMarked;
