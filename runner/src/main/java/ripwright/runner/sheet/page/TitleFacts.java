package ripwright.runner.sheet.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import ripwright.Ending;
import ripwright.job.Job;
import ripwright.plan.Cost;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Tally;
import ripwright.runner.sheet.page.TitleBlock.Fact;
import ripwright.saw.Labor;

/** What a plan comes to, in figures and in sentences. */
final class TitleFacts {
    private final Job job;
    private final Plan plan;
    private final Optional<Ending> ending;

    TitleFacts(Job job, Plan plan, Optional<Ending> ending) {
        this.job = job;
        this.plan = plan;
        this.ending = ending;
    }

    TitleBlock block() {
        return new TitleBlock(
                plan.job(),
                status(),
                facts(),
                List.of(bound() + search(), cost() + " " + wood(), minutes() + " " + units()));
    }

    private long wanted() {
        return job.parts().stream().mapToLong(part -> part.count()).sum();
    }

    private long missing() {
        return plan.shortages().stream().mapToLong(Shortage::count).sum();
    }

    private String status() {
        return missing() == 0
                ? "Every part is made."
                : missing() + " of " + wanted() + " parts cannot be made from this stock; see \u201cBuy\u201d.";
    }

    private List<Fact> facts() {
        long stops = plan.steps().stream()
                .flatMap(step -> step.stop().stream())
                .distinct()
                .count();
        return List.of(
                new Fact("Cost", plan.cost().net().toPlainString()),
                new Fact("Yield", Tape.percent(plan.tally().yield(), 1)),
                new Fact("Time at the saws", Tape.time(plan.tally().minutes())),
                new Fact("Parts", (wanted() - missing()) + " of " + wanted()),
                new Fact("Boards", Integer.toString(plan.boards().size())),
                new Fact("Rip settings", Integer.toString(plan.settings().size())),
                new Fact("Stop settings", Long.toString(stops)),
                new Fact("Steps", Integer.toString(plan.steps().size())));
    }

    private String cost() {
        Cost cost = plan.cost();
        String labor =
                cost.labor().signum() == 0 ? "" : ", plus " + cost.labor().toPlainString() + " for labor";
        return "The boards cost " + cost.stock().toPlainString() + ", less "
                + cost.salvage().toPlainString() + " for the offcuts kept" + labor + ".";
    }

    private String bound() {
        Cost cost = plan.cost();
        String any = plan.shortages().isEmpty() ? "No plan" : "No plan that makes as much";
        if (cost.proven()) return any + " can cost less: this one is proven cheapest.";
        if (cost.bound().signum() <= 0 && cost.net().signum() > 0) return "How cheap a plan could be is not known.";
        BigDecimal most = cost.net().subtract(cost.bound());
        return any + " can cost less than " + cost.bound().toPlainString() + ": at most " + most.toPlainString()
                + " could be saved.";
    }

    /** How the search ended; a proof speaks for itself. */
    private String search() {
        if (plan.cost().proven()) return "";
        return ending.map(end -> switch (end) {
                    case PROVEN -> "";
                    case TIME_OVER -> " The search stopped at the time it was given" + seconds() + ".";
                    case NOTHING_BETTER -> " The search ended when it had found nothing better for a while.";
                    case STOPPED -> " The search was stopped early: more time may find a cheaper plan.";
                })
                .orElse("");
    }

    private String seconds() {
        return job.limits().seconds().map(given -> ", " + plain(given) + " s").orElse("");
    }

    private String minutes() {
        Labor labor = job.laborOrUnpaid();
        String reckoned = plain(labor.settingMinutes()) + " minutes for a rip setting, " + plain(labor.ripMinutes())
                + " for a rip, " + plain(labor.crosscutMinutes()) + " for a crosscut";
        return job.labor().isPresent()
                ? "Time is an estimate from the job's own figures: " + reckoned + "."
                : "Time is an estimate from common figures, from memory, as the job gives none: " + reckoned + ".";
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private String wood() {
        Tally tally = plan.tally();
        return "Of " + Tape.boardFeet(tally.consumed()) + " board feet cut, " + Tape.boardFeet(tally.parts())
                + " become finished parts, " + Tape.boardFeet(tally.offcuts()) + " go back to the rack, "
                + Tape.boardFeet(tally.waste()) + " are lost.";
    }

    private String units() {
        return switch (plan.units()) {
            case INCH -> "All lengths are in inches, to the nearest 1/64.";
            case MILLIMETER -> "All lengths are in millimeters, to the nearest tenth.";
        };
    }
}
