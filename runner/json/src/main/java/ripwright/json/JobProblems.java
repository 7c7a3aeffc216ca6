package ripwright.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ripwright.bill.Part;
import ripwright.job.Problem;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Nearest;
import ripwright.json.tree.Value;
import ripwright.stock.Species;

/** Says of what is wrong with a job as a whole where in the file that is, and leaves out what only follows from another mistake. */
final class JobProblems {
    private static final Pattern ENTRY = Pattern.compile("(stack|rack|parts)\\[(\\d+)](?:\\.(\\w+))?");

    private final Fields job;
    private final Stack stack;
    private final Map<String, Entries<?>> lists;

    JobProblems(Fields job, Stack stack, Entries<Stack> boards, Entries<List<Part>> bill) {
        this.job = job;
        this.stack = stack;
        this.lists = Map.of("stack", boards, "parts", bill);
    }

    /** Notes those that no mistake noted so far explains. */
    void note(List<Problem> problems) {
        boolean pricesRead = job.value("prices").filter(Value::isObject).isPresent();
        for (Problem problem : problems) {
            Matcher entry = ENTRY.matcher(problem.where());
            if (!entry.matches()) noteWhole(problem);
            else if (!isNotedAlready(String.valueOf(entry.group(3)), pricesRead)) noteEntry(problem, entry);
        }
    }

    /** Ids and names are compared as they are read; without prices none can be missing. */
    private static boolean isNotedAlready(String field, boolean pricesRead) {
        return field.equals("id") || field.equals("name") || (field.equals("price") && !pricesRead);
    }

    private void noteEntry(Problem problem, Matcher entry) {
        boolean ofStack = entry.group(1).equals("stack") && entry.group(3) != null;
        if (ofStack) noteStack(Integer.parseInt(entry.group(2)), entry.group(3), problem.what());
        else job.wrong(entry.group(1), problem.where() + ": " + problem.what());
    }

    /** A wood without a price may only be misspelled: then that is said, where its name stands. */
    private void noteStack(int board, String field, String what) {
        Fields entry = stack.entries().get(board);
        Species species = stack.boards().get(board).species();
        Optional<Nearest> meant = field.equals("price") ? likelyMeant(species) : Optional.empty();
        if (meant.isEmpty()) entry.wrong(field, what);
        else
            entry.wrong(
                    "species",
                    "No price for \"" + species + "\". " + meant.get().sentence()
                            + " If not, add it to prices, or give the board its own.");
    }

    /** The wood with a price that is likely meant. */
    private Optional<Nearest> likelyMeant(Species species) {
        Set<String> priced = job.value("prices")
                .flatMap(Value::fields)
                .map(prices -> prices.all().keySet())
                .orElse(Set.of());
        return priced.isEmpty()
                ? Optional.empty()
                : Optional.of(new Nearest(species.name(), priced)).filter(Nearest::near);
    }

    /** A stack or bill that could not be read is not also called empty. */
    private void noteWhole(Problem problem) {
        String[] where = problem.where().split("\\.", 2);
        Optional<Entries<?>> list = Optional.ofNullable(lists.get(where[0]));
        if (list.isPresent()) {
            if (list.get().good()) list.get().wrong(job, problem.what());
            return;
        }
        if (where.length == 1) {
            job.wrong(where[0], problem.what());
            return;
        }
        job.value(where[0])
                .flatMap(Value::fields)
                .ifPresentOrElse(
                        fields -> fields.wrong(where[1], problem.what()), () -> job.wrong(where[0], problem.what()));
    }
}
