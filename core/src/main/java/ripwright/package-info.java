/**
 * The one door of the library: {@code Planner} takes a job and gives a plan that replay has accepted. Uses every
 * other package.
 */
@NullMarked
package ripwright;

import org.jspecify.annotations.NullMarked;
