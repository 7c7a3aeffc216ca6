package ripwright.runner.sheet.drawing;

import java.util.List;
import ripwright.runner.sheet.place.Region;
import ripwright.stock.Defect;

/**
 * Where a board lies on paper: its marked end to the left, its left edge up.
 *
 * @param scale how much smaller it is there
 * @param left where its marked end is
 * @param top where its left edge is
 */
record Frame(Scale scale, long left, long top) {
    private static final long THINNEST = 50; // a kerf is half a point at least, to be seen

    long x(long nanometers) {
        return left + scale.paper(nanometers);
    }

    long y(long nanometers) {
        return top + scale.paper(nanometers);
    }

    List<Spot> corners(Region region) {
        return List.of(
                new Spot(x(region.from()), y(region.left())),
                new Spot(x(region.to()), y(region.left())),
                new Spot(x(region.to()), y(region.rightAtEnd())),
                new Spot(x(region.from()), y(region.right())));
    }

    /** The upright rectangle inside a region that is as wide as its narrow end. */
    Box box(Region region) {
        return new Box(
                x(region.from()), y(region.left()), x(region.to()), y(Math.min(region.right(), region.rightAtEnd())));
    }

    Box box(Defect defect) {
        return new Box(
                x(defect.from().nanometers()),
                y(defect.left().nanometers()),
                x(defect.to().nanometers()),
                y(defect.right().nanometers()));
    }

    /** As {@link #corners}, thickened where it would be too thin to be seen. */
    List<Spot> kerf(Region region) {
        long moreX = Math.max(0, THINNEST - (x(region.to()) - x(region.from()))) / 2;
        long moreY = Math.max(0, THINNEST - (y(region.right()) - y(region.left()))) / 2;
        long start = x(region.from()) - moreX;
        long end = x(region.to()) + moreX;
        return List.of(
                new Spot(start, y(region.left()) - moreY),
                new Spot(end, y(region.left()) - moreY),
                new Spot(end, y(region.rightAtEnd()) + moreY),
                new Spot(start, y(region.right()) + moreY));
    }
}
