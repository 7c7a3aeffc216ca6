package ripwright.json.tree;

import java.util.Optional;

/**
 * One thing wrong with a file.
 *
 * @param file the file, as the user knows it
 * @param path where in it, as in {@code $.stack[4].width}; {@code $} for the file as a whole
 * @param spot the same by line and column; empty when the file as a whole is wrong
 * @param what what was found and what would be right
 */
public record Mistake(String file, String path, Optional<Spot> spot, String what) {
    /**
     * A place in a text.
     *
     * @param line from 1
     * @param column from 1
     * @param excerpt the line, or as much of it as is worth showing, free of control characters
     * @param caret the place's column in the excerpt, from 0
     */
    public record Spot(int line, int column, String excerpt, int caret) {}
}
