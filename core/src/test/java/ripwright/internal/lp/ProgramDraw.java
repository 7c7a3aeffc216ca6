package ripwright.internal.lp;

import java.util.SplittableRandom;

/**
 * Draws rows and columns of small whole numbers.
 *
 * @param most the most that a row wants or allows, and a column is in a row
 * @param capped of ten rows, how many say at most
 * @param negative of ten numbers in a column, how many are below zero
 */
record ProgramDraw(SplittableRandom random, int most, int capped, int negative) {
    /** What is wanted can mostly be made. */
    static ProgramDraw ample(SplittableRandom random) {
        return new ProgramDraw(random, 4, 2, 1);
    }

    /** Little is allowed, so that some of what is wanted is not made. */
    static ProgramDraw scarce(SplittableRandom random) {
        return new ProgramDraw(random, 4, 6, 0);
    }

    /** Zeros and ones. */
    static ProgramDraw degenerate(SplittableRandom random) {
        return new ProgramDraw(random, 1, 4, 0);
    }

    void addRow(GrowingProgram program) {
        double[] values = values(program.columns());
        if (random.nextInt(10) < capped) program.addAtMost(random.nextInt(most + 1), 1 + random.nextInt(30), values);
        else program.addAtLeast(random.nextInt(3 * most), 10 + random.nextInt(30), random.nextInt(2), values);
    }

    void addColumn(GrowingProgram program) {
        program.add(values(program.rows()), random.nextInt(3 * most));
    }

    private double[] values(int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            if (random.nextInt(3) > 0) continue;
            values[i] = random.nextInt(10) < negative ? -1 : 1 + random.nextInt(most);
        }
        return values;
    }
}
