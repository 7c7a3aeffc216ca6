package ripwright.runner.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CalloutsTest {
    private static final long TOP = 10_000;
    private static final long RIGHT = 70_000;

    @Test
    void labels_far_apart_share_a_row() {
        Callouts callouts = new Callouts();
        callouts.name(new Spot(5_000, 500), "knot");
        callouts.name(new Spot(50_000, 500), "wane");

        assertThat(callouts.draw(new Paper(), TOP, RIGHT)).isEqualTo(TOP + Callouts.ROW);
    }

    @Test
    void a_label_that_would_cross_the_line_of_the_next_goes_below_it() {
        Callouts callouts = new Callouts();
        callouts.name(new Spot(5_000, 500), "mineral streak");
        callouts.number(new Spot(6_000, 500), 12);
        Paper paper = new Paper();

        assertThat(callouts.draw(paper, TOP, RIGHT)).isEqualTo(TOP + 2 * Callouts.ROW);
        Drawing drawing = drawing(paper);
        assertThat(drawing.balloons().get(0).y()).isLessThan(TOP + Callouts.ROW);
        assertThat(drawing.words().get(0).y()).isGreaterThan(TOP + Callouts.ROW);
    }

    @Test
    void a_label_at_the_right_edge_is_moved_in() {
        Callouts callouts = new Callouts();
        callouts.name(new Spot(RIGHT - 100, 500), "mineral streak");
        Paper paper = new Paper();
        callouts.draw(paper, TOP, RIGHT);

        assertThat(drawing(paper).words().get(0).box().right()).isLessThanOrEqualTo(RIGHT);
    }

    @Test
    void no_label_covers_another_or_a_line_that_leads_past_it() {
        Callouts callouts = new Callouts();
        for (int i = 0; i < 40; i++) callouts.name(new Spot(2_000 + i * 1_700L, 500), "B" + i + " rail");
        Paper paper = new Paper();
        callouts.draw(paper, TOP, RIGHT);
        Drawing drawing = drawing(paper);
        List<Box> labels =
                new ArrayList<>(drawing.words().stream().map(Words::box).toList());

        for (int i = 0; i < labels.size(); i++)
            assertThat(labels.subList(i + 1, labels.size())).noneMatch(labels.get(i)::overlaps);
        for (Line line : drawing.lines())
            assertThat(labels)
                    .noneMatch(label -> line.from().x() > label.left()
                            && line.from().x() < label.right()
                            && line.to().y() > label.bottom());
    }

    @Test
    void what_finds_no_row_is_counted_and_left_to_the_tables() {
        Callouts callouts = new Callouts();
        for (int i = 0; i < 20; i++) callouts.name(new Spot(2_000 + i * 10L, 500), "a rather long label");
        Paper paper = new Paper();
        callouts.draw(paper, TOP, RIGHT);
        List<String> texts = drawing(paper).words().stream().map(Words::text).toList();

        assertThat(texts.get(texts.size() - 1))
                .isEqualTo((20 - (texts.size() - 1)) + " more too small to label here; the tables name them.");
    }

    private static Drawing drawing(Paper paper) {
        return paper.drawing("", "", 72_000, 30_000);
    }
}
