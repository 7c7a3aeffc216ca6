package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.json.csv.PlanTables;
import ripwright.runner.disk.Trouble;
import ripwright.runner.disk.WholeFile;

/** The two files that come of a job. */
final class PlanFiles {
    private final Path folder;
    private final String stem;

    /** Of the job in that file, next to it or under {@code out}. */
    PlanFiles(Path job, Optional<Path> out) {
        this(JobFile.of(job), out);
    }

    /** Of that job, next to it or in its place under {@code out}. */
    PlanFiles(JobFile job, Optional<Path> out) {
        this.folder = out.map(there -> there.resolve(job.folder())).orElseGet(job::home);
        this.stem = stem(String.valueOf(job.path().getFileName()));
    }

    /** That name without what job files end with. */
    static String stem(String name) {
        return without(without(name, ".json"), ".job");
    }

    private static String without(String name, String ending) {
        return name.endsWith(ending) && name.length() > ending.length()
                ? name.substring(0, name.length() - ending.length())
                : name;
    }

    /** What is wrong when two of those jobs would write the same file. */
    static Optional<String> clash(List<JobFile> jobs, Optional<Path> out) {
        Map<Path, Path> first = new HashMap<>();
        for (JobFile job : jobs) {
            Path plan = new PlanFiles(job, out).plan();
            Path other = first.putIfAbsent(plan.toAbsolutePath().normalize(), job.path());
            if (other != null)
                return Optional.of(other + " and " + job.path() + " would both be planned into " + plan
                        + ". Rename one, or plan them apart.");
        }
        return Optional.empty();
    }

    /** Where all of them go. */
    Path folder() {
        return folder.toAbsolutePath();
    }

    /** Where a file with that ending goes, as in {@code .trial.svg}. */
    Path other(String ending) {
        return folder.resolve(stem + ending);
    }

    /** Where the plan goes. */
    Path plan() {
        return folder.resolve(stem + ".plan.json");
    }

    /** Where the sheet goes. */
    Path sheet() {
        return folder.resolve(stem + ".sheet.html");
    }

    /** Where the boards' drawings go, when they are asked for apart. */
    Path drawings() {
        return folder.resolve(stem + ".boards.svg");
    }

    /** Where it is kept what the plan was made from: hidden, as nobody but this program reads it. */
    Path madeFrom() {
        return folder.resolve("." + stem + ".made-from");
    }

    /** A file of its own kind next to the plan, as in {@code lockers.settings.json}. */
    Path beside(String ending) {
        return folder.resolve(stem + ending);
    }

    /** Makes the folder, and refuses early what could not be written in the end. */
    void prepare() throws IOException {
        Path there = folder.toAbsolutePath();
        if (Files.exists(there) && !Files.isDirectory(there)) throw new NotDirectoryException(folder.toString());
        Files.createDirectories(there);
        if (!Files.isWritable(there)) throw new AccessDeniedException(folder.toString());
        for (Path file : List.of(plan(), sheet(), drawings()))
            if (Files.isDirectory(file))
                throw new FileSystemException(file.toString(), null, "a directory has its name");
    }

    /** Writes both, each whole or not at all. */
    void write(byte[] plan, byte[] sheet) throws IOException {
        new WholeFile(sheet()).write(sheet);
        new WholeFile(plan()).write(plan);
    }

    /** Writes the drawings, whole or not at all. */
    void writeDrawings(byte[] drawings) throws IOException {
        new WholeFile(drawings()).write(drawings);
    }

    /** Writes a file with that ending, whole or not at all, and answers where it is. */
    Path write(String ending, byte[] bytes) throws IOException {
        new WholeFile(other(ending)).write(bytes);
        return other(ending);
    }

    /** Writes the tables, each whole or not at all, and answers where they are. */
    List<Path> writeTables(PlanTables tables) throws IOException {
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> table : tables.all().entrySet())
            written.add(write(table.getKey(), table.getValue()));
        return written;
    }

    /** Why something could not be written, in plain words. */
    static String reason(IOException e) {
        return new Trouble(e).words();
    }
}
