/** Runs the core from a command line: jobs in, plans and sheets out. */
@NullMarked
package ripwright.runner;

import org.jspecify.annotations.NullMarked;
