package ripwright.runner.sheet.page;

import java.util.List;
import ripwright.runner.sheet.drawing.Drawing;

/**
 * The whole sheet.
 *
 * @param title what the plan comes to
 * @param preparation what to mind and what to fetch
 * @param key the key to the drawings
 * @param figures one for each board
 * @param breakdown the boards' break-down, beside which the drawings stand; may be empty
 * @param work what to do then, in the order of the steps
 * @param finish what to rack and buy
 * @param labels one for each blank
 * @param outcomes what can come out different, step by step
 * @param unit what lengths are told in, in a word
 */
public record Page(
        TitleBlock title,
        List<Block> preparation,
        Drawing key,
        List<Figure> figures,
        List<Block> breakdown,
        List<Block> work,
        List<Block> finish,
        List<Label> labels,
        List<Outcomes> outcomes,
        String unit) {
    /** Keeps copies of the lists. */
    public Page {
        preparation = List.copyOf(preparation);
        figures = List.copyOf(figures);
        breakdown = List.copyOf(breakdown);
        work = List.copyOf(work);
        finish = List.copyOf(finish);
        labels = List.copyOf(labels);
        outcomes = List.copyOf(outcomes);
    }
}
