package ripwright.runner.sheet.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.runner.sheet.Fixtures;
import ripwright.runner.sheet.place.Piece.Fate;
import ripwright.runner.sheet.place.SawCut.Way;

class SurveyTest {
    private final List<BoardMap> maps = new Survey(Fixtures.windowSeat(), Fixtures.windowSeatPlan()).maps();

    @Test
    void pieces_and_kerfs_cover_every_board_once() {
        for (BoardMap map : maps) {
            BigInteger covered = Stream.concat(
                            map.pieces().stream().map(Piece::region),
                            map.cuts().stream().map(SawCut::kerf))
                    .map(SurveyTest::twiceTheArea)
                    .reduce(BigInteger.ZERO, BigInteger::add);
            long length = map.board().length().nanometers();
            BigInteger whole = twiceTheArea(new Region(
                    0,
                    length,
                    0,
                    map.board().width().nanometers(),
                    map.board().widthAtFarEnd().nanometers()));
            // a slope is rounded to the nanometer at every cut across it
            BigInteger slack = map.board().tapered() ? BigInteger.valueOf(20 * length) : BigInteger.ZERO;

            assertThat(covered.subtract(whole).abs()).as(map.board().id()).isLessThanOrEqualTo(slack);
        }
    }

    private static BigInteger twiceTheArea(Region region) {
        long widths = region.right() - region.left() + region.rightAtEnd() - region.left();
        return BigInteger.valueOf(region.length()).multiply(BigInteger.valueOf(widths));
    }

    @Test
    void every_listed_leftover_has_its_place() {
        assertThat(maps).allSatisfy(map -> assertThat(map.unplaced()).isEmpty());
        assertThat(place("O3")).isEqualTo(region("33 1/8", "60", "0", "7 1/2"));
        assertThat(place("O1")).isEqualTo(region("36 5/8", "83 1/2", "2 5/8", "6 3/4"));
        assertThat(place("T1")).isEqualTo(region("0", "12", "0", "5"));
        assertThat(place("O2")).isEqualTo(region("12 1/8", "30", "0", "5"));
        assertThat(place("T2").from()).isEqualTo(nanometers("1"));
        assertThat(place("T2").to()).isEqualTo(nanometers("13"));
    }

    @Test
    void with_the_reference_edge_right_strips_are_mirrored_in_the_width() {
        assertThat(strip("S7")).isEqualTo(region("1/2", "36 1/2", "4 3/8", "6 5/8"));
        assertThat(strip("S8")).isEqualTo(region("1/2", "36 1/2", "2 3/4", "4 1/4"));
        assertThat(strip("S10")).isEqualTo(region("1/2", "36 1/2", "1/4", "1"));
    }

    @Test
    void a_tapered_section_keeps_its_sloped_edge_beside_the_last_strip() {
        Region beside = maps.get(0).pieces().stream()
                .filter(piece -> piece.fate() == Fate.WASTE && piece.id().equals("oak-1/2"))
                .findFirst()
                .orElseThrow()
                .region();

        assertThat(beside.left()).isEqualTo(nanometers("6 3/8"));
        assertThat(beside.right()).isEqualTo(nanometers("8") - (nanometers("3/4") * 43 + 95) / 96);
        assertThat(beside.rightAtEnd()).isEqualTo(nanometers("8") - (nanometers("3/4") * 95 + 95) / 96);
    }

    @Test
    void a_cut_two_blanks_share_belongs_to_the_step_that_comes_first() {
        // S5 holds a seat rail, cut in step 32, and a stile, cut in step 43, one kerf apart
        assertThat(cutsOf("S5")).containsExactly(OptionalInt.of(32), OptionalInt.of(43));
    }

    @Test
    void cuts_carry_the_step_that_makes_them() {
        assertThat(steps(Way.ACROSS_BOARD)).containsExactly(1, 1, 1, 1, 2, 2, 2, 3, 3, 4);
        assertThat(steps(Way.STRAIGHTEN)).containsExactly(7, 8);
        assertThat(steps(Way.RIP)).containsExactly(10, 12, 14, 16, 17, 17, 18, 20, 22, 23, 23, 24, 27, 29);
    }

    @Test
    void neighboring_sections_one_kerf_apart_share_one_cut() {
        assertThat(maps.get(1).cuts().stream()
                        .filter(cut -> cut.way() == Way.ACROSS_BOARD)
                        .map(SawCut::kerf))
                .contains(region("36 1/2", "36 5/8", "0", "6 3/4"))
                .hasSize(3);
    }

    private List<Integer> steps(Way way) {
        return maps.stream()
                .flatMap(map -> map.cuts().stream())
                .filter(cut -> cut.way() == way)
                .map(cut -> cut.step().orElse(-1))
                .sorted()
                .toList();
    }

    private List<OptionalInt> cutsOf(String strip) {
        Region region = strip(strip);
        return maps.stream()
                .flatMap(map -> map.cuts().stream())
                .filter(cut -> cut.way() == Way.ACROSS_STRIP
                        && cut.kerf().left() == region.left()
                        && cut.kerf().from() >= region.from())
                .map(SawCut::step)
                .toList();
    }

    private Region strip(String id) {
        return maps.stream()
                .flatMap(map -> map.strips().stream())
                .filter(strip -> strip.strip().id().equals(id))
                .findFirst()
                .orElseThrow()
                .region();
    }

    private Region place(String id) {
        return maps.stream()
                .flatMap(map -> map.pieces().stream())
                .filter(piece -> piece.fate() != Fate.WASTE && piece.id().equals(id))
                .findFirst()
                .orElseThrow()
                .region();
    }

    private static Region region(String from, String to, String left, String right) {
        return Region.of(nanometers(from), nanometers(to), nanometers(left), nanometers(right));
    }

    private static long nanometers(String inches) {
        return Length.inches(inches).nanometers();
    }
}
