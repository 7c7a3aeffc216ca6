package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ripwright.internal.replay.BoardFrame;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.ReplayIndex;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** Blanks, kerfs, losses and leftovers of a board are all of it: in exact arithmetic, an error of 0. */
class WoodBalanceTest {
    @ParameterizedTest
    @MethodSource("ripwright.replay.GoodPlansTest#samples")
    void the_wood_of_a_good_plan_balances(Sample sample) {
        balances(new ReplayIndex(sample.job(), sample.plan()), "");
    }

    @Test
    void the_wood_of_random_layouts_balances() {
        for (long seed = 0; seed < 1_000; seed++) balances(RandomLayout.of(seed), " of seed " + seed);
    }

    private static void balances(ReplayIndex pieces, String which) {
        for (PlacedBoard board : pieces.boards())
            assertThat(new Balance(pieces, board).sum())
                    .as(board.id() + which)
                    .isEqualTo(board.board().area().squareNanometers());
    }

    /** A board broken down, ripped and crosscut at random, on a grid of 1/16 in; tapered by 1/100 or not at all. */
    private static final class RandomLayout {
        private final Random random;
        private int made;

        private RandomLayout(long seed) {
            random = new Random(seed);
        }

        static ReplayIndex of(long seed) {
            return new RandomLayout(seed).pieces();
        }

        private Length sixteenths(int least, int most) {
            return IN.length(least + random.nextInt(most - least + 1) + "/16");
        }

        private ReplayIndex pieces() {
            int length = 100 * (2 + random.nextInt(15)); // in sixteenths
            Length width = sixteenths(80, 200);
            Length far = random.nextBoolean() ? width : width.minus(IN.length(length / 100 + "/16"));
            Board board = Board.measured("m", "maple", IN.length("1"), width, IN.length(length + "/16"))
                    .width(width, far)
                    .build();
            List<Section> sections = new ArrayList<>();
            int at = random.nextInt(3) * random.nextInt(30);
            while (sections.size() < 3 && at + 40 <= length) {
                int to = at + 40 + random.nextInt(length - at - 40 + 1);
                sections.add(section(board, at, to));
                at = to + 2 + random.nextInt(2) * random.nextInt(60);
            }
            return OneBoard.pieces(board, "1/8", sections.toArray(Section[]::new));
        }

        private Section section(Board board, int from, int to) {
            long loss = IN.length(random.nextBoolean() ? random.nextInt(8) + "/16" : "0")
                    .nanometers();
            long usable = new BoardFrame(board).widthAt(IN.length(to + "/16").nanometers()) - loss;
            long kerf = IN.length("1/8").nanometers();
            List<Strip> strips = new ArrayList<>();
            long offset = 0;
            while (strips.isEmpty() || random.nextInt(4) > 0) {
                long width = sixteenths(8, 48).nanometers();
                if (offset + width > usable) break;
                strips.add(new Strip(
                        "S" + made++, new Length(offset), new Length(width), Optional.of("R1"), blanks(from, to)));
                offset += width + kerf;
            }
            return new Section(
                    "s" + made++, IN.length(from + "/16"), IN.length(to + "/16"), Edge.LEFT, new Length(loss), strips);
        }

        private List<Blank> blanks(int from, int to) {
            List<Blank> blanks = new ArrayList<>();
            int at = from + random.nextInt(2) * random.nextInt(10);
            while (random.nextInt(5) > 0) {
                int length = 4 + random.nextInt(60);
                if (at + length > to) break;
                blanks.add(IN.blank("b" + made++, "part", at + "/16", length + "/16"));
                at += length + 2 + random.nextInt(2) * random.nextInt(20);
            }
            return blanks;
        }
    }
}
