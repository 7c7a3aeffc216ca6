package ripwright.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.job.WrongJobException;
import ripwright.json.csv.Columns;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.json.tree.Problems;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/** A job file. Empty when something is wrong with the job as a whole, which is noted. */
final class JobFields extends ObjectKind<Optional<Job>> {
    private static final int MOST_PARTS = 100_000;

    private final RackHome home;
    private final Spreadsheets spreadsheets;
    private final Problems problems;

    JobFields(RackHome home, Spreadsheets spreadsheets, Problems problems) {
        this.home = home;
        this.spreadsheets = spreadsheets;
        this.problems = problems;
    }

    @Override
    public String expected() {
        return "an object, starting with {";
    }

    @Override
    protected Optional<Job> read(Fields fields) {
        Lengths lengths = Lengths.written(Format.read(fields));

        Distinct ids = new Distinct("id");
        String name = fields.required("job", Names.of("job's name"));
        Saw saw = fields.required("saw", new SawFields(lengths));
        TestRip testRip = fields.required("testRip", new TestRipFields(lengths));
        Keep keep = fields.required("keep", new KeepFields(lengths));
        Breakdown breakdown = fields.optional("breakdown", new BreakdownFields(lengths), Breakdown.EXACT);
        Map<Species, BigDecimal> prices = fields.required("prices", new PricesFields());
        BigDecimal salvage = fields.required("salvage", Amounts.share());
        Optional<Labor> labor = fields.optional("labor", new LaborFields());
        Entries<Stack> boards = new Entries<>("stack", new StackKind(lengths, ids), spreadsheets.stack());
        Stack stack = boards.read(fields, Columns.stack(), problems, spreadsheets.remarks());
        List<Board> rack = fields.optional("rack", new RackKind(home, problems, ids))
                .map(Rack::offcuts)
                .orElse(List.of());
        Entries<List<Part>> bill =
                new Entries<>("parts", Kinds.list(new PartFields(lengths), MOST_PARTS), spreadsheets.bill());
        List<Part> parts = bill.read(fields, Columns.bill(), problems, spreadsheets.remarks());
        Limits limits = fields.optional("limits", new LimitsFields(), Limits.NONE);
        try {
            return Optional.of(new Job(
                    name,
                    lengths.unit(),
                    saw,
                    testRip,
                    keep,
                    breakdown,
                    prices,
                    salvage,
                    labor,
                    stack.boards(),
                    rack,
                    parts,
                    limits));
        } catch (WrongJobException e) {
            new JobProblems(fields, stack, boards, bill).note(e.problems());
            return Optional.empty();
        }
    }
}
