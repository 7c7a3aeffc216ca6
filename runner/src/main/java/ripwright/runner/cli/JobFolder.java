package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ripwright.json.tree.JsonFile;

/**
 * The job files in a folder and below, but for what is hidden; links to folders are not followed. Every name that a job file
 * has is one, also where it turns out to be none, and so is a folder that cannot be looked into: it is told, and the others
 * are planned.
 */
final class JobFolder extends SimpleFileVisitor<Path> {
    private static final String ENDING = ".job.json";

    private final Path folder;
    private final List<JobFile> jobs = new ArrayList<>();

    JobFolder(Path folder) {
        this.folder = folder;
    }

    /** All of them, in the order of their paths. */
    List<JobFile> jobs() {
        try {
            Files.walkFileTree(folder, this);
        } catch (IOException e) {
            visitFileFailed(folder, e);
        }
        if (jobs.isEmpty()) hindered(folder, "no file in this folder ends with " + ENDING + ".");
        return jobs.stream().sorted(Comparator.comparing(JobFile::path)).toList();
    }

    @Override
    public FileVisitResult preVisitDirectory(Path file, BasicFileAttributes attributes) {
        if (file.equals(folder)) return FileVisitResult.CONTINUE;
        if (isHidden(file)) return FileVisitResult.SKIP_SUBTREE;
        return visitFile(file, attributes);
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        if (!isHidden(file) && file.toString().endsWith(ENDING))
            jobs.add(new JobFile(file, JobFile.parent(folder.relativize(file)), JsonFile.hindrance(file)));
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
        boolean shut = e instanceof AccessDeniedException;
        hindered(file, shut ? "this user may not look into it." : "it cannot be looked into: " + e.getMessage() + ".");
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path file, @Nullable IOException e) {
        if (e != null) visitFileFailed(file, e);
        return FileVisitResult.CONTINUE;
    }

    private void hindered(Path file, String why) {
        jobs.add(new JobFile(file, JobFile.parent(folder.relativize(file)), Optional.of(why)));
    }

    private static boolean isHidden(Path file) {
        return String.valueOf(file.getFileName()).startsWith(".");
    }
}
