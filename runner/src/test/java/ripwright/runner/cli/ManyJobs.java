package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Writes many small jobs, for measuring: {@code ManyJobs COUNT FOLDER} makes a file of each, {@code ManyJobs COUNT} lines on
 * standard output. The same number is always the same job: one to four boards, three to eight parts, settings tested.
 */
final class ManyJobs {
    private ManyJobs() {}

    public static void main(String[] arguments) throws IOException {
        int count = Integer.parseInt(arguments[0]);
        for (int i = 1; i <= count; i++) {
            String job = job(i);
            if (arguments.length == 1) System.out.println(job);
            else Files.writeString(Path.of(arguments[1]).resolve(String.format(Locale.ROOT, "j%05d.job.json", i)), job);
        }
    }

    static String job(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder stack = new StringBuilder();
        int boards = random.nextInt(1, 5);
        for (int i = 1; i <= boards; i++)
            stack.append(i > 1 ? ", " : "")
                    .append("{ \"id\": \"M")
                    .append(i)
                    .append(
                            "\", \"species\": \"maple\", \"thickness\": \"3/4\", \"straightEdges\": 2, \"endTrim\": 1, ")
                    .append(size(random.nextInt(16 * 5, 16 * 10), 16, random.nextInt(60, 121), 1))
                    .append(" }");
        StringBuilder parts = new StringBuilder();
        int lines = random.nextInt(1, 4);
        for (int i = 1; i <= lines; i++)
            parts.append(i > 1 ? ", " : "")
                    .append("{ \"name\": \"part ")
                    .append(i)
                    .append("\", \"count\": ")
                    .append(random.nextInt(1, 4))
                    .append(", \"thickness\": \"3/4\", \"species\": \"maple\", \"face\": \"show\", ")
                    .append(size(random.nextInt(8 * 2, 8 * 5), 8, random.nextInt(14, 40), 1))
                    .append(" }");
        return "{ \"format\": 1, \"job\": \"Job " + seed + "\", \"units\": \"in\", "
                + "\"saw\": { \"ripKerf\": \"1/8\", \"crosscutKerf\": \"1/8\", \"longestRip\": 96, \"shortestRip\": 12 }, "
                + "\"testRip\": { \"length\": 14, \"tries\": 1 }, \"keep\": { \"length\": 12, \"width\": 2 }, "
                + "\"prices\": { \"maple\": 8.4 }, \"salvage\": 0.4, \"stack\": [ " + stack + " ], \"parts\": [ "
                + parts
                + " ], \"limits\": { \"seconds\": 0.2, \"seed\": " + seed + " } }";
    }

    private static String size(int width, int widthParts, int length, int lengthParts) {
        return "\"width\": \"" + width + "/" + widthParts + "\", \"length\": \"" + length + "/" + lengthParts + "\"";
    }
}
