package ripwright.json;

import java.math.BigDecimal;
import java.util.List;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Tally;

/** A plan file. */
final class PlanFields extends ObjectKind<Plan> {
    private static final Kind<BigDecimal> FIGURE = Amounts.figure();
    private static final Kind<Cost> COST = ObjectKind.of(
            "an object with stock, salvage, labor, net, bound, gap and proven",
            fields -> new Cost(
                    fields.required("stock", FIGURE),
                    fields.required("salvage", FIGURE),
                    fields.required("labor", FIGURE),
                    fields.required("net", FIGURE),
                    fields.required("bound", FIGURE),
                    fields.required("gap", FIGURE),
                    fields.required("proven", Kinds.flag())));

    @Override
    public String expected() {
        return "an object, starting with {";
    }

    @Override
    protected Plan read(Fields fields) {
        Lengths lengths = Lengths.planned(Format.read(fields));
        Kind<Length> length = lengths.any();

        WorkFields work = new WorkFields(length);
        String job = fields.required("job", Names.of("job's name"));
        Plan.Status status = fields.required("status", Kinds.choice(Plan.Status.class));
        Cost cost = fields.required("cost", COST);
        Tally tally = tally(fields);
        List<CutBoard> boards = fields.required("boards", Kinds.list(new CutFields(length).board()));
        RemainsFields remains = new RemainsFields(lengths, job, boards);
        return new Plan(
                job,
                lengths.unit(),
                status,
                cost,
                tally,
                boards,
                fields.required("settings", Kinds.list(work.setting())),
                fields.required("testBlanks", Kinds.list(work.testBlank())),
                fields.required("steps", Kinds.list(work.step())),
                fields.required("offcuts", Kinds.list(remains.offcut())),
                fields.required("short", Kinds.list(remains.shortage())),
                fields.required("cautions", Kinds.list(remains.caution())));
    }

    private static Tally tally(Fields plan) {
        BigDecimal yield = plan.required("yield", FIGURE);
        BigDecimal minutes = plan.required("minutes", FIGURE);
        Kind<Tally> boardFeet = ObjectKind.of(
                "an object with consumed, parts, offcuts and waste",
                fields -> new Tally(
                        fields.required("consumed", FIGURE),
                        fields.required("parts", FIGURE),
                        fields.required("offcuts", FIGURE),
                        fields.required("waste", FIGURE),
                        yield,
                        minutes));
        return plan.required("boardFeet", boardFeet);
    }
}
