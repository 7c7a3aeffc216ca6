/**
 * The files of CONTRACT.md, for the runner and for programs that embed the library: jobs, racks, plans and reports, from
 * paths and from streams, and back to bytes. The doors are {@link ripwright.json.JobReader}, {@link
 * ripwright.json.RackReader}, {@link ripwright.json.PlanReader}, {@link ripwright.json.ReportFile}, {@link
 * ripwright.json.JobWriter}, {@link ripwright.json.RackWriter} and {@link ripwright.json.PlanWriter}; each call stands for
 * itself, on any thread. All that is wrong with an input, be it that there is no such file, comes as one {@link
 * ripwright.json.tree.WrongInputException}; of a text no more is read than {@link ripwright.json.tree.TextLimit} allows. A
 * call blocks as long as a file or a stream does, and takes no notice of an interruption. Beside the doors, one small class for every object of a file. Uses {@code tree}
 * and the records of {@code core}.
 */
@NullMarked
package ripwright.json;

import org.jspecify.annotations.NullMarked;
