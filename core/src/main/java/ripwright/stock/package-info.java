/**
 * What lies in the stack and on the rack. Read {@link ripwright.stock.Board} first. All but the builder is immutable, safe
 * on any thread. Uses {@code measure}.
 */
@NullMarked
package ripwright.stock;

import org.jspecify.annotations.NullMarked;
