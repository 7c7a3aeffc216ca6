/**
 * Spreadsheets, saved as CSV. Read {@link ripwright.runner.csv.CsvOut} first. Uses Jackson's CSV.
 */
@NullMarked
package ripwright.runner.csv;

import org.jspecify.annotations.NullMarked;
