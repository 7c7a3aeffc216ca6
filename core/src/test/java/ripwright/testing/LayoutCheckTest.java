package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Blank;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.Species;

class LayoutCheckTest {
    private static final Board.Builder PLAIN = JobBuilder.maple("a", "8", "60");

    @Test
    void a_board_filled_to_the_last_kerf_is_right() {
        // 4 + 1/8 + 3 7/8 across; 30 + 1/8 + 30 along
        faults(
                JobBuilder.maple("a", "8", "60 1/8"),
                section("0", "60 1/8", strip("4", blank(0, "0"), blank(0, "30 1/8")), strip("3 7/8", blank(1, "30"))),
                "");
    }

    @Test
    void blanks_and_strips_keep_a_kerf_and_their_section() {
        faults(PLAIN, section("0", "60", strip("4", blank(0, "0"), blank(0, "29 15/16"))), "starts before");
        faults(PLAIN, section("1", "60", strip("4", blank(0, "1/2"))), "starts before");
        faults(PLAIN, section("0", "60", strip("4", blank(0, "31"))), "ends behind its section");
        faults(PLAIN, section("0", "60", strip("4"), strip("3 15/16")), "its strips take");
        faults(PLAIN, section("0", "60", strip("3"), strip("4")), "out of order");
        faults(PLAIN, section("0", "60", strip("5", blank(0, "0"))), "not as wide as its strip");
    }

    @Test
    void sections_keep_a_kerf_the_board_and_its_trims() {
        Section first = section("0", "20", strip("4"));
        faults(PLAIN, List.of(first, section("20", "40", strip("4"))), "starts before");
        faults(PLAIN, List.of(first, section("20 1/8", "40", strip("4"))), "");
        faults(PLAIN, section("0", "60 1/8", strip("4")), "ends at");
        faults(PLAIN, section("30", "30", strip("4")), "has no length");
        faults(PLAIN, section("0", "20"), "has no strip");
        Board.Builder trimmed = JobBuilder.maple("a", "8", "60").endTrim(Length.inches("1"), Length.inches("2"));
        faults(trimmed, section("1", "58", strip("4")), "");
        faults(trimmed, section("7/8", "58", strip("4")), "starts before");
        faults(trimmed, section("1", "58 1/8", strip("4")), "ends at");
        List<Section> four = List.of(
                first,
                section("21", "30", strip("4")),
                section("31", "40", strip("4")),
                section("41", "50", strip("4")));
        faults(PLAIN, four, "4 sections");
        faults(PLAIN, List.of(), "0 sections");
    }

    @Test
    void an_edge_that_is_not_straight_loses_what_the_crook_asks_of_the_length() {
        Board.Builder bowed = JobBuilder.maple("a", "8", "60").edges(1, Length.inches("1/8"), Length.inches("1"));
        faults(bowed, section("0", "60", strip("7 7/8")), "");
        faults(bowed, section("0", "60", strip("7 15/16")), "its strips take");
        faults(bowed, new Section(0, nm("30"), Edge.RIGHT, nm("1/4"), List.of(strip("7 3/4"))), "");
        faults(bowed, new Section(0, nm("30"), Edge.RIGHT, nm("1/4") - 1, List.of(strip("7 3/4"))), "is not straight");
        Board.Builder rough = JobBuilder.maple("a", "8", "60").edges(0, Length.inches("1/8"), Length.ZERO);
        faults(rough, new Section(0, nm("30"), Edge.LEFT, nm("1/8"), List.of(strip("7 3/4"))), "");
        faults(rough, new Section(0, nm("30"), Edge.LEFT, nm("3/16"), List.of(strip("7 3/4"))), "its strips take");
        faults(rough, section("0", "30", strip("7")), "is not straight");
    }

    @Test
    void a_tapered_board_is_as_wide_as_the_narrow_end_and_rides_on_its_left_edge() {
        Board.Builder tapered = JobBuilder.maple("a", "8", "60").width(Length.inches("6"), Length.inches("8"));
        faults(tapered, section("30", "60", strip("7")), "");
        faults(tapered, section("29", "60", strip("7")), "its strips take");
        faults(tapered, new Section(nm("30"), nm("60"), Edge.RIGHT, 0, List.of(strip("7"))), "right edge");
    }

    @Test
    void blanks_touch_defects_that_bar_them_but_do_not_overlap_them() {
        Board.Builder knotty = JobBuilder.maple("a", "8", "60").defects(List.of(knot(Defect.Blocks.ALL)));
        faults(knotty, section("0", "60", strip("4", blank(0, "0"))), ""); // the knot is from 30 to 31, 3 to 5
        faults(knotty, section("0", "60", strip("4", blank(0, "1/4"))), "lies on knot");
        faults(knotty, section("0", "60", strip("3 7/8"), strip("3 7/8", blank(1, "0"))), "");
        faults(knotty, section("0", "60", strip("3 7/8"), strip("3 7/8", blank(1, "1"))), "lies on knot");
        faults(knotty, new Section(0, nm("60"), Edge.RIGHT, 0, List.of(strip("4", blank(0, "1")))), "lies on knot");
        faults(knotty, new Section(0, nm("60"), Edge.RIGHT, 0, List.of(strip("3", blank(2, "1")))), "");
        Board.Builder spotted = JobBuilder.maple("a", "8", "60").defects(List.of(knot(Defect.Blocks.SHOW)));
        faults(spotted, section("0", "60", strip("4", blank(0, "1"))), "lies on knot");
        faults(spotted, section("0", "60", strip("3 7/8"), strip("3 7/8", blank(1, "1"))), "");
    }

