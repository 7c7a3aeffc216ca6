package ripwright.internal.search;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.countBi;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;
import static org.optaplanner.core.api.score.stream.Joiners.filtering;

import java.util.Arrays;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;

/** What the shop cares about, in millionths of the currency. Boards that stay whole have no layout and are left out. */
public final class CutConstraints implements ConstraintProvider {
    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            togetherFromOneBoard(factory),
            boardsBought(factory),
            offcutsKept(factory),
            timeAtTheSaws(factory),
            ripSettings(factory),
            testBlanks(factory),
            blanksMade(factory),
            wasteGathered(factory)
        };
    }

    /** All blanks of a {@code together} group come from one board; each board more costs one hard point. */
    Constraint togetherFromOneBoard(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .join(TogetherGroup.class, filtering((cut, group) -> group.madeBy(cut.cut())))
                .groupBy((cut, group) -> group, countBi())
                .filter((group, boards) -> boards > 1)
                .penalizeLong(HardSoftLongScore.ONE_HARD, (group, boards) -> boards - 1L)
                .asConstraint("Together from one board");
    }

    /** A board is paid whole as soon as anything is cut from it. */
    Constraint boardsBought(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .penalizeLong(HardSoftLongScore.ONE_SOFT, cut -> cut.cut().cost())
                .asConstraint("Boards bought");
    }

    /** What goes back to the rack is worth its salvage value. */
    Constraint offcutsKept(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .rewardLong(HardSoftLongScore.ONE_SOFT, cut -> cut.cut().salvage())
                .asConstraint("Offcuts kept");
    }

    /** Every rip and every crosscut takes its minutes. */
    Constraint timeAtTheSaws(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .penalizeLong(HardSoftLongScore.ONE_SOFT, cut -> cut.cut().labor())
                .asConstraint("Time at the saws");
    }

    /** A fence setting takes its minutes once, however many boards are ripped at it. */
    Constraint ripSettings(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .flattenLast(cut -> Arrays.stream(cut.cut().widths()).boxed().toList())
                .groupBy(width -> width)
                .join(SettingPrice.class)
                .penalizeLong(HardSoftLongScore.ONE_SOFT, (width, price) -> price.millionths(width))
                .asConstraint("Rip settings");
    }

    /** Every rip setting is proved on test blanks; one that finds no wood counts more than any board. */
    Constraint testBlanks(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(BoardCut.class)
                .groupBy(toList())
                .join(TestWoodPrice.class)
                .penalizeLong(HardSoftLongScore.ONE_SOFT, (boards, price) -> price.millionths(boards))
                .asConstraint("Test blanks");
    }

    /** A blank is worth more than the wood it takes, so that the bill gets made. */
    Constraint blanksMade(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .rewardLong(HardSoftLongScore.ONE_SOFT, BoardCut::blanksWorth)
                .asConstraint("Blanks made");
    }

    /** Waste gathered on one board counts less than the same waste on many boards. */
    Constraint wasteGathered(ConstraintFactory factory) {
        return factory.forEach(BoardCut.class)
                .rewardLong(HardSoftLongScore.ONE_SOFT, BoardCut::wasteGathered)
                .asConstraint("Waste gathered");
    }
}
