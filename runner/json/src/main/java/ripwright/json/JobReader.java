package ripwright.json;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import ripwright.job.Job;
import ripwright.json.tree.JsonFile;
import ripwright.json.tree.Problems;
import ripwright.json.tree.Value;
import ripwright.json.tree.WrongInputException;

/** Reads job files, with the rack files they name. Keeps no state; safe on any thread. */
public final class JobReader {
    private JobReader() {}

    /**
     * The job of that file. The path of a rack file is taken from the folder that the file is in.
     *
     * @throws WrongInputException with all that is wrong with it and with its rack file
     */
    public static Job read(Path file) throws WrongInputException {
        return read(file, Spreadsheets.NONE);
    }

    /**
     * The same, its stack or its bill from a spreadsheet.
     *
     * @throws WrongInputException with all that is wrong with it, with its rack file and with the spreadsheets
     */
    public static Job read(Path file, Spreadsheets spreadsheets) throws WrongInputException {
        Problems problems = new Problems();
        JobFields fields = new JobFields(RackHome.of(file), spreadsheets, problems);
        return job(new JsonFile(problems).value(file), fields, problems);
    }

    /**
     * The same from a stream, which messages call {@code name}; it is read to its end, and the caller closes it. A rack file
     * is looked for from {@code folder} and read only there and below, links followed.
     *
     * @throws WrongInputException with all that is wrong with it and with its rack file
     * @throws IOException when the stream throws it
     */
    public static Job read(InputStream in, String name, Path folder) throws WrongInputException, IOException {
        Problems problems = new Problems();
        JobFields fields = new JobFields(RackHome.inside(folder), Spreadsheets.NONE, problems);
        return job(new JsonFile(problems).value(name, in), fields, problems);
    }

    /** The path of the rack file as a job names it; empty where it names none, holds its rack or cannot be read. */
    public static Optional<String> rackOf(byte[] job) {
        try {
            return new JsonFile(new Problems())
                    .value("job", new ByteArrayInputStream(job))
                    .flatMap(Value::fields)
                    .flatMap(fields -> fields.value("rack"))
                    .flatMap(Value::text);
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from memory failed.", e);
        }
    }

    private static Job job(Optional<Value> value, JobFields fields, Problems problems) throws WrongInputException {
        Optional<Job> job = value.flatMap(FileKind.JOB::required).flatMap(fields::read);
        problems.throwIfAny();
        return job.orElseThrow();
    }
}
