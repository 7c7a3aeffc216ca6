/**
 * Spreadsheets, saved as CSV: what the columns of a stack and of a bill are called, and tables written. Read {@link
 * ripwright.json.csv.Columns} and {@link ripwright.json.csv.CsvOut} first. Uses {@code tree} and Jackson's CSV.
 */
@NullMarked
package ripwright.json.csv;

import org.jspecify.annotations.NullMarked;
