/** The cutting bill. Read {@link ripwright.bill.Part} first. Uses {@code measure} and the species of {@code stock}. */
@NullMarked
package ripwright.bill;

import org.jspecify.annotations.NullMarked;
