/**
 * The cutting bill. Read {@link ripwright.bill.Part} first. All but the builder is immutable, safe on any thread. Uses {@code
 * measure} and the species of {@code stock}.
 */
@NullMarked
package ripwright.bill;

import org.jspecify.annotations.NullMarked;
