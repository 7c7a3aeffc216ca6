/** What a new user begins with: a small job, ready to be planned and changed. Read {@link ripwright.runner.start.Starter}. */
@NullMarked
package ripwright.runner.start;

import org.jspecify.annotations.NullMarked;
