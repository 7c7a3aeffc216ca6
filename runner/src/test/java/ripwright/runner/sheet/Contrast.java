package ripwright.runner.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far two colors stand apart, from 1 to 21.
 *
 * @see "Web Content Accessibility Guidelines (W3C, 2.2), relative luminance and contrast ratio"
 */
final class Contrast {
    private static final Pattern COLOR = Pattern.compile("rgb\\((\\d+), (\\d+), (\\d+)\\)");

    private Contrast() {}

    static double of(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String color) {
        Matcher parts = COLOR.matcher(color);
        if (!parts.matches()) throw new IllegalArgumentException("Not an opaque color: " + color + ".");
        return 0.2126 * linear(parts.group(1)) + 0.7152 * linear(parts.group(2)) + 0.0722 * linear(parts.group(3));
    }

    private static double linear(String part) {
        double share = Integer.parseInt(part) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
