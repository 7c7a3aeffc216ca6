/**
 * Spreadsheets, saved as CSV: what the columns of a stack and of a bill are called, and tables written. Read {@link
 * ripwright.runner.csv.Columns} and {@link ripwright.runner.csv.CsvOut} first. Uses {@code tree} and Jackson's CSV.
 */
@NullMarked
package ripwright.runner.csv;

import org.jspecify.annotations.NullMarked;
