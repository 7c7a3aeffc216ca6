package ripwright;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.pattern.PricedLayout;
import ripwright.pattern.Withheld;
import ripwright.sequence.NoTestWoodException;
import ripwright.solve.Champion;
import ripwright.stock.Board;

/**
 * The last resort where the search's answer, though it looks for wood for test blanks, leaves none: keeps the far end of a
 * board that is cut anyway, the one that wastes the most; else of the cheapest board that is whole; else no strip is ripped
 * to the width that cannot be proved.
 */
final class Withholding {
    private final Job job;
    private final Champion champion;
    private final NoTestWoodException missing;
    private final Withheld withheld; // so far
    private final int board; // the one whose end is kept from now on, or -1

    Withholding(Job job, Champion champion, NoTestWoodException missing, Withheld withheld) {
        this.job = job;
        this.champion = champion;
        this.missing = missing;
        this.withheld = withheld;
        board = board();
    }

    /** What is withheld from now on. */
    Withheld extended() {
        return board < 0 ? withheld.withWidth(missing.setting()) : withheld.withEnd(board, end(board));
    }

    /** The answer's layouts that still stand. */
    @Nullable
    PricedLayout[] standing() {
        @Nullable PricedLayout[] layouts = champion.layouts().clone();
        long barred = missing.setting().nanometers();
        for (int b = 0; b < layouts.length; b++) {
            PricedLayout layout = layouts[b];
            if (layout == null) continue;
            boolean falls = board < 0 ? Arrays.stream(layout.widths()).anyMatch(width -> width == barred) : b == board;
            if (falls) layouts[b] = null;
        }
        return layouts;
    }

    private int board() {
        int best = -1;
        for (int b = 0; b < champion.layouts().length; b++) {
            Board candidate = job.board(b);
            boolean room = !candidate.ripped() && !end(b).exceeds(candidate.length());
            if (room && proves(candidate) && (best < 0 || better(b, best))) best = b;
        }
        return best;
    }

    private boolean proves(Board board) {
        Length narrow = board.width().min(board.widthAtFarEnd());
        Length lost = board.straightEdges() == 0 ? board.edgeLoss().max(board.crook()) : Length.ZERO;
        return board.millsTo().equals(missing.thickness())
                && !missing.length().exceeds(board.length())
                && !missing.narrowest().plus(lost).exceeds(narrow);
    }

    private boolean better(int b, int than) {
        PricedLayout one = champion.layouts()[b];
        PricedLayout other = champion.layouts()[than];
        if (one == null) {
            return other == null && job.cost(job.board(b)).compareTo(job.cost(job.board(than))) < 0;
        }
        return other == null || wasted(one).compareTo(wasted(other)) > 0;
    }

    private Money wasted(PricedLayout layout) {
        Board board = job.board(layout.layout().board());
        Money worth = job.cost(board);
        for (int part : layout.made())
            worth = worth.minus(job.parts().get(part).boardFeet().at(job.price(board)));
        return worth;
    }

    /** What is withheld of that board when all the test blanks of one setting more are. */
    private Length end(int board) {
        Length each = missing.length().plus(job.saw().crosscutKerf());
        Length already = withheld.ends().getOrDefault(board, Length.ZERO);
        return already.plus(new Length(each.nanometers() * job.testRip().tries()));
    }
}
