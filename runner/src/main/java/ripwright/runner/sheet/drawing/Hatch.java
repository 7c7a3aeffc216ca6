package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A convex area filled with lines, as drafting practice tells materials apart without color.
 *
 * @param hatching which lines
 * @param corners the corners of the area in turn
 */
public record Hatch(Hatching hatching, List<Spot> corners) {
    /** Keeps a copy of the list. */
    public Hatch {
        corners = List.copyOf(corners);
    }

    /** Its lines, clipped to the area. They lie on one grid for the whole drawing, so that neighbors match. */
    public List<Segment> lines() {
        List<Segment> lines = new ArrayList<>();
        for (Hatching.Family family : hatching.families()) {
            long low = corners.stream().mapToLong(family::offset).min().orElse(0);
            long high = corners.stream().mapToLong(family::offset).max().orElse(0);
            long first = Math.floorDiv(low - family.phase(), family.spacing()) * family.spacing() + family.phase();
            for (long offset = first; offset < high; offset += family.spacing()) {
                if (offset > low) clipped(family, offset, lines);
            }
        }
        return lines;
    }

    private void clipped(Hatching.Family family, long offset, List<Segment> lines) {
        List<Spot> crossings = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            long before = family.offset(a) - offset;
            long after = family.offset(b) - offset;
            if (before == after || Math.max(before, after) < 0 || Math.min(before, after) > 0) continue;
            double share = (double) before / (before - after);
            Spot crossing =
                    new Spot(a.x() + Math.round((b.x() - a.x()) * share), a.y() + Math.round((b.y() - a.y()) * share));
            if (!crossings.contains(crossing)) crossings.add(crossing);
        }
        if (crossings.size() >= 2) lines.add(new Segment(crossings.get(0), crossings.get(crossings.size() - 1)));
    }

    /** Its lines as SVG writes a path. */
    public String path() {
        StringBuilder path = new StringBuilder();
        for (Segment line : lines()) {
            path.append('M')
                    .append(line.from().x())
                    .append(' ')
                    .append(line.from().y());
            path.append('L').append(line.to().x()).append(' ').append(line.to().y());
        }
        return path.toString();
    }

    /**
     * One line of a hatch.
     *
     * @param from where it starts
     * @param to where it ends
     */
    public record Segment(Spot from, Spot to) {}
}
