/**
 * The files of CONTRACT.md: jobs, racks and plans. Its doors are {@link ripwright.runner.json.JobReader}, {@link
 * ripwright.runner.json.RackReader}, {@link ripwright.runner.json.PlanReader} and {@link ripwright.runner.json.PlanWriter};
 * beside them, one small class for every object of a file. Uses {@code tree} and the records of {@code core}.
 */
@NullMarked
package ripwright.runner.json;

import org.jspecify.annotations.NullMarked;
