/**
 * The files of CONTRACT.md: jobs, racks and plans. Its doors are {@link ripwright.json.JobReader}, {@link
 * ripwright.json.RackReader}, {@link ripwright.json.PlanReader} and {@link ripwright.json.PlanWriter};
 * beside them, one small class for every object of a file. Uses {@code tree} and the records of {@code core}.
 */
@NullMarked
package ripwright.json;

import org.jspecify.annotations.NullMarked;
