/**
 * The command line. Read {@link ripwright.runner.cli.Ripwright} first. Uses {@code json} to read and write, {@code sheet} to
 * draw, and the door of {@code core}.
 */
@NullMarked
package ripwright.runner.cli;

import org.jspecify.annotations.NullMarked;
