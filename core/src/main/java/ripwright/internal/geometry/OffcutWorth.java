package ripwright.internal.geometry;

import java.util.Optional;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;
import ripwright.stock.Board;
import ripwright.stock.History;

/** What a leftover is worth to this job's shop. */
public final class OffcutWorth {
    private final Job job;

    /** For that job's prices, salvage share and smallest offcut worth racking. */
    public OffcutWorth(Job job) {
        this.job = job;
    }

    /**
     * Whether it goes to the rack: long enough without raw end trim, and wide enough at its narrow end; of test wood alone
     * whatever gives a test blank still.
     */
    public boolean keeps(Piece piece) {
        if (piece.board().testOnly())
            return piece.clearLength() >= job.testRip().length().nanometers();
        return piece.clearLength() >= job.keep().length().nanometers()
                && piece.narrowWidth() >= job.keep().width().nanometers();
    }

    /** What it is worth on the rack, exactly; nothing when it does not go there. */
    public Money worth(Piece piece) {
        if (!keeps(piece) || piece.board().testOnly()) return Money.ZERO;
        Board entry = new RackEntry(piece).as("worth", Optional.empty(), History.UNKNOWN);
        return BoardFeet.counted(new ClearArea(entry).area(), entry.thickness())
                .at(job.price(piece.board()))
                .times(job.salvage());
    }
}
