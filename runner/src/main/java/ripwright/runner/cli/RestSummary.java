package ripwright.runner.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.resume.Report;
import ripwright.resume.Resume;
import ripwright.resume.Resumed;
import ripwright.resume.Spent;

/** What a resumed plan has behind it, in a few lines. The same text for the same plan and report. */
final class RestSummary {
    static final int MARGIN = 16;

    private final Job job;
    private final Plan plan;
    private final Report report;
    private final Resume resume;

    RestSummary(Job job, Plan plan, Report report, Resume resume) {
        this.job = job;
        this.plan = plan;
        this.report = report;
        this.resume = resume;
    }

    /** What is done and spent, and what the whole comes to with the rest; every line ended by a line break. */
    String text(Optional<Resumed> rest) {
        StringBuilder text = new StringBuilder();
        line(text, "done", done());
        line(text, "spent", spent());
        rest.ifPresent(resumed -> new InHand(resumed).lines().forEach((name, value) -> line(text, name, value)));
        rest.ifPresent(resumed -> line(text, "whole job", whole(resumed)));
        rest.flatMap(this::fence).ifPresent(fence -> line(text, "fence", fence));
        if (!resume.impossible().isEmpty()) line(text, "lost", lost());
        return text.toString();
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append("  ")
                .append(name)
                .append(" ".repeat(MARGIN - 2 - name.length()))
                .append(value)
                .append('\n');
    }

    private String done() {
        int made = resume.made().values().stream().mapToInt(Integer::intValue).sum();
        int wanted = job.parts().stream().mapToInt(Part::count).sum();
        int begun = report.made().size();
        String byPiece = begun == 0 ? "" : " and " + begun + (begun == 1 ? " piece" : " pieces") + " of steps underway";
        return report.done().size() + " of " + plan.steps().size() + " steps" + byPiece + "; " + made + " of " + wanted
                + " parts are made and good";
    }

    private String spent() {
        Spent spent = resume.spent();
        List<String> boards = spent.boards();
        String opened = boards.isEmpty()
                ? "nothing, no board is opened yet"
                : spent.stock().rounded().toPlainString() + " for " + boards.size()
                        + (boards.size() == 1 ? " board: " : " boards: ") + String.join(", ", boards);
        BigDecimal minutes = spent.minutes().setScale(0, RoundingMode.UP);
        String labor = spent.labor().rounded().signum() == 0
                ? ""
                : ", which cost " + spent.labor().rounded().toPlainString();
        return opened + "\n" + " ".repeat(MARGIN) + "about " + minutes.toPlainString() + " min at the saws" + labor;
    }

    private String whole(Resumed rest) {
        BigDecimal net = rest.plan().cost().net();
        return resume.spent().withRest(net).rounded().toPlainString()
                + " with the rest and less what pieces left over fetch; "
                + plan.cost().net().toPlainString() + " was planned";
    }

    /** Where the fence was set last, and may still stand. */
    private Optional<String> fence(Resumed rest) {
        Optional<Setting> last = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.RIP && isBegun(step))
                .reduce((before, after) -> after)
                .flatMap(Step::setting)
                .flatMap(id -> plan.settings().stream()
                        .filter(setting -> setting.id().equals(id))
                        .findFirst());
        if (last.isEmpty() || rest.plan().settings().isEmpty()) return Optional.empty();
        Setting first = rest.plan().settings().get(0);
        String width =
                job.units().nearest(last.get().width()) + " " + job.units().symbol();
        boolean stands = first.width().equals(last.get().width());
        return Optional.of(
                stands
                        ? "if it still stands at " + width + ", " + first.id()
                                + " is set already; it is counted and tested again all the same"
                        : "was last at " + width + "; every setting from here on is set and tested again");
    }

    private boolean isBegun(Step step) {
        return report.done().contains(step.n()) || step.makes().stream().anyMatch(report.made()::contains);
    }

    private String lost() {
        return resume.impossible().entrySet().stream()
                .map(RestSummary::lost)
                .collect(Collectors.joining("\n" + " ".repeat(MARGIN)));
    }

    private static String lost(Map.Entry<String, Integer> part) {
        return part.getValue() + " x " + part.getKey() + ": nothing is left of the board it belongs to";
    }
}
