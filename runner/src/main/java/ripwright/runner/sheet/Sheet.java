package ripwright.runner.sheet;

import java.util.Map;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.runner.sheet.page.PageLayout;

/**
 * The shop sheet of one plan: a page of HTML that needs nothing from outside, made for paper first. The same plan gives the
 * same text.
 */
public final class Sheet {
    private final Job job;
    private final Plan plan;

    /** The sheet of {@code plan}, which answers {@code job}. */
    public Sheet(Job job, Plan plan) {
        this.job = job;
        this.plan = plan;
    }

    /** The whole page, well-formed as XML too. */
    public String html() {
        Style style = Style.ofSheet();
        return Markup.rendered(
                "sheet.jte",
                Map.of("page", new PageLayout(job, plan).page(), "style", style.text(), "styleHash", style.hash()));
    }
}
