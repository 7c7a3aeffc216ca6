package ripwright.solve;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import ripwright.pattern.Layout;
import ripwright.pattern.PricedLayout;
import ripwright.pattern.TestEnds;

class CutConstraintsTest {
    private static final Together DOORS = new Together("doors", Set.of(0, 1));

    private final ConstraintVerifier<CutConstraints, Cutting> verifier = ConstraintVerifier.build(
                    new CutConstraints(), Cutting.class, BoardCut.class)
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
                .given(new SettingPrice(5), cut(0, 10, 0), cut(1, 10, 0), whole(2))
                .penalizesBy(10); // two widths, 100 and 60
    }

    @Test
    void a_setting_without_a_price_is_free() {
        verifier.verifyThat(CutConstraints::ripSettings)
                .given(new SettingPrice(0), cut(0, 10, 0))
                .penalizesBy(0);
    }

    private static BoardCut whole(int board) {
        return new BoardCut(board, FLAT, null);
    }

    private static final Tariff FLAT = new Tariff(new long[] {4, 5, 6});

    @Test
    void a_blank_is_worth_its_tariff() {
        verifier.verifyThat(CutConstraints::blanksMade)
                .given(cut(0, 10, 0, 0, 2), whole(1))
                .rewardsWith(14);
    }

    private static BoardCut cut(int board, long cost, int... made) {
        Layout layout = new Layout(board, List.of());
        return new BoardCut(
                board, FLAT, new PricedLayout(layout, made, new long[] {100, 60}, cost, 3, 2, 1, TestEnds.NONE));
    }
}
