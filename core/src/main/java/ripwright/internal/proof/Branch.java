package ripwright.internal.proof;

/**
 * A restriction on how many blanks of a part type one board makes.
 *
 * @param board the board's place in its set
 * @param partType the type
 * @param atLeast whether it makes at least so many; else it makes at most so many
 * @param many how many
 */
public record Branch(int board, int partType, boolean atLeast, int many) {}
