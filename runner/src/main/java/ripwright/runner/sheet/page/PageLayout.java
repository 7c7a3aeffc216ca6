package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.Ending;
import ripwright.job.Job;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.runner.sheet.drawing.BoardDrawing;
import ripwright.runner.sheet.drawing.Key;
import ripwright.runner.sheet.drawing.Scale;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Survey;

/** The door of this package: lays out the sheet of a plan, block by block. */
public final class PageLayout {
    private final Job job;
    private final Plan plan;
    private final Optional<Ending> ending;

    /** The sheet of {@code plan}, which answers {@code job}; {@code ending} is why the search for it went no further. */
    public PageLayout(Job job, Plan plan, Optional<Ending> ending) {
        this.job = job;
        this.plan = plan;
        this.ending = ending;
    }

    /** The page. */
    public Page page() {
        List<BoardMap> maps = new Survey(job, plan).maps();
        Tape tape = new Tape(plan.units());
        Scale scale = Scale.fitting(maps.stream().map(BoardMap::board).toList());
        List<Figure> figures = new ArrayList<>();
        for (BoardMap map : maps) {
            int number = figures.size() + 1;
            figures.add(new Figure(number, new BoardDrawing("Fig. " + number, map, plan.units(), scale).drawing()));
        }
        Pieces pieces = new Pieces(job, plan, maps);
        Finish finish = new Finish(job, plan, pieces, tape);
        List<Block> work = work(pieces, tape);
        List<Run> runs = Run.of(plan.steps());
        int beforeDrawings = !runs.isEmpty() && runs.get(0).work() == Run.Work.BREAKDOWN ? 1 : 0;
        return new Page(
                new TitleFacts(job, plan, ending).block(),
                preparation(finish, pieces, maps, tape),
                new Key(plan.units(), scale).drawing(),
                figures,
                work.subList(0, beforeDrawings),
                work.subList(beforeDrawings, work.size()),
                finish.blocks(),
                new Labels(plan, pieces, tape).all(),
                new Differences(plan, pieces, tape).all(),
                plan.units() == Unit.INCH ? "inches" : "millimeters");
    }

    private List<Block> preparation(Finish finish, Pieces pieces, List<BoardMap> maps, Tape tape) {
        List<Block> blocks = new ArrayList<>(new Preparation(new CautionNotes(plan, pieces), maps, tape).blocks());
        blocks.add(1, finish.parts()); // behind the cautions
        return blocks;
    }

    private List<Block> work(Pieces pieces, Tape tape) {
        CautionNotes cautions = new CautionNotes(plan, pieces);
        StepCells cells = new StepCells(cautions.minded());
        CutWords words = new CutWords(job, plan, pieces, tape);
        RoughWork rough = new RoughWork(pieces, tape, cells, job.breakdown().leavesOver());
        RipWork rips = new RipWork(plan, pieces, tape, cells);
        CrosscutWork crosscuts = new CrosscutWork(pieces, tape, cells, words);
        FitWork fits = new FitWork(pieces, tape, cells, words);
        List<Run> runs = Run.of(plan.steps());
        List<Run> stops =
                runs.stream().filter(run -> run.work() == Run.Work.STOP).toList();
        List<Block> blocks = new ArrayList<>();
        for (Run run : runs) {
            Block block = switch (run.work()) {
                case BREAKDOWN -> rough.breakdown(run.steps());
                case MILL -> rough.mill(run.steps());
                case STRAIGHTEN -> rough.straighten(run.steps());
                case RIP -> rips.block(run);
                case SQUARE -> crosscuts.square(run.steps());
                case WHOLE -> crosscuts.whole(run.steps());
                case STOP -> crosscuts.stop(run, stops.indexOf(run) + 1, stops.size());
                case FIT -> fits.block(run.steps());
                case TRIM -> crosscuts.trim(run.steps());
            };
            blocks.add(block.with(cautions.about(run.steps())));
        }
        return blocks;
    }
}
