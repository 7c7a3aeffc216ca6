package ripwright.runner.sheet;

import java.util.Map;
import java.util.Optional;
import ripwright.Ending;
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

    /** The sheet of {@code plan}, which answers {@code job}; {@code ending} is why the search for it went no further. */
    public Sheet(Job job, Plan plan, Optional<Ending> ending) {
        this.job = job;
        this.plan = plan;
        this.ending = ending;
    }

    /** The sheet of {@code plan}, which answers {@code job}; it is silent on how the search for it ended. */
    public Sheet(Job job, Plan plan) {
        this(job, plan, Optional.empty());
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
