package ripwright.runner.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.json.JobReader;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.TextLimit;
import ripwright.runner.disk.Digest;
import ripwright.runner.disk.WholeFile;

/**
 * What a plan was made from, kept beside it: digests of the job file and its rack file, of what was written, and which
 * Ripwright wrote it. A plan counts as done only while all of these still are what they were, down to the last byte: times
 * of files tell nothing once they were copied.
 */
final class MadeFrom {
    private final PlanFiles files;
    private final List<Path> outputs;
    private final Optional<String> inputs; // a line each; empty when one of them cannot be read

    /**
     * Of what that job is now.
     *
     * @param drawings whether its drawings are wanted too
     * @param version which Ripwright this is
     */
    MadeFrom(JobFile job, PlanFiles files, boolean drawings, String version) {
        this.files = files;
        outputs = new ArrayList<>(List.of(files.plan(), files.sheet()));
        if (drawings) outputs.add(files.drawings());
        inputs = inputs(job, version);
    }

    private static Optional<String> inputs(JobFile job, String version) {
        try {
            byte[] bytes = bytes(job.path());
            StringBuilder lines = new StringBuilder("made by " + version + "\n" + Digest.of(bytes) + "  job\n");
            Optional<String> rack = JobReader.rackOf(bytes);
            if (rack.isPresent())
                lines.append(Digest.of(bytes(job.home().resolve(rack.get())))).append("  rack\n");
            return Optional.of(lines.toString());
        } catch (IOException | InvalidPathException e) {
            return Optional.empty(); // whoever reads the job next says what is wrong
        }
    }

    /** What a file holds that may be anything: a pipe is not waited for, and what is too long for a job not held. */
    private static byte[] bytes(Path file) throws IOException {
        int most = TextLimit.ofThisHeap().bytes();
        if (JsonFile.hindrance(file).isPresent() || Files.size(file) > most)
            throw new IOException(file + " is no job or rack");
        return Files.readAllBytes(file);
    }

    /** Whether what stands there was made from just this. */
    boolean stands() throws IOException {
        Path kept = files.madeFrom();
        if (inputs.isEmpty() || !Files.isRegularFile(kept)) return false;
        for (Path output : outputs) if (!Files.isRegularFile(output)) return false;
        return Files.readString(kept, StandardCharsets.ISO_8859_1).equals(text(inputs.get()));
    }

    /** Keeps what the files now written were made from. */
    void keep() throws IOException {
        if (inputs.isPresent())
            new WholeFile(files.madeFrom()).write(text(inputs.get()).getBytes(StandardCharsets.ISO_8859_1));
    }

    private String text(String made) throws IOException {
        StringBuilder text = new StringBuilder(made);
        for (Path output : outputs)
            text.append(Digest.of(Files.readAllBytes(output)))
                    .append("  ")
                    .append(ending(output))
                    .append('\n');
        return text.toString();
    }

    private String ending(Path output) {
        return output.equals(files.plan()) ? "plan" : output.equals(files.sheet()) ? "sheet" : "boards";
    }
}
