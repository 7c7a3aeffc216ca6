/**
 * The rack between jobs: books finished plans and takes them back. Read {@link ripwright.runner.rack.Desk} first. Uses {@code
 * json} for the files, {@code disk} to keep them whole, and {@code settle} and {@code replay} of the core.
 */
@NullMarked
package ripwright.runner.rack;

import org.jspecify.annotations.NullMarked;
