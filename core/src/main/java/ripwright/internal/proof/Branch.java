package ripwright.internal.proof;

/**
 * A restriction on how many blanks of a part kind one board makes.
 *
 * @param board the board's place in its set
 * @param partKind the kind
 * @param atLeast whether it makes at least so many; else it makes at most so many
 * @param many how many
 */
public record Branch(int board, int partKind, boolean atLeast, int many) {}
