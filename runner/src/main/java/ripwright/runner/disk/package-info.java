/**
 * Files that a power cut finds old or new, never half of one: {@link ripwright.runner.disk.WholeFile} for one, {@link
 * ripwright.runner.disk.Changes} for several that belong together, {@link ripwright.runner.disk.LockFile} against two runs at
 * once. All that is done to a disk is done through {@link ripwright.runner.disk.Disk}. Uses {@code tree}.
 */
@NullMarked
package ripwright.runner.disk;

import org.jspecify.annotations.NullMarked;
