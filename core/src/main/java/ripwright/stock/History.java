package ripwright.stock;

import java.util.Optional;
import ripwright.measure.Name;

/**
 * Where an offcut on the rack came from.
 *
 * @param mark what is chalked on it
 * @param since since when it lies on the rack, as the shop writes dates
 * @param job the job it was left over from
 * @param board the board it was cut from
 */
public record History(Optional<String> mark, Optional<String> since, Optional<String> job, Optional<String> board) {
    /** Nothing is known. */
    public static final History UNKNOWN =
            new History(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Refuses what is no name.
     *
     * @throws IllegalArgumentException when one of them is no {@link Name}
     */
    public History {
        mark.ifPresent(text -> Name.require("mark", text));
        since.ifPresent(text -> Name.require("date since when", text));
        job.ifPresent(text -> Name.require("job it came from", text));
        board.ifPresent(text -> Name.require("board it came from", text));
    }
}
