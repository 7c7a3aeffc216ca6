package ripwright.internal.search;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.TestWoodPieces;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.TestRip;
import ripwright.stock.Edge;
import ripwright.testing.JobBuilder;

public class CutConstraintsTest {
    private static final TogetherGroup DOORS = new TogetherGroup("doors", Set.of(0, 1));

    private final ConstraintVerifier<CutConstraints, CuttingSolution> verifier = ConstraintVerifier.build(
                    new CutConstraints(), CuttingSolution.class, BoardCut.class)
            .withConstraintStreamImplType(ConstraintStreamImplType.BAVET);

    @Test
    void doors_of_one_group_from_two_boards_cost_one_hard_point() {
        verifier.verifyThat(CutConstraints::togetherFromOneBoard)
                .given(DOORS, cut(0, 10, 0), cut(1, 10, 1))
                .penalizesBy(1);
    }

    @Test
    void doors_of_one_group_from_one_board_are_free() {
        verifier.verifyThat(CutConstraints::togetherFromOneBoard)
                .given(DOORS, cut(0, 10, 0, 1, 2), cut(1, 10, 2))
                .penalizesBy(0);
    }

    @Test
    void a_board_is_paid_once_it_is_cut() {
        verifier.verifyThat(CutConstraints::boardsBought)
                .given(cut(0, 10, 0), cut(1, 7, 1), whole(2))
                .penalizesBy(17);
    }

    @Test
    void offcuts_fetch_their_salvage_value() {
        verifier.verifyThat(CutConstraints::offcutsKept)
                .given(cut(0, 10, 0), whole(1))
                .rewardsWith(3);
    }

    @Test
    void rips_and_crosscuts_cost_their_minutes() {
        verifier.verifyThat(CutConstraints::timeAtTheSaws)
                .given(cut(0, 10, 0), cut(1, 10, 0), whole(2))
                .penalizesBy(4);
    }

    @Test
    void two_boards_ripped_at_one_width_share_its_setting() {
        verifier.verifyThat(CutConstraints::ripSettings)
                .given(new SettingPrice(width -> 5), cut(0, 10, 0), cut(1, 10, 0), whole(2))
                .penalizesBy(10); // two widths, 100 and 60
    }

    @Test
    void a_setting_without_a_price_is_free() {
        verifier.verifyThat(CutConstraints::ripSettings)
                .given(new SettingPrice(width -> 0), cut(0, 10, 0))
                .penalizesBy(0);
    }

    /** Of 24 in one blank leaves 13 in, kept and worth 8 a board foot x 0.5; a test blank of 12 in and a kerf spoil it. */
    @Test
    void a_test_blank_loses_what_its_wood_would_fetch() {
        verifier.verifyThat(CutConstraints::testBlanks)
                .given(new TestWoodPrice(PROVED.proving(), 1_000_000), rail(0, "9 7/8"), whole(1))
                .penalizesBy(2_333_333); // 14 x 6 / 144 x 8 x 0.5
    }

    @Test
    void a_test_blank_from_waste_is_free() {
        verifier.verifyThat(CutConstraints::testBlanks)
                .given(new TestWoodPrice(PROVED.proving(), 1_000_000), rail(0, "11"), whole(1))
                .penalizesBy(0); // 12 7/8 are left, and kept from 13 on
    }

    @Test
    void a_test_blank_that_finds_no_wood_counts_as_missing() {
        verifier.verifyThat(CutConstraints::testBlanks)
                .given(new TestWoodPrice(PROVED.proving(), 1_000_000), rail(0, "12"), rail(1, "12"))
                .penalizesBy(1_000_000); // 11 7/8 are left of each
    }

    private static final JobNumbers PROVED = new JobNumbers(new JobBuilder("proved")
            .testRip(new TestRip(Length.inches("12"), 1))
            .offcuts(new Keep(Length.inches("13"), Length.inches("2")), new BigDecimal("0.5"))
            .stack(JobBuilder.maple("a", "6", "24"), JobBuilder.maple("b", "6", "24"))
            .parts(JobBuilder.part("rail", 2, "9", "5 7/8"))
            .build());

    /** A rail from a section of that length; which part it is does not matter here. */
    private static BoardCut rail(int board, String length) {
        long to = Length.inches(length).nanometers();
        Layout.Strip strip = new Layout.Strip(Length.inches("5 7/8").nanometers(), List.of(new Layout.Blank(0, 0)));
        Layout.Section section = new Layout.Section(0, to, Edge.LEFT, 0, List.of(strip));
        return new BoardCut(board, FLAT, PROVED.priced(new Layout(board, List.of(section))));
    }

    private static BoardCut whole(int board) {
        return new BoardCut(board, FLAT, null);
    }

    private static final BlankRewards FLAT = new BlankRewards(new long[] {4, 5, 6});

    @Test
    void a_blank_is_worth_its_tariff() {
        verifier.verifyThat(CutConstraints::blanksMade)
                .given(cut(0, 10, 0, 0, 2), whole(1))
                .rewardsWith(14);
    }

    /** One board of 20 whose blanks take 10 of wood wastes half: 0.5 x 10 x 10 / 20; two that waste 5 each, half of that. */
    @Test
    void waste_gathered_on_one_board_counts_less() {
        verifier.verifyThat(CutConstraints::wasteGathered)
                .given(wasting(0, 10), wasting(1, 0), whole(2))
                .rewardsWith(2_500_000);
        verifier.verifyThat(CutConstraints::wasteGathered)
                .given(wasting(0, 5), wasting(1, 5))
                .rewardsWith(1_250_000);
    }

    /** A board that costs 20 and so much more than the wood of its blanks. */
    private static BoardCut wasting(int board, int waste) {
        double wood = (20 - waste) * 1e6;
        BlankRewards rewards = new BlankRewards(new long[] {1}, new double[] {wood}, 0).gathering(0.5);
        Layout layout = new Layout(board, List.of());
        return new BoardCut(
                board,
                rewards,
                new PricedLayout(layout, new int[] {0}, new long[0], 20_000_000, 0, 0, 0, TestWoodPieces.NONE));
    }

    private static BoardCut cut(int board, long cost, int... made) {
        Layout layout = new Layout(board, List.of());
        return new BoardCut(
                board, FLAT, new PricedLayout(layout, made, new long[] {100, 60}, cost, 3, 2, 1, TestWoodPieces.NONE));
    }
}
