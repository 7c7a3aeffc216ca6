/**
 * Re-enacts a plan on its job's boards and says whatever does not hold. Read {@link ripwright.replay.Replay} first.
 * Keeps no state, and what it gives is immutable: safe on any thread. Uses {@code measure} to {@code job} and {@code plan};
 * nothing that packs, so that it cannot share a mistake with it.
 */
@NullMarked
package ripwright.replay;

import org.jspecify.annotations.NullMarked;
