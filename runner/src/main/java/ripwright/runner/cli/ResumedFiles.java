package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files of a resumed plan, under a name nothing bears yet: {@code lockers.resumed.plan.json} after
 * {@code lockers.plan.json}, then {@code lockers.resumed-2.plan.json}, so that no plan is ever written over.
 */
final class ResumedFiles {
    private static final Pattern RESUMED = Pattern.compile("(.+?)\\.resumed(?:-\\d+)?");
    private static final int MOST_RESUMED = 1_000; // of one job, as far as anyone looks
    private static final List<String> ENDINGS = List.of(".plan.json", ".job.json", ".rack.json", ".sheet.html");

    private final Path folder;
    private final String stem;

    private ResumedFiles(Path folder, String stem) {
        this.folder = folder;
        this.stem = stem;
    }

    /** After the plan of that file, next to it or under {@code out}, which is made when it is not there. */
    static ResumedFiles after(Path plan, Optional<Path> out) throws IOException {
        Path folder = out.orElseGet(() -> folder(plan));
        Files.createDirectories(folder.toAbsolutePath());
        Matcher resumed = RESUMED.matcher(stem(plan));
        String begun = resumed.matches() ? resumed.group(1) : stem(plan);
        ResumedFiles files = new ResumedFiles(folder, begun + ".resumed");
        for (int n = 2; files.there(); n++) files = new ResumedFiles(folder, begun + ".resumed-" + n);
        return files;
    }

    /** Where the job of a plan lies when it is not named: {@code lockers.job.json} beside {@code lockers.plan.json}. */
    static Path jobOf(Path plan) {
        return folder(plan).resolve(stem(plan) + ".job.json");
    }

    /** The job with what came from spreadsheets, {@code lockers.whole.json}, where planning wrote it beside the plan. */
    static Optional<Path> wholeJobOf(Path plan) {
        return Optional.of(folder(plan).resolve(stem(plan) + ".whole.json")).filter(Files::exists);
    }

    /** The other plans of the chain that lie beside that plan: the one it was begun by, and what was resumed since. */
    static List<Path> others(Path plan) {
        Matcher resumed = RESUMED.matcher(stem(plan));
        if (!resumed.matches()) return List.of();
        List<Path> others = new ArrayList<>();
        String begun = resumed.group(1);
        for (int n = 0; n < MOST_RESUMED; n++) {
            String more = n == 0 ? "" : n == 1 ? ".resumed" : ".resumed-" + n;
            Path other = folder(plan).resolve(begun + more + ".plan.json");
            if (!Files.exists(other) && n > 1) break;
            if (Files.exists(other) && !stem(other).equals(stem(plan))) others.add(other);
        }
        return others;
    }

    private static Path folder(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(Path.of(""));
    }

    private static String stem(Path plan) {
        String name = String.valueOf(plan.getFileName());
        for (String ending : List.of(".plan.json", ".json"))
            if (name.endsWith(ending) && name.length() > ending.length())
                return name.substring(0, name.length() - ending.length());
        return name;
    }

    private boolean there() {
        return ENDINGS.stream().anyMatch(ending -> Files.exists(folder.resolve(stem + ending)));
    }

    Path folder() {
        return folder.toAbsolutePath();
    }

    Path plan() {
        return folder.resolve(stem + ".plan.json");
    }

    Path job() {
        return folder.resolve(stem + ".job.json");
    }

    Path rack() {
        return folder.resolve(stem + ".rack.json");
    }

    Path sheet() {
        return folder.resolve(stem + ".sheet.html");
    }

    /** How the job names its rack. */
    String rackFromJob() {
        return stem + ".rack.json";
    }
}