    @Test
    void the_saws_have_their_limits() {
        Saw saw = new Saw(
                Length.inches("1/8"),
                Length.inches("1/8"),
                Optional.of(Length.inches("40")),
                Optional.of(Length.inches("10")),
                Optional.of(Length.inches("3 1/2")),
                Optional.of(Length.inches("10")));
        limited(saw, section("0", "40 1/8", strip("4")), "too long");
        limited(saw, section("0", "9 7/8", strip("4")), "too short");
        limited(saw, section("0", "40", strip("4"), strip("3")), "too narrow");
        limited(saw, section("0", "40", strip("4"), strip("3", blank(2, "0"))), "");
        limited(saw, section("0", "40", strip("3", blank(2, "0"), blank(3, "30"))), "");
        limited(saw, section("0", "40", strip("3", blank(3, "0"), blank(2, "10"))), "too short to crosscut");
    }

    @Test
    void a_ripped_board_is_one_strip_of_its_full_width_trim_to_trim() {
        Board.Builder ripped = JobBuilder.maple("a", "4", "60")
                .endTrim(Length.inches("1"), Length.ZERO)
                .ripped(true);
        faults(ripped, section("1", "60", strip("4", blank(0, "1"))), "");
        faults(ripped, section("2", "60", strip("4", blank(0, "2"))), "not cut trim to trim");
        faults(ripped, section("1", "60", strip("3 7/8", blank(1, "2"))), "not one strip of its full width");
    }

    @Test
    void wood_thickness_and_count_are_those_of_the_bill() {
        faults(
                Board.measured("a", "Ash", JobBuilder.THICKNESS, Length.inches("8"), Length.inches("60")),
                section("0", "60", strip("4", blank(0, "0"))),
                "another species");
        faults(
                Board.measured("a", "maple", Length.inches("1"), Length.inches("8"), Length.inches("60")),
                section("0", "60", strip("4", blank(0, "0"))),
                "another thickness");
        Section three = section("0", "60", strip("3", blank(2, "0"), blank(2, "21")), strip("3", blank(2, "0")));
        faults(PLAIN, three, "part 2 is made 3 times");
    }

    @Test
    void a_group_comes_from_one_board() {
        Job job = new JobBuilder("group")
                .stack(JobBuilder.maple("a", "8", "60"), JobBuilder.maple("b", "8", "60"))
                .parts(JobBuilder.part("door", 2, "30", "4").together("doors"))
                .build();
        Section one = section("0", "60", strip("4", blank(0, "0")));
        List<Layout> two = List.of(new Layout(0, List.of(one)), new Layout(1, List.of(one)));
        assertThat(new LayoutCheck(job, two).faults()).containsExactly("group doors comes from several boards");
        assertThat(new LayoutCheck(job, two).complete()).isTrue();
        assertThat(new LayoutCheck(job, List.of(two.get(0), two.get(0))).faults())
                .contains("board 0 is cut twice");
    }

    private static Defect knot(Defect.Blocks blocks) {
        return new Defect(
                Length.inches("30"), Length.inches("31"), Length.inches("3"), Length.inches("5"), "knot", blocks);
    }

    private static void limited(Saw saw, Section section, String fault) {
        faults(new JobBuilder("limits").saw(saw), PLAIN, List.of(section), fault);
    }

    private static void faults(Board.Builder board, Section section, String fault) {
        faults(board, List.of(section), fault);
    }

    private static void faults(Board.Builder board, List<Section> sections, String fault) {
        faults(new JobBuilder("check"), board, sections, fault);
    }

    /** Expects one fault, or none when {@code fault} is empty. */
    private static void faults(JobBuilder builder, Board.Builder board, List<Section> sections, String fault) {
        Job job = builder.stack(board)
                .price("ash", BigDecimal.ONE)
                .parts(
                        JobBuilder.part("show", 2, "30", "4")
                                .species(Set.of(new Species("maple")))
                                .face(Part.Face.SHOW),
                        JobBuilder.part("hidden", 1, "30", "3 7/8"),
                        JobBuilder.part("slat", 2, "20", "3").face(Part.Face.SHOW),
                        JobBuilder.part("block", 1, "9", "3"))
                .build();
        List<String> found = new LayoutCheck(job, List.of(new Layout(0, sections))).faults();
        if (fault.isEmpty()) assertThat(found).isEmpty();
        else assertThat(found).singleElement().asString().contains(fault);
    }

    private static Section section(String from, String to, Strip... strips) {
        return new Section(nm(from), nm(to), Edge.LEFT, 0, List.of(strips));
    }

    private static Strip strip(String width, Blank... blanks) {
        return new Strip(nm(width), List.of(blanks));
    }

    private static Blank blank(int part, String from) {
        return new Blank(part, nm(from));
    }

    private static long nm(String inches) {
        return Length.inches(inches).nanometers();
    }
}
