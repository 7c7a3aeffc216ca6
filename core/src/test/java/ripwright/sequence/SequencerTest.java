package ripwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ripwright.sequence.Shop.blank;
import static ripwright.sequence.Shop.cut;
import static ripwright.sequence.Shop.in;
import static ripwright.sequence.Shop.labor;
import static ripwright.sequence.Shop.lines;
import static ripwright.sequence.Shop.maple;
import static ripwright.sequence.Shop.offcut;
import static ripwright.sequence.Shop.part;
import static ripwright.sequence.Shop.section;
import static ripwright.sequence.Shop.strip;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Unit;
import ripwright.pattern.Layout;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Setting;
import ripwright.replay.Replay;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;

/** Small plans, checked by hand. */
class SequencerTest {
    /** One board 6 1/2 x 61 in with an inch of trim at each end: three rails, two slats, two offcuts. */
    private static Shop bench() {
        return new Shop()
                .stack(maple("m-1", "6.5", "61").endTrim(in("1"), in("1")))
                .wants(
                        part("rail", "20", "2").count(3),
                        part("slat", "12", "1.5").count(2));
    }

    private static Layout benchLayout() {
        return cut(
                0,
                section(
                        "1",
                        "41.125",
                        strip("2", blank(0, "1"), blank(0, "21.125")),
                        strip("2", blank(0, "1")),
                        strip("1.5", blank(1, "1"), blank(1, "13.125"))));
    }

