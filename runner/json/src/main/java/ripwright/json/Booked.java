package ripwright.json;

import java.util.Optional;
import ripwright.settle.Settlement;

/**
 * A plan in the book.
 *
 * @param job its job's name
 * @param file the name its file had
 * @param plan the digest of the plan as it is written
 * @param on the day it was booked, as the shop writes it
 * @param settlement what it took and left
 * @param before the digest of the rack's file before; empty when there was none
 * @param after the digest of the rack's file after
 * @param writtenBefore the rack's file as it was before, where writing the rack again would not give the same bytes
 * @param left the digest of the file with the boards left
 */
public record Booked(
        String job,
        String file,
        String plan,
        String on,
        Settlement settlement,
        Optional<String> before,
        String after,
        Optional<String> writtenBefore,
        String left) {}
