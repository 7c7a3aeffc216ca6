package ripwright.runner.rack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import ripwright.Options;
import ripwright.Planner;
import ripwright.json.JobReader;
import ripwright.json.PlanWriter;
import ripwright.json.tree.WrongInputException;
import ripwright.runner.disk.Disk;

/** A folder with a rack and jobs that are planned from it. */
public final class ShopFolder {
    public static final String RACK = """
            {
              "format": 1, "units": "in",
              "offcuts": [
                { "id": "R1", "species": "ash", "thickness": "3/4", "width": "4 1/2", "length": "30 1/4",
                  "straightEdges": 2, "mark": "chalk one", "since": "spring" },
                { "id": "R2", "species": "poplar", "thickness": 0.75, "width": 4, "length": "20 5/16", "straightEdges": 2 },
                { "id": "R3", "species": "ash", "thickness": "3/4", "width": "7", "length": "26", "straightEdges": 1 }
              ]
            }
            """;

    /** Some rails, for which the rack's ash and a board or two do. */
    public static final String JOB = """
            {
              "format": 1, "job": "Coat rack", "units": "in",
              "saw": { "ripKerf": "1/8", "crosscutKerf": "1/8" },
              "testRip": { "length": 12, "tries": 1 },
              "keep": { "length": 10, "width": 2 },
              "prices": { "ash": 6, "poplar": 4 },
              "salvage": 0.5,
              "stack": [
                { "id": "A1", "species": "ash", "thickness": "3/4", "width": 6, "length": 72, "straightEdges": 2, "endTrim": 1 },
                { "id": "A2", "count": 3, "species": "ash", "thickness": "3/4", "width": 5, "length": 60, "straightEdges": 2 }
              ],
              "rack": "rack.json",
              "parts": [
                { "name": "rail", "count": 4, "length": 24, "width": "2 1/4", "thickness": "3/4", "species": "ash", "face": "show" },
                { "name": "post", "count": 1, "length": 66, "width": "2 1/2", "thickness": "3/4", "species": "ash", "face": "show" }
              ]
            }
            """;

    private static final Options QUICK = Options.defaults().withMostRecuts(40);

    private final Path folder;

    ShopFolder(Path folder) {
        this.folder = folder;
    }

    /** With that rack and that job, which is planned. */
    public static ShopFolder planned(Path folder, String rack, String job) throws IOException, WrongInputException {
        ShopFolder shop = new ShopFolder(folder);
        Files.createDirectories(folder);
        Files.writeString(shop.rack(), rack);
        shop.plan("coats", job);
        return shop;
    }

    /** Writes that job and its plan; answers the plan's file. */
    Path plan(String name, String job) throws IOException, WrongInputException {
        Path file = Files.writeString(folder.resolve(name + ".job.json"), job);
        Path plan = folder.resolve(name + ".plan.json");
        Files.write(plan, PlanWriter.bytes(Planner.plan(JobReader.read(file), QUICK)));
        return plan;
    }

    /** The rack file. */
    public Path rack() {
        return folder.resolve("rack.json");
    }

    /** The plan file. */
    public Path plan() {
        return folder.resolve("coats.plan.json");
    }

    Settled settle(Disk disk) throws IOException, WrongInputException, RefusedException {
        return settle(plan(), disk);
    }

    Settled settle(Path plan, Disk disk) throws IOException, WrongInputException, RefusedException {
        return new Desk(rack(), disk).settle(plan, Optional.empty(), "2026-10-01");
    }

    Unsettled unsettle(Disk disk) throws IOException, WrongInputException, RefusedException {
        return new Desk(rack(), disk).unsettle(plan());
    }

    /** Why that cannot be done. */
    static List<String> refusal(Work work) throws IOException, WrongInputException {
        try {
            work.run();
        } catch (RefusedException e) {
            return e.reasons();
        }
        throw new AssertionError("It was done.");
    }

    /** What is done at a desk. */
    interface Work {
        void run() throws IOException, WrongInputException, RefusedException;
    }

    /** A copy of it all in another folder. */
    public ShopFolder copy(Path to) throws IOException {
        Files.createDirectories(to);
        for (Map.Entry<String, String> file : files().entrySet())
            Files.writeString(to.resolve(file.getKey()), file.getValue());
        return new ShopFolder(to);
    }

    /** Every file that people see, but for the last good copy of the rack: they come and go with bookings. */
    public Map<String, String> books() {
        Map<String, String> files = files();
        files.keySet().removeIf(name -> name.startsWith(".") || name.equals("rack.last.json"));
        return files;
    }

    /** Files that nobody asked for and nobody needs any more; the lock stays. */
    public List<String> leftovers() {
        return files().keySet().stream()
                .filter(name -> (name.startsWith(".") && !name.equals(".rack.lock")) || name.contains("pending"))
                .toList();
    }

    /** What every file holds. */
    Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.toList())
                files.put(String.valueOf(file.getFileName()), Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }
}
