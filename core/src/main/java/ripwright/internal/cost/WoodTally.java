package ripwright.internal.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.internal.pieces.MadeCounts;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.plan.Offcut;
import ripwright.plan.Tally;
import ripwright.stock.Board;

/** Where the wood goes: board feet by true thickness; waste is the rest of what is printed. */
public final class WoodTally {
    private WoodTally() {}

    public static Tally tally(
            Job job, List<Layout> layouts, List<Board> consumed, List<Offcut> offcuts, BigDecimal minutes) {
        BoardFeet wood = BoardFeet.ZERO;
        for (Board board : consumed) wood = wood.plus(BoardFeet.of(board.area(), board.thickness()));
        BoardFeet parts = BoardFeet.ZERO;
        int[] made = new MadeCounts(job, layouts).counts();
        for (int i = 0; i < made.length; i++)
            parts = parts.plus(job.parts().get(i).boardFeet().times(made[i]));
        BoardFeet kept = BoardFeet.ZERO;
        for (Offcut offcut : offcuts)
            kept = kept.plus(BoardFeet.of(offcut.piece().area(), offcut.piece().thickness()));
        return new Tally(
                wood.rounded(),
                parts.rounded(),
                kept.rounded(),
                wood.rounded().subtract(parts.rounded()).subtract(kept.rounded()),
                yieldOf(parts, wood),
                minutes.setScale(2, RoundingMode.HALF_UP));
    }

    private static BigDecimal yieldOf(BoardFeet parts, BoardFeet wood) {
        if (wood.equals(BoardFeet.ZERO)) return BigDecimal.ZERO.setScale(4);
        return parts.value().divide(wood.value()).bigDecimalValue(4, RoundingMode.HALF_UP);
    }
}
