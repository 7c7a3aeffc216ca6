package ripwright.runner.sheet.drawing;

/**
 * A line of text.
 *
 * @param lettering how it is lettered
 * @param anchor which part of it stands at {@code x}
 * @param x in hundredths of a point
 * @param y its baseline
 * @param text what it says
 */
public record Words(Lettering lettering, Anchor anchor, long x, long y, String text) {
    /** Which part of a text stands at its spot, by the names SVG has for it. */
    public enum Anchor {
        /** It starts there. */
        START("start"),
        /** Its middle is there. */
        MIDDLE("middle"),
        /** It ends there. */
        END("end");

        private final String svg;

        Anchor(String svg) {
            this.svg = svg;
        }

        /** As SVG's text-anchor has it. */
        public String svg() {
            return svg;
        }
    }

    /** Its left side. */
    public long left() {
        return switch (anchor) {
            case START -> x;
            case MIDDLE -> x - width() / 2;
            case END -> x - width();
        };
    }

    /** Its upper side. */
    public long top() {
        return y - lettering.rise() - 40;
    }

    /** About how wide it is. */
    public long width() {
        return lettering.width(text);
    }

    /** How high it is without what hangs below the baseline. */
    public long height() {
        return lettering.rise() + 100;
    }

    Box box() {
        return new Box(left(), top(), left() + width(), top() + height());
    }
}
