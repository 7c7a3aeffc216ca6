package ripwright.job;

/**
 * One thing wrong with a job as a whole, or with a report.
 *
 * @param where the field, as in {@code stack[3].price}, {@code rack[0].id} or {@code done[3]}; places in a list count from 0
 * @param what what was found there and what would be right
 */
public record Problem(String where, String what) {}
