package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A sheet being drawn on: takes what is drawn and remembers where lettering stands, so that none covers another. */
final class Paper {
    private final List<Shape> ground = new ArrayList<>();
    private final List<Hatch> hatches = new ArrayList<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final List<Balloon> balloons = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> kept = new ArrayList<>(); // kept clear where possible

    void ground(Shape shape) {
        ground.add(shape);
    }

    void hatch(Hatching hatching, List<Spot> corners) {
        hatches.add(new Hatch(hatching, corners));
    }

    void shape(Shape shape) {
        shapes.add(shape);
    }

    void line(Line.Pen pen, Spot from, Spot to) {
        lines.add(new Line(pen, from, to));
    }

    void words(Words text) {
        if (text.text().isEmpty()) return;
        words.add(text);
        taken.add(text.box());
    }

    void balloon(Balloon balloon) {
        balloons.add(balloon);
        taken.add(balloon.box());
    }

    /** Keeps lettering out of there where possible. */
    void keepClear(Box box) {
        kept.add(box);
    }

    /** Whether nothing is lettered there. */
    boolean free(Box box) {
        return taken.stream().noneMatch(box::overlaps);
    }

    /** Whether nothing is lettered there and nothing is to be kept clear. */
    boolean clear(Box box) {
        return free(box) && kept.stream().noneMatch(box::overlaps);
    }

    /** What is lettered in a band, from left to right. */
    List<Box> takenIn(Box band) {
        return across(taken.stream(), band);
    }

    /** What is lettered or to be kept clear in a band, from left to right. */
    List<Box> keptClearIn(Box band) {
        return across(Stream.concat(taken.stream(), kept.stream()), band);
    }

    private static List<Box> across(Stream<Box> boxes, Box band) {
        return boxes.filter(band::overlaps)
                .sorted(Comparator.comparingLong(Box::left))
                .toList();
    }

    Drawing drawing(String title, String description, long width, long height) {
        return new Drawing(title, description, width, height, ground, hatches, shapes, lines, words, balloons);
    }
}
