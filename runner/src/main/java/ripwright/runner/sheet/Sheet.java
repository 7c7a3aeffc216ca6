package ripwright.runner.sheet;

import java.util.Map;
import java.util.Optional;
import ripwright.Ending;
import ripwright.Planned;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.runner.sheet.page.PageLayout;

/**
 * The shop sheet of one plan: a page of HTML that needs nothing from outside, made for paper first. On a screen its boxes
 * can be ticked and what came out different be told. The same plan gives the same text.
 */
public final class Sheet {
    private final Job job;
    private final Plan plan;
    private final Optional<Ending> ending;

    private Sheet(Job job, Plan plan, Optional<Ending> ending) {
        this.job = job;
        this.plan = plan;
        this.ending = ending;
    }

    /** The sheet of {@code plan}, which answers {@code job}; it is silent on how the search for it ended. */
    public Sheet(Job job, Plan plan) {
        this(job, plan, Optional.empty());
    }

    /** The sheet of what was just {@code planned} for {@code job}. */
    public Sheet(Job job, Planned planned) {
        this(job, planned.plan(), Optional.of(planned.ending()));
    }

    /** The whole page, well-formed as XML too. */
    public String html() {
        Inline style = Inline.style();
        Inline script = Inline.script();
        Map<String, Object> values = Map.of(
                "page", new PageLayout(job, plan, ending).page(),
                "digest", Digest.of(plan),
                "style", style.text(),
                "styleHash", style.hash(),
                "script", script.text(),
                "scriptHash", script.hash());
        return Markup.rendered("sheet.jte", values);
    }
}