    @Test
    void a_board_is_broken_down_ripped_widest_first_and_crosscut_longest_first() {
        assertThat(lines(bench().plan(benchLayout())))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1, m-1/A",
                        "2 rip m-1/1 at F1 -> S1",
                        "3 check S1 at F1",
                        "4 rip m-1/1 at F1 -> S2",
                        "5 rip m-1/1 at F2 -> S3",
                        "6 blank S1 at stop 20 -> B1, B2",
                        "7 blank S2 at stop 20 -> B3, m-1/B",
                        "8 blank S3 at stop 12 -> B4, B5");
    }

    @Test
    void a_board_is_paid_whole_and_its_offcuts_without_trim_are_worth_half() {
        // 6.5 x 61 / 144; 18.75 x 6.5 / 144 / 2 and 20 x 2 / 144 / 2
        Plan plan = bench().plan(benchLayout());

        assertThat(plan.cost().stock()).isEqualTo("2.75");
        assertThat(plan.cost().salvage()).isEqualTo("0.56");
        assertThat(plan.cost().labor()).isEqualTo("0.00");
        assertThat(plan.cost().net()).isEqualTo("2.19");
    }

    @Test
    void wood_is_tallied_by_true_thickness_and_adds_up() {
        Plan plan = bench().plan(benchLayout());

        assertThat(plan.tally().consumed()).isEqualTo("2.7535"); // 396.5 / 144
        assertThat(plan.tally().parts()).isEqualTo("1.0833"); // 156 / 144
        assertThat(plan.tally().offcuts()).isEqualTo("1.1693"); // (19.75 x 6.5 + 40) / 144
        assertThat(plan.tally().waste()).isEqualTo("0.5009");
        assertThat(plan.tally().yield()).isEqualTo("0.3934"); // 156 / 396.5
    }

    @Test
    void minutes_are_settings_rips_and_crosscuts_and_cost_nothing_without_a_rate() {
        // 2 settings x 6, 3 strips x 1.5, crosscuts: 2 for the section, 1 + 1 + 2 for blanks
        assertThat(bench().plan(benchLayout()).tally().minutes()).isEqualTo("22.50");
    }

    @Test
    void a_rate_turns_minutes_into_labor() {
        Plan plan = bench().pays(labor("40", "5", "2", "0.5")).plan(benchLayout());

        assertThat(plan.tally().minutes()).isEqualTo("19.00"); // 10 + 6 + 3
        assertThat(plan.cost().labor()).isEqualTo("12.67"); // 19 x 40 / 60
        assertThat(plan.cost().net()).isEqualTo("14.86");
    }

    @Test
    void a_floor_is_rounded_down_and_the_gap_up() {
        Plan plan = new Sequencer(bench().job(), List.of(benchLayout()), Money.of(new BigDecimal("2.0999"))).plan();

        assertThat(plan.cost().bound()).isEqualTo("2.09");
        assertThat(plan.cost().gap()).isEqualTo("0.0457"); // 0.10 / 2.19 = 0.04566...
        assertThat(plan.cost().proven()).isFalse();
    }

    @Test
    void a_floor_over_the_rounded_cost_proves_it_and_is_not_printed_above() {
        Plan plan = new Sequencer(bench().job(), List.of(benchLayout()), Money.of(new BigDecimal("2.20"))).plan();

        assertThat(plan.cost().bound()).isEqualTo("2.19");
        assertThat(plan.cost().gap()).isEqualByComparingTo("0");
        assertThat(plan.cost().proven()).isTrue();
    }

    @Test
    void offcuts_are_listed_as_the_rack_will_have_them() {
        List<Offcut> offcuts = bench().plan(benchLayout()).offcuts();

        assertThat(offcuts).extracting(Offcut::from).containsExactly("m-1", "S2");
        Board rest = offcuts.get(0).piece();
        assertThat(rest.length()).isEqualTo(in("19.75"));
        assertThat(rest.width()).isEqualTo(in("6.5"));
        assertThat(rest.endTrim().near()).isEqualTo(Length.ZERO);
        assertThat(rest.endTrim().far()).isEqualTo(in("1"));
        assertThat(rest.price()).hasValueSatisfying(price -> assertThat(price).isEqualByComparingTo("1"));
        assertThat(rest.history()).hasValueSatisfying(history -> {
            assertThat(history.mark()).contains("m-1/A");
            assertThat(history.job()).contains("bench");
            assertThat(history.board()).contains("m-1");
            assertThat(history.since()).isEmpty();
        });
        assertThat(offcuts.get(1).piece().length()).isEqualTo(in("20"));
        assertThat(offcuts.get(1).piece().endTrim().near()).isEqualTo(Length.ZERO);
    }

    @Test
    void ids_of_boards_are_given_to_nothing_else() {
        Plan plan = bench().stack(maple("m-1/1", "3", "14"), maple("m-1/A", "3", "14"))
                .plan(benchLayout());

        assertThat(plan.boards().get(0).sections())
                .extracting(section -> section.id())
                .containsExactly("m-1/2");
        assertThat(plan.offcuts()).extracting(Offcut::id).containsExactly("m-1/B", "m-1/C");
    }

    @Test
    void where_boards_are_named_like_strips_strips_are_named_otherwise() {
        Plan plan = bench().stack(maple("s12", "3", "14"), maple("B2", "3", "14"), maple("F1", "3", "14"))
                .plan(benchLayout());

        assertThat(lines(plan))
                .startsWith("1 breakdown m-1 -> m-1/1, m-1/A", "2 rip m-1/1 at FENCE1 -> ST1")
                .contains("6 blank ST1 at stop 20 -> BL1, BL2");
    }

    @Test
    void one_of_several_like_boards_leaves_offcuts_the_rack_may_take_in() {
        Shop shop = new Shop().stack(maple("m#2", "2", "40")).wants(part("rail", "20", "2"));
        Plan plan = shop.plan(cut(0, section("0", "40", strip("2", blank(0, "0")))));

        assertThat(plan.offcuts()).extracting(Offcut::id).containsExactly("m.2/A");
        assertThat(plan.boards()).extracting(CutBoard::board).containsExactly("m#2");
    }

    @Test
    void a_name_too_long_to_chalk_gets_a_short_mark() {
        String id = "x".repeat(300);
        Shop shop = new Shop().stack(maple(id, "2", "40")).wants(part("rail", "20", "2"));
        Board piece = shop.plan(cut(0, section("0", "40", strip("2", blank(0, "0")))))
                .offcuts()
                .get(0)
                .piece();

        assertThat(piece.id()).isEqualTo("x".repeat(280) + "/A");
        assertThat(piece.history())
                .hasValueSatisfying(history -> assertThat(history.mark()).contains("K1"));
    }

    /**
     * A board 96 x 6 in, both edges rough, crook 3/8 in, broken down to two sections of 47 15/16 in: each loses
     * 3/8 x (47 15/16 / 96)^2 = 0.0935... in at the reference edge, and 1/16 in at the other.
     */
    @Test
    void a_crooked_board_broken_down_is_straightened_section_by_section() {
        Shop shop = new Shop()
                .stack(maple("m-1", "6", "96").edges(0, in("0.0625"), in("0.375")))
                .wants(
                        part("rail", "40", "2.8").count(4),
                        part("stile", "30", "2.5").count(2));
        Layout layout = cut(
                0,
                section(
                        "0",
                        "47.9375",
                        Edge.LEFT,
                        "0.09375",
                        strip("2.8", blank(0, "0")),
                        strip("2.8", blank(0, "7.9375"))),
                section("48.0625", "96", Edge.LEFT, "0.09375", strip("2.8", blank(0, "48.0625"))));
        Plan plan = shop.plan(layout);

        assertThat(lines(plan))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1, m-1/2",
                        "2 straighten m-1/1",
                        "3 straighten m-1/2",
                        "4 rip m-1/1 at F1 -> S1",
                        "5 check S1 at F1",
                        "6 rip m-1/1 at F1 -> S2",
                        "7 rip m-1/2 at F1 -> S3, m-1/A",
                        "8 blank S1 at stop 40 -> B1",
                        "9 blank S2 at stop 40 -> B2",
                        "10 blank S3 at stop 40 -> B3");
        // 6 - 3/32 - 2.8 - 1/8 in wide, its left edge sawn, its right edge rough, a quarter of the crook or so
        Board beside = plan.offcuts().get(0).piece();
        assertThat(beside.width()).isEqualTo(in("2.98125"));
        assertThat(beside.straightEdges()).isEqualTo(1);
        assertThat(beside.edgeLoss()).isEqualTo(in("0.0625"));
        assertThat(beside.crook().nanometers()).isEqualTo(2_375_053); // 9525000 x (47.9375 / 96)^2 = 2375052.87
        // settings 1 x 6, strips 3 x 1.5, straightened 2 x 1.5, crosscuts 1 shared + 3
        assertThat(plan.tally().minutes()).isEqualTo("17.50");
    }

    @Test
    void with_only_its_right_edge_straight_an_offcut_is_turned_end_for_end() {
        Board.Builder board = maple("m-1", "6", "40")
                .edges(0, in("0.25"), Length.ZERO)
                .defects(List.of(new Defect(in("3"), in("5"), in("0.5"), in("1"), "knot", Defect.Blocks.ALL)));
        Shop shop = new Shop().stack(board).wants(part("rail", "40", "2"));
        Board piece = shop.plan(cut(0, section("0", "40", Edge.RIGHT, "0.25", strip("2", blank(0, "0")))))
                .offcuts()
                .get(0)
                .piece();

        assertThat(piece.straightEdges()).isEqualTo(1);
        assertThat(piece.width()).isEqualTo(in("3.625")); // 6 - 1/4 - 2 - 1/8
        assertThat(piece.defects()).singleElement().satisfies(knot -> {
            assertThat(knot.from()).isEqualTo(in("35"));
            assertThat(knot.to()).isEqualTo(in("37"));
            assertThat(knot.left()).isEqualTo(in("2.625"));
            assertThat(knot.right()).isEqualTo(in("3.125"));
        });
    }

    /** 8 in wide at the marked end, 6 at the other, 40 long; cut at 20, where it is 7 in wide. */
    @Test
    void a_tapered_offcut_has_both_widths() {
        Shop shop = new Shop()
                .stack(maple("m-1", "8", "40").width(in("8"), in("6")))
                .wants(part("rail", "20", "3"));
        Plan plan = shop.plan(cut(0, section("0", "20", strip("3", blank(0, "0")))));

        Board beyond = plan.offcuts().get(0).piece();
        assertThat(beyond.length()).isEqualTo(in("19.875"));
        assertThat(beyond.width()).isEqualTo(in("6.99375")); // 8 - 2 x 20.125 / 40
        assertThat(beyond.widthAtFarEnd()).isEqualTo(in("6"));
        Board beside = plan.offcuts().get(1).piece();
        assertThat(beside.width()).isEqualTo(in("4.875")); // 8 - 3 - 1/8
        assertThat(beside.widthAtFarEnd()).isEqualTo(in("3.875"));
        // (19.875 x 6.496875 + 20 x 4.375) / 144 / 2 = 0.7522...
        assertThat(plan.cost().salvage()).isEqualTo("0.75");
    }

    @Test
    void rough_stock_is_milled_section_by_section_and_keeps_its_thickness_beside() {
        Shop shop = new Shop()
                .stack(maple("m-1", "6", "60").rough(in("1.25"), in("1")).edges(1, in("0.125"), Length.ZERO))
                .wants(part("rail", "20", "2").count(2));
        Plan plan = shop.plan(cut(
                0,
                section("0", "20", strip("2", blank(0, "0"))),
                section("40", "60", Edge.RIGHT, "0.125", strip("2", blank(0, "40")))));

        assertThat(lines(plan))
                .startsWith(
                        "1 breakdown m-1 -> m-1/1, m-1/2, m-1/A", "2 mill m-1/1", "3 mill m-1/2", "4 straighten m-1/2");
        assertThat(plan.offcuts())
                .extracting(one -> one.from() + " " + one.piece().thickness() + ", "
                        + one.piece().millsTo())
                .containsExactly("m-1 1 1/4 in, 1 in", "m-1/1 1 in, 1 in", "m-1/2 1 in, 1 in");
        assertThat(plan.tally().consumed()).isEqualTo("3.1250"); // 60 x 6 x 1 1/4 / 144
    }

    @Test
    void stock_ripped_before_gives_its_strip_when_broken_down_and_needs_no_setting() {
        Shop shop = new Shop()
                .stack(maple("m-1", "2", "60").ripped(true).endTrim(in("1"), in("1")))
                .wants(part("rail", "20", "2").count(2));
        Plan plan = shop.plan(cut(0, section("1", "59", strip("2", blank(0, "1"), blank(0, "21.125")))));

        assertThat(lines(plan))
                .containsExactly("1 breakdown m-1 -> m-1/1, S1", "2 blank S1 at stop 20 -> B1, B2, m-1/A");
        assertThat(plan.settings()).isEmpty();
        assertThat(plan.tally().minutes()).isEqualTo("4.00"); // two trims, one shared cut, one cut
    }

    @Test
    void fitted_parts_come_last_in_the_order_of_the_bill_with_what_their_strip_could_spare() {
        Shop shop = new Shop()
                .stack(maple("m-1", "4.125", "60"))
                .wants(
                        part("drawer front", "20", "2").fitted(true),
                        part("rail", "18", "2"),
                        part("rail, short", "14", "2"),
                        part("door", "15", "2").fitted(true));
        Plan plan = shop.plan(cut(
                0,
                section(
                        "0",
                        "60",
                        strip("2", blank(3, "0"), blank(1, "16"), blank(2, "35")),
                        strip("2", blank(0, "2")))));

        assertThat(lines(plan))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1",
                        "2 rip m-1/1 at F1 -> S1",
                        "3 check S1 at F1",
                        "4 rip m-1/1 at F1 -> S2",
                        "5 blank S1 at stop 18 -> B2",
                        "6 blank S1 at stop 14 -> B3",
                        "7 blank S2 -> B4, m-1/A, spare 40", // 2 before it and 38 behind
                        "8 blank S1 -> B1, spare 7/8"); // to 16 less a kerf
    }

    @Test
    void a_fitted_part_can_be_no_longer_than_up_to_the_next_bad_wood() {
        List<Defect> knots = List.of(
                knot("2", "3", "1", "3", Defect.Blocks.ALL), // 2 in before it
                knot("30", "31", "0", "2", Defect.Blocks.SHOW), // 5 in behind it
                knot("26", "27", "2", "3", Defect.Blocks.ALL)); // beside the strip
        Shop shop = new Shop()
                .stack(maple("m-1", "4", "60").defects(knots))
                .wants(part("door", "20", "2").face(Part.Face.SHOW).fitted(true));
        Plan plan = shop.plan(cut(0, section("0", "60", strip("2", blank(0, "5")))));

        assertThat(lines(plan)).endsWith("3 blank S1 -> B1, m-1/A, spare 7");
    }

    @Test
    void sound_bad_wood_is_nothing_to_a_hidden_fitted_part() {
        Shop shop = new Shop()
                .stack(maple("m-1", "4", "60").defects(List.of(knot("30", "31", "0", "2", Defect.Blocks.SHOW))))
                .wants(part("cleat", "20", "2").fitted(true));
        Plan plan = shop.plan(cut(0, section("0", "60", strip("2", blank(0, "5")))));

        assertThat(lines(plan)).endsWith("3 blank S1 -> B1, m-1/A, spare 40");
    }

    private static Defect knot(String from, String to, String left, String right, Defect.Blocks blocks) {
        return new Defect(in(from), in(to), in(left), in(right), "knot", blocks);
    }

    @Test
    void an_offcut_of_wood_without_any_price_has_none() {
        Board oak = Board.measured("k", "oak", in("1"), in("4"), in("40"))
                .onRack(History.UNKNOWN)
                .build();
        Shop shop = new Shop().stack(maple("m-1", "1", "5")).rack(oak).wants(part("rail", "20", "4"));
        Plan plan = shop.plan(cut(1, section("0", "20", strip("4", blank(0, "0")))));

        assertThat(plan.offcuts())
                .singleElement()
                .satisfies(rest -> assertThat(rest.piece().price()).isEmpty());
        assertThat(plan.cost().net()).isEqualTo("0.00");
    }

    @Test
    void a_strip_without_blanks_that_goes_to_the_rack_is_set_aside_last() {
        Shop shop = new Shop().stack(maple("m-1", "4.125", "40")).wants(part("rail", "20", "2"));
        Plan plan = shop.plan(cut(0, section("0", "40", strip("2", blank(0, "0")), strip("2"))));

        assertThat(lines(plan)).endsWith("5 blank S1 at stop 20 -> B1, m-1/A", "6 trim S2 -> m-1/B");
        assertThat(plan.offcuts()).extracting(Offcut::from).containsExactly("S1", "S2");
    }

    @Test
    void parts_that_are_not_made_are_short() {
        Plan plan = bench().wants(part("top", "50", "12")).plan(benchLayout());

        assertThat(plan.status()).isEqualTo(Plan.Status.SHORT);
        assertThat(plan.shortages()).singleElement().satisfies(one -> {
            assertThat(one.part()).isEqualTo("top");
            assertThat(one.count()).isEqualTo(1);
        });
    }

    @Test
    void nothing_cut_is_a_plan_too() {
        Plan plan = bench().plan();

        assertThat(plan.status()).isEqualTo(Plan.Status.SHORT);
        assertThat(plan.steps()).isEmpty();
        assertThat(plan.cost().net()).isEqualTo("0.00");
        assertThat(plan.cost().gap()).isEqualByComparingTo("0");
        assertThat(plan.cost().proven()).isTrue();
        assertThat(plan.tally().yield()).isEqualByComparingTo("0");
    }

    @Test
    void layouts_in_any_order_give_the_same_plan() {
        Job job = new Shop()
                .tries(1)
                .stack(maple("a", "4", "40"), maple("b", "4", "40"))
                .rack(offcut("k", "4", "20"))
                .wants(part("rail", "20", "2").count(2))
                .job();
        Layout a = cut(0, section("0", "40", strip("2", blank(0, "0"))));
        Layout b = cut(1, section("0", "40", strip("2", blank(0, "0"))));

        assertThat(new Sequencer(job, List.of(b, a), Money.ZERO).plan())
                .isEqualTo(new Sequencer(job, List.of(a, b), Money.ZERO).plan());
    }

    @Test
    void a_board_cut_twice_is_refused() {
        Sequencer twice = new Sequencer(bench().job(), List.of(benchLayout(), benchLayout()), Money.ZERO);

        assertThatThrownBy(twice::plan)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The board in place 0 is cut twice.");
    }

    /**
     * Why the first strip is measured: an error of 1/64 in shows as 5/64 over five strips side by side, so five at 2 in that
     * come out wide no longer fit the board that five right ones fill.
     *
     * @see "Woodworkers Guild of America, Super-accurate table saw fence setting: five 2 in strips read 10 5/64."
     */
    @Test
    void k9_five_strips_a_sixty_fourth_wide_read_ten_and_five_sixty_fourths() {
        String wide = "2.015625";
        Layout five = cut(
                0,
                section(
                        "0",
                        "40",
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0")),
                        strip(wide, blank(0, "0"))));
        Shop shop = new Shop()
                .stack(maple("m", "10.578125", "40")) // 10 5/64 and four kerfs
                .wants(part("slat", "40", wide).count(5));
        Plan plan = shop.plan(five);

        assertThat(plan.offcuts()).isEmpty();
        assertThat(plan.tally().waste()).isEqualByComparingTo("0.1389"); // the kerfs alone: 40 x 1/2 / 144
        Shop right = new Shop()
                .stack(maple("m", "10.5", "40")) // 10 and four kerfs
                .wants(part("slat", "40", wide).count(5));
        Plan refused = new Sequencer(right.job(), List.of(five), Money.ZERO).plan();
        assertThat(Replay.faults(right.job(), refused)).isNotEmpty();
    }

    /** Shelf 0.740 and support 0.750 make a flush rail of 1.490 in, no 1 1/2: an identity, so measure both. */
    @Test
    void k12_a_flush_rail_has_a_setting_of_its_own() {
        String flush = Unit.INCH.exact(in("0.740").plus(in("0.750")));
        Plan plan = new Shop()
                .stack(maple("m", "6", "40"))
                .wants(part("stile", "40", "1.5"), part("rail", "40", flush))
                .plan(cut(0, section("0", "40", strip("1.5", blank(0, "0")), strip("1.49", blank(1, "0")))));

        assertThat(plan.settings()).extracting(Setting::width).containsExactly(in("1.5"), in("1.49"));
    }
}
