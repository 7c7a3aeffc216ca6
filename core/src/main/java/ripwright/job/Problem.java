package ripwright.job;

/**
 * One thing wrong with a job as a whole.
 *
 * @param where the field, as in {@code stack[3].price} or {@code rack[0].id}
 * @param what what was found there and what would be right
 */
public record Problem(String where, String what) {}
