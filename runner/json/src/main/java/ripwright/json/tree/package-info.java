/**
 * JSON, and spreadsheets saved as CSV, read so that all mistakes of a file come at once, each with file, path, line, what was
 * found and what would be right. What takes part in a reading or a writing is for one thread: {@code Problems}, the files, {@code
 * Value}, {@code Fields} and {@code JsonOut}. Knows nothing of boards. Read {@link ripwright.json.tree.Kind} first. Uses Jackson's
 * streaming parsers.
 */
@NullMarked
package ripwright.json.tree;

import org.jspecify.annotations.NullMarked;
