package ripwright.runner.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What was printed, page by page. */
final class Printout {
    private static final Logger FONTS = Logger.getLogger("org.apache.pdfbox.pdmodel.font");

    static {
        FONTS.setLevel(Level.SEVERE); // glyphs nobody can name are no news here
    }

    private final List<Page> pages = new ArrayList<>();

    /**
     * A printed page.
     *
     * @param width in points
     * @param height in points
     * @param text line by line, single spaces between words
     * @param left where the leftmost letter starts
     * @param top where the topmost letter starts
     * @param right where the rightmost letter ends
     * @param bottom the lowest baseline
     */
    record Page(double width, double height, String text, double left, double top, double right, double bottom) {}

    Printout(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                Letters letters = new Letters();
                letters.setSortByPosition(true);
                letters.setStartPage(i + 1);
                letters.setEndPage(i + 1);
                String text = letters.getText(document).replaceAll("[ \\t\\u00a0]+", " ");
                PDPage page = document.getPage(i);
                pages.add(new Page(
                        page.getMediaBox().getWidth(),
                        page.getMediaBox().getHeight(),
                        text,
                        letters.left,
                        letters.top,
                        letters.right,
                        letters.bottom));
            }
        }
    }

    List<Page> pages() {
        return pages;
    }

    String text() {
        return String.join("\n", pages.stream().map(Page::text).toList());
    }

    private static final class Letters extends PDFTextStripper {
        private double left = Double.MAX_VALUE;
        private double top = Double.MAX_VALUE;
        private double right;
        private double bottom;

        @Override
        protected void writeString(String text, List<TextPosition> positions) throws IOException {
            for (TextPosition letter : positions) {
                left = Math.min(left, letter.getX());
                top = Math.min(top, letter.getY() - letter.getHeight());
                right = Math.max(right, letter.getX() + letter.getWidth());
                bottom = Math.max(bottom, letter.getY());
            }
            super.writeString(text, positions);
        }
    }
}
