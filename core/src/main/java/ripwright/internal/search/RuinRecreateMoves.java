package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Draws recuts without end: one to three boards that are cut and up to two that are whole, all of one
 * thickness. Half of them begin with a board that wastes more than others. */
public final class RuinRecreateMoves implements MoveIteratorFactory<CuttingSolution, RuinRecreateMove> {
    /** For the search's configuration. */
    public RuinRecreateMoves() {}

    @Override
    public long getSize(ScoreDirector<CuttingSolution> scoreDirector) {
        return 1L << 20; // no end; the search only wants to know that there are many
    }

    @Override
    public Iterator<RuinRecreateMove> createOriginalMoveIterator(ScoreDirector<CuttingSolution> scoreDirector) {
        throw new UnsupportedOperationException("Recuts come in no order; ask for them at random.");
    }

    @Override
    public Iterator<RuinRecreateMove> createRandomMoveIterator(
            ScoreDirector<CuttingSolution> scoreDirector, Random workingRandom) {
        return new Draw(scoreDirector.getWorkingSolution(), workingRandom);
    }

    private static final class Draw implements Iterator<RuinRecreateMove> {
        private static final int TRIES = 12;
        private static final int OTHERS = 3;

        private final CuttingSolution cutting;
        private final Random random;

        Draw(CuttingSolution cutting, Random random) {
            this.cutting = cutting;
            this.random = random;
        }

        @Override
        public boolean hasNext() {
            return !cutting.boards().isEmpty();
        }

        @Override
        public RuinRecreateMove next() {
            List<BoardCut> all = cutting.boards();
            BoardCut first = all.get(random.nextInt(all.size()));
            for (int i = 0; first.getLayout() == null && i < TRIES; i++) first = all.get(random.nextInt(all.size()));
            if (random.nextBoolean()) first = mostWasteful(first);
            List<BoardCut> cuts = new ArrayList<>();
            cuts.add(first);
            int used = random.nextInt(3);
            int whole = Math.max(0, random.nextInt(4) - 1);
            draw(cuts, used, true);
            draw(cuts, used + whole == 0 ? 1 : whole, false);
            Collections.shuffle(cuts, random);
            return new RuinRecreateMove(cuts, random.nextLong());
        }

        /** That board, or the one that wastes most of a few others. */
        private BoardCut mostWasteful(BoardCut first) {
            BoardCut most = first;
            for (int i = 0; i < OTHERS; i++) {
                BoardCut other =
                        cutting.boards().get(random.nextInt(cutting.boards().size()));
                if (other.getLayout() == null) continue;
                if (most.getLayout() == null || other.waste() > most.waste()) most = other;
            }
            return most;
        }

        private void draw(List<BoardCut> cuts, int more, boolean cut) {
            List<Integer> alike = cutting.tables().alike(cuts.get(0).board());
            for (int i = 0; i < TRIES && more > 0; i++) {
                BoardCut other = cutting.boards().get(alike.get(random.nextInt(alike.size())));
                if ((other.getLayout() != null) != cut || cuts.contains(other)) continue;
                cuts.add(other);
                more--;
            }
        }
    }
}
