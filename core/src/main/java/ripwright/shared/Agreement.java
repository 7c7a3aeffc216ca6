package ripwright.shared;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.saw.Labor;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** Whether jobs can share a stack: one shop with its saws and prices, and boards that are the same wherever they are listed. */
final class Agreement {
    private record Listed(Job job, Board board) {}

    private record Priced(Job job, BigDecimal price) {}

    private final List<Job> jobs;
    private final List<String> disagreements = new ArrayList<>();

    Agreement(List<Job> jobs) {
        this.jobs = jobs;
    }

    /** Throws all in which they do not agree, if anything. */
    void require() {
        names();
        alike("units", job -> job.units().symbol());
        alike("the saws", Job::saw);
        alike("the test rip", Job::testRip);
        alike("what is worth keeping", Job::keep);
        alike("salvage", job -> job.salvage().stripTrailingZeros());
        alike("labor", job -> job.labor().map(Agreement::plain));
        prices();
        boards();
        parts();
        if (!disagreements.isEmpty()) throw new DisagreeingJobsException(disagreements);
    }

    private void names() {
        Set<String> names = new HashSet<>();
        for (Job job : jobs)
            if (!names.add(job.name()))
                disagreements.add("Two jobs are called " + quoted(job.name()) + "; rename one.");
    }

    private <T> void alike(String what, Function<Job, T> of) {
        Job first = jobs.get(0);
        for (Job other : jobs)
            if (!of.apply(other).equals(of.apply(first)))
                disagreements.add(
                        quoted(first.name()) + " and " + quoted(other.name()) + " do not agree on " + what + ".");
    }

    private void prices() {
        Map<Species, Priced> told = new HashMap<>();
        for (Job job : jobs)
            job.prices().forEach((species, price) -> {
                Priced first = told.putIfAbsent(species, new Priced(job, price));
                if (first != null && first.price().compareTo(price) != 0)
                    disagreements.add(quoted(first.job().name()) + " and " + quoted(job.name())
                            + " do not agree on the price of " + species + ": "
                            + first.price().toPlainString() + " and " + price.toPlainString() + ".");
            });
    }

    private void boards() {
        Map<String, Listed> first = new HashMap<>();
        for (Job job : jobs) {
            for (Board board : job.boards()) {
                Listed listed = first.putIfAbsent(board.id(), new Listed(job, board));
                if (listed != null && !plain(listed.board()).equals(plain(board)))
                    disagreements.add("The board " + quoted(board.id()) + " is not the same in "
                            + quoted(listed.job().name()) + " and " + quoted(job.name())
                            + ". Give it one measure, or two ids.");
            }
        }
        for (Listed copy : first.values()) {
            Listed whole = first.get(BoardCopies.stem(copy.board().id()));
            if (whole != null && !copy.equals(whole) && copy.board().id().endsWith("#1"))
                disagreements.add("There is one board " + quoted(whole.board().id()) + " in "
                        + quoted(whole.job().name()) + " and there are several in "
                        + quoted(copy.job().name()) + ". Give both the same count, or two ids.");
        }
    }

    private void parts() {
        for (Job job : jobs)
            for (Part part : job.parts())
                if (!part.boards().isEmpty())
                    disagreements.add("The part " + quoted(part.name()) + " of " + quoted(job.name())
                            + " comes from certain boards only; plan that job alone.");
    }

    /** With its price as short as it can be written, as 8.4 and 8.40 are one price. */
    private static Board plain(Board board) {
        return board.price().isEmpty()
                ? board
                : board.toBuilder()
                        .price(board.price().get().stripTrailingZeros())
                        .build();
    }

    private static List<BigDecimal> plain(Labor labor) {
        return Stream.of(labor.perHour(), labor.settingMinutes(), labor.ripMinutes(), labor.crosscutMinutes())
                .map(BigDecimal::stripTrailingZeros)
                .toList();
    }

    private static String quoted(String name) {
        return "\"" + name + "\"";
    }
}
