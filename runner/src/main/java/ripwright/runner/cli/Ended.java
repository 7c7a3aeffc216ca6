package ripwright.runner.cli;

import java.util.Optional;
import ripwright.Ending;
import ripwright.Progress;
import ripwright.ProgressListener;

/** Remembers how a search ended, for the sheet; what it is told it passes on. */
final class Ended implements ProgressListener {
    private final ProgressListener next;
    private volatile Optional<Ending> ending = Optional.empty();

    Ended(ProgressListener next) {
        this.next = next;
    }

    @Override
    public void progress(Progress progress) {
        next.progress(progress);
    }

    @Override
    public void ended(Ending ending) {
        this.ending = Optional.of(ending);
        next.ended(ending);
    }

    /** Empty until it ended. */
    Optional<Ending> ending() {
        return ending;
    }
}
