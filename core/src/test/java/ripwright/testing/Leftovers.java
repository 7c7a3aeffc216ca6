package ripwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** Every piece that one layout leaves over, large or small. */
final class Leftovers {
    private final Job job;
    private final Layout layout;
    private final Board board;
    private final long kerf; // of a crosscut
    private final List<Piece> pieces = new ArrayList<>();

    Leftovers(Job job, Layout layout) {
        this.job = job;
        this.layout = layout;
        this.board = job.boards().get(layout.board());
        this.kerf = job.saw().crosscutKerf().nanometers();
    }

    List<Piece> pieces() {
        pieces.clear();
        besideSections();
        for (Section section : layout.sections()) {
            besideLastStrip(section);
            besideBlanks(section);
        }
        return List.copyOf(pieces);
    }

    private void besideSections() {
        long end = board.length().nanometers();
        long done = 0;
        for (Section section : layout.sections()) {
            fullWidth(done == 0 ? 0 : done + kerf, section.from() - kerf);
            done = section.to();
        }
        fullWidth(done + kerf, end);
    }

    private void fullWidth(long from, long to) {
        long end = board.length().nanometers();
        long near = from == 0 ? board.endTrim().near().nanometers() : 0;
        long far = to == end ? board.endTrim().far().nanometers() : 0;
        if (to - from > near + far)
            pieces.add(new Piece(board, from, to, near, far, 0, OptionalLong.empty(), board.thickness()));
    }

    private void besideLastStrip(Section section) {
        if (board.ripped()) return;
        long ripKerf = job.saw().ripKerf().nanometers();
        long taken = section.edgeLoss();
        for (Strip strip : section.strips()) taken += strip.width() + ripKerf;
        long width = Math.min(
                board.widthAt(new Length(section.from())).nanometers(),
                board.widthAt(new Length(section.to())).nanometers());
        if (taken >= width) return;
        boolean fromLeft = section.referenceEdge() == Edge.LEFT;
        pieces.add(new Piece(
                board,
                section.from(),
                section.to(),
                0,
                0,
                fromLeft ? taken : 0,
                fromLeft ? OptionalLong.empty() : OptionalLong.of(width - taken),
                board.millsTo()));
    }

    private void besideBlanks(Section section) {
        long offset = section.edgeLoss();
        for (Strip strip : section.strips()) {
            long left = section.referenceEdge() == Edge.LEFT
                    ? offset
                    : board.width().nanometers() - offset - strip.width();
            long done = section.from();
            long cut = 0; // the kerf at the start of the gap
            for (Layout.Blank blank : strip.blanks()) {
                rectangle(done + cut, blank.from() - kerf, left, strip.width());
                done = blank.from()
                        + job.parts().get(blank.part()).blankLength().nanometers();
                cut = kerf;
            }
            rectangle(done + cut, section.to(), left, strip.width());
            offset += strip.width() + job.saw().ripKerf().nanometers();
        }
    }

    private void rectangle(long from, long to, long left, long width) {
        if (to > from)
            pieces.add(new Piece(board, from, to, 0, 0, left, OptionalLong.of(left + width), board.millsTo()));
    }
}
