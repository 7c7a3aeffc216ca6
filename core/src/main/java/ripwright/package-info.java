/**
 * The one door of the library: {@code Planner} takes a job and gives a plan that replay has accepted. Uses every
 * other package. Keeps no state, and what it gives and takes is immutable: safe on any thread.
 */
@NullMarked
package ripwright;

import org.jspecify.annotations.NullMarked;
