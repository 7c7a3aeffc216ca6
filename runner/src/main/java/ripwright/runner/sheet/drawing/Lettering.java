package ripwright.runner.sheet.drawing;

/** Kinds of lettering, all large enough to read at arm's length, and how much room a text takes in them. */
public enum Lettering {
    /** A board's name. */
    TITLE(1100, true),
    /** Ids of pieces. */
    ID(900, true),
    /** Names, readings and remarks. */
    LABEL(900, false),
    /** Numbers of steps. */
    STEP(900, true);

    /**
     * Widths of the characters 32 to 126 in thousandths of the size: Helvetica's, which Arial and its free twins share. From
     * memory.
     */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500,
                556,
        556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500,
                334,
        260, 334, 584
    };

    private static final String ELLIPSIS = "\u2026";

    private final long size;
    private final boolean bold;

    Lettering(long size, boolean bold) {
        this.size = size;
        this.bold = bold;
    }

    /** Its size, in hundredths of a point. */
    public long size() {
        return size;
    }

    /** Whether it is bold. */
    public boolean bold() {
        return bold;
    }

    /** How high its capitals and digits are. */
    public long rise() {
        return size * 72 / 100;
    }

    /** About how wide a text is in it; rather too wide than too narrow. */
    public long width(String text) {
        long thousandths = text.codePoints().mapToLong(Lettering::width).sum();
        return (thousandths * size * (bold ? 108 : 100) + 99_999) / 100_000;
    }

    private static int width(int character) {
        if (character >= 32 && character <= 126) return WIDTHS[character - 32];
        return switch (Character.getType(character)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            case Character.OTHER_LETTER, Character.OTHER_SYMBOL, Character.SURROGATE, Character.UNASSIGNED -> 1250;
            default -> 800;
        };
    }

    /** As much of a text as fits into {@code room}, three characters at least before the ellipsis; else nothing. */
    public String fitted(String text, long room) {
        if (width(text) <= room) return text;
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + ELLIPSIS) > room) end = text.offsetByCodePoints(end, -1);
        String start = text.substring(0, end).stripTrailing();
        return start.codePointCount(0, start.length()) < 3 ? "" : start + ELLIPSIS;
    }
}
