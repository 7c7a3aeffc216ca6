package ripwright.runner.sheet;

import java.util.List;
import java.util.Map;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.runner.sheet.drawing.BoardDrawing;
import ripwright.runner.sheet.drawing.Drawing;
import ripwright.runner.sheet.drawing.Scale;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Survey;

/** The drawings of some of a plan's boards as one SVG file that stands alone, drawn as on the sheet. */
public final class Picture {
    private final List<Drawing> drawings;

    /** A picture of those boards of {@code plan}, which answers {@code job}, in the order of the plan. */
    public Picture(Job job, Plan plan, List<String> boards) {
        List<BoardMap> maps = new Survey(job, plan)
                .maps().stream()
                        .filter(map -> boards.contains(map.board().id()))
                        .toList();
        Scale scale = Scale.fitting(maps.stream().map(BoardMap::board).toList());
        drawings = maps.stream()
                .map(map -> new BoardDrawing("", map, plan.units(), scale).drawing())
                .toList();
    }

    /** The file's text. */
    public String svg() {
        return Markup.rendered("picture.jte", Map.of("drawings", drawings));
    }
}
