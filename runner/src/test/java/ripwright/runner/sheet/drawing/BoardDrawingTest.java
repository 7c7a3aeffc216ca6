package ripwright.runner.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ripwright.measure.Unit;
import ripwright.runner.sheet.Fixtures;
import ripwright.runner.sheet.drawing.Shape.Look;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Piece;
import ripwright.runner.sheet.place.SawCut;
import ripwright.runner.sheet.place.Survey;

class BoardDrawingTest {
    private final List<BoardMap> maps = new Survey(Fixtures.windowSeat(), Fixtures.windowSeatPlan()).maps();
    private final Scale scale = Scale.fitting(maps.stream().map(BoardMap::board).toList());
    private final List<Drawing> drawings = maps.stream()
            .map(map -> new BoardDrawing("", map, Unit.INCH, scale).drawing())
            .toList();

    @Test
    void boards_are_drawn_true_to_one_scale() {
        // 96 in are 6912 pt; at 1 : 15 that is 460.8 pt
        assertThat(scale.denominator()).isEqualTo(15);
        assertThat(drawings.stream()
                        .map(drawing -> extent(drawing.ground().get(0).corners()))
                        .toList())
                .containsExactly(
                        List.of(46_080L, 3_840L),
                        List.of(40_320L, 3_240L),
                        List.of(28_800L, 3_600L),
                        List.of(14_400L, 2_400L));
    }

    @Test
    void a_tapered_board_is_drawn_tapered() {
        List<Spot> corners = drawings.get(0).ground().get(0).corners();

        assertThat(corners.get(3).y() - corners.get(0).y()).isEqualTo(3_840); // 8 in
        assertThat(corners.get(2).y() - corners.get(1).y()).isEqualTo(3_480); // 7 1/4 in
    }

    @Test
    void pieces_and_kerfs_are_drawn_where_they_lie() {
        for (int i = 0; i < maps.size(); i++) {
            Spot origin = drawings.get(i).ground().get(0).corners().get(0);
            List<List<Long>> drawn = drawings.get(i).shapes().stream()
                    .filter(shape -> shape.look() == Look.PIECE)
                    .map(shape -> List.of(
                            shape.corners().get(0).x() - origin.x(),
                            shape.corners().get(0).y() - origin.y(),
                            shape.corners().get(2).x() - origin.x(),
                            shape.corners().get(3).y() - origin.y()))
                    .toList();
            List<List<Long>> due = maps.get(i).pieces().stream()
                    .filter(piece -> piece.fate() != Piece.Fate.WASTE)
                    .map(Piece::region)
                    .map(region -> List.of(
                            scale.paper(region.from()),
                            scale.paper(region.left()),
                            scale.paper(region.to()),
                            scale.paper(region.right())))
                    .toList();

            assertThat(drawn).containsExactlyElementsOf(due);
        }
    }

    @Test
    void a_kerf_is_as_wide_as_the_scale_says_where_that_can_be_seen() {
        long eighth = scale.paper(3_175_000); // 9 pt / 15
        Shape first = drawings.get(0).shapes().stream()
                .filter(shape -> shape.look() == Look.KERF)
                .findFirst()
                .orElseThrow();

        assertThat(eighth).isEqualTo(60);
        assertThat(extent(first.corners()).get(0)).isCloseTo(eighth, within(1L));
    }

    @Test
    void every_cut_is_numbered_as_the_step_that_makes_it() {
        for (int i = 0; i < maps.size(); i++) {
            Set<Integer> due = maps.get(i).cuts().stream()
                    .map(SawCut::step)
                    .map(step -> step.orElse(-1))
                    .collect(Collectors.toSet());
            Drawing drawing = drawings.get(i);
            String words = drawing.words().stream().map(Words::text).collect(Collectors.joining(" "));
            Set<Integer> numbers =
                    drawing.balloons().stream().map(Balloon::step).collect(Collectors.toSet());

            assertThat(due).allMatch(step -> numbers.contains(step) || words.contains("(" + step + ")"));
        }
    }

    @Test
    void no_lettering_covers_another_and_none_leaves_the_paper() {
        for (Drawing drawing : drawings) {
            List<Box> boxes =
                    new ArrayList<>(drawing.words().stream().map(Words::box).toList());
            drawing.balloons()
                    .forEach(balloon ->
                            boxes.add(Box.around(balloon.x(), balloon.y(), balloon.width(), Balloon.HEIGHT)));
            for (int i = 0; i < boxes.size(); i++) {
                Box box = boxes.get(i);
                assertThat(boxes.subList(i + 1, boxes.size())).noneMatch(box::overlaps);
                assertThat(box.left()).isNotNegative();
                assertThat(box.top()).isNotNegative();
                assertThat(box.right()).isLessThanOrEqualTo(drawing.width());
                assertThat(box.bottom()).isLessThanOrEqualTo(drawing.height());
            }
        }
    }

    @Test
    void a_short_board_takes_half_the_width() {
        assertThat(drawings.stream().map(Drawing::width))
                .containsExactly(BoardDrawing.WIDTH, BoardDrawing.WIDTH, BoardDrawing.WIDTH, BoardDrawing.HALF_WIDTH);
    }

    @Test
    void a_strip_too_thin_for_lettering_is_called_out_with_its_blanks_and_their_step() {
        assertThat(drawings.get(1).words().stream().map(Words::text))
                .contains("S10, 3/4: B15 bead (39)", "S12, 3/4: B19 bead (40)");
    }

    @Test
    void strips_carry_their_widths_and_defects_where_they_lie_so_that_the_marked_end_can_be_checked() {
        assertThat(drawings.get(0).words().stream().map(Words::text))
                .contains("S1, 2 1/4", "knot 40 to 42 1/2, 3 to 4 1/4 across");
    }

    @Test
    void lettering_is_nine_points_at_least() {
        assertThat(Lettering.values()).allMatch(lettering -> lettering.size() >= 900);
    }

    @Test
    void the_reference_edge_is_drawn_on_the_side_that_rides_the_fence() {
        long top = drawings.get(1).ground().get(0).corners().get(0).y();
        long eighth = scale.paper(3_175_000);

        assertThat(drawings.get(1).lines().stream()
                        .filter(line -> line.pen() == Line.Pen.REFERENCE)
                        .map(line -> line.from().y() - top))
                .containsExactly(scale.paper(168_275_000), eighth); // right: 6 3/4 - 1/8 in from the left edge
    }

    @Test
    void a_board_fits_a_page_of_either_paper() {
        // within 12 mm margins A4 leaves 527.2 by 773.9 pt, Letter 544.0 by 724.0 pt
        assertThat(drawings).allSatisfy(drawing -> {
            assertThat(drawing.width()).isLessThanOrEqualTo(52_715);
            assertThat(drawing.height()).isLessThanOrEqualTo(72_396);
        });
    }

    private static List<Long> extent(List<Spot> corners) {
        long left = corners.stream().mapToLong(Spot::x).min().orElseThrow();
        long right = corners.stream().mapToLong(Spot::x).max().orElseThrow();
        long top = corners.stream().mapToLong(Spot::y).min().orElseThrow();
        long bottom = corners.stream().mapToLong(Spot::y).max().orElseThrow();
        return List.of(right - left, bottom - top);
    }
}
