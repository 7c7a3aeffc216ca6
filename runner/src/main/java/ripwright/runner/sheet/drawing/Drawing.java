package ripwright.runner.sheet.drawing;

import java.util.List;

/**
 * A drawing as geometry on paper: what to draw and where, in hundredths of a point, in the order it is drawn. How it is
 * written down is a template's business.
 *
 * @param title what it shows, in a few words
 * @param description what it shows, for who cannot see it
 * @param width of the paper it takes
 * @param height of the paper it takes
 * @param ground what lies under the hatches
 * @param hatches areas filled with lines
 * @param shapes outlines and black areas
 * @param lines straight lines
 * @param words texts, hatches and lines broken where they stand
 * @param balloons step numbers
 */
public record Drawing(
        String title,
        String description,
        long width,
        long height,
        List<Shape> ground,
        List<Hatch> hatches,
        List<Shape> shapes,
        List<Line> lines,
        List<Words> words,
        List<Balloon> balloons) {
    /** Keeps copies of the lists. */
    public Drawing {
        ground = List.copyOf(ground);
        hatches = List.copyOf(hatches);
        shapes = List.copyOf(shapes);
        lines = List.copyOf(lines);
        words = List.copyOf(words);
        balloons = List.copyOf(balloons);
    }
}
