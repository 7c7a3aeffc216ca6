package ripwright.testing;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import ripwright.testing.Ticks.Bad;
import ripwright.testing.Ticks.Blank;

/**
 * Where blanks lie on boards with defects that bar them. Between two neighboring strips with blanks there may be empty ones, of
 * any width between theirs: m of them take any room from m times the narrower strip and a kerf to m times the wider one and a
 * kerf. Before the first strip with blanks an empty strip is worth no more than a larger edge loss.
 */
final class CutPositions {
    final IntVar[] x; // x[i]: where it starts along the grain
    final IntVar[] offset; // offset[lead]: of its strip from the reference edge as it lay, edge loss included
    final IntVar[] spared; // spared[lead]: what empty strips just before its strip take, with a kerf each
    final List<List<Literal>> empties = new ArrayList<>(); // empties.get(lead).get(m): there are m of them
    private final CutModel cut;
    private final CpModel model;
    private final Ticks ticks;
    private final int count;
    private final int widest;
    private final IntVar[] y; // y[i]: its left side
    private final Literal[][] before; // before[j][i]: both lead strips of one section, j's comes off first

    CutPositions(CutModel cut) {
        this.cut = cut;
        model = cut.model;
        ticks = cut.ticks;
        count = ticks.blanks.size();
        int longest = cut.sections.stream()
                .mapToInt(section -> section.board.length())
                .max()
                .orElse(0);
        widest = cut.sections.stream().mapToInt(CutSection::widest).max().orElse(0);
        x = variables("x", longest);
        y = variables("y", widest);
        offset = variables("offset", widest);
        spared = variables("spared", widest);
        before = new Literal[count][count];
        alongTheGrain();
        order();
        for (int lead = 0; lead < count; lead++) empties(lead);
        for (int lead = 0; lead < count; lead++) across(lead);
        for (int i = 0; i < count; i++) avoidDefects(i);
    }

    private IntVar[] variables(String name, int most) {
        IntVar[] variables = new IntVar[count];
        for (int i = 0; i < count; i++) variables[i] = model.newIntVar(0, most, name + " " + i);
        return variables;
    }

    private boolean spotted(int s) {
        return !cut.sections.get(s).board.defects().isEmpty();
    }

    private void alongTheGrain() {
        for (int i = 0; i < count; i++) {
            int length = ticks.blanks.get(i).length();
            for (int s = 0; s < cut.sections.size(); s++) {
                if (!spotted(s)) continue;
                CutSection section = cut.sections.get(s);
                model.addGreaterOrEqual(x[i], section.spanFrom).onlyEnforceIf(cut.in[i][s]);
                model.addLessOrEqual(LinearExpr.affine(x[i], 1, length), section.spanTo)
                        .onlyEnforceIf(cut.in[i][s]);
            }
            for (int j = i + 1; j < count; j++)
                if (ticks.blanks.get(j).width() == ticks.blanks.get(i).width()) apart(i, j);
        }
    }

    /** Two blanks of one strip lie a kerf apart, one too short to crosscut behind one that is not. */
    private void apart(int i, int j) {
        Blank one = ticks.blanks.get(i);
        Blank other = ticks.blanks.get(j);
        BoolVar same = model.newBoolVar("same strip " + i + " " + j);
        for (int lead = 0; lead <= i; lead++)
            model.addBoolOr(new Literal[] {cut.joins[i][lead].not(), cut.joins[j][lead].not(), same});
        Literal first = model.newBoolVar("first " + i + " " + j);
        if (j == i + 1 && one.part() == other.part()) first = model.trueLiteral(); // copies are alike
        if (one.small() != other.small()) first = one.small() ? model.falseLiteral() : model.trueLiteral();
        model.addLessOrEqual(LinearExpr.affine(x[i], 1, one.length() + ticks.crosscutKerf), x[j])
                .onlyEnforceIf(new Literal[] {same, first});
        model.addLessOrEqual(LinearExpr.affine(x[j], 1, other.length() + ticks.crosscutKerf), x[i])
                .onlyEnforceIf(new Literal[] {same, first.not()});
    }

    /** Of two strips of a section the wider comes off first, of two as wide either. */
    private void order() {
        for (int i = 0; i < count; i++) {
            before[i][i] = model.falseLiteral();
            for (int j = 0; j < i; j++) {
                BoolVar both = model.newBoolVar("one section " + j + " " + i);
                List<Literal> where = new ArrayList<>(List.of(both.not()));
                for (int s = 0; s < cut.sections.size(); s++) {
                    if (!spotted(s)) continue;
                    Literal a = cut.leadsIn[i][s];
                    Literal b = cut.leadsIn[j][s];
                    model.addBoolOr(new Literal[] {a.not(), b.not(), both});
                    model.addBoolOr(new Literal[] {both.not(), a.not(), b});
                    model.addBoolOr(new Literal[] {both.not(), b.not(), a});
                    where.add(a);
                }
                model.addBoolOr(where);
                int wider = Integer.compare(
                        ticks.blanks.get(j).width(), ticks.blanks.get(i).width());
                before[j][i] =
                        wider > 0 ? both : wider < 0 ? model.falseLiteral() : model.newBoolVar("before " + j + " " + i);
                before[i][j] =
                        wider < 0 ? both : wider > 0 ? model.falseLiteral() : model.newBoolVar("before " + i + " " + j);
                if (wider == 0) {
                    model.addImplication(before[j][i], both);
                    model.addImplication(before[i][j], both);
                    model.addBoolOr(new Literal[] {both.not(), before[j][i], before[i][j]});
                }
                behind(j, i);
                behind(i, j);
            }
        }
    }

    private void behind(int first, int next) {
        int step = ticks.blanks.get(first).width() + ticks.ripKerf;
        model.addGreaterOrEqual(offset[next], LinearExpr.affine(offset[first], 1, step))
                .onlyEnforceIf(before[first][next]);
    }

    private void empties(int lead) {
        int least = Math.max(ticks.blanks.get(lead).width(), ticks.narrowestRip) + ticks.ripKerf;
        List<Literal> choices = new ArrayList<>();
        for (int m = 0; m * least <= widest; m++) {
            BoolVar chosen = model.newBoolVar(m + " empty before " + lead);
            choices.add(chosen);
            model.addGreaterOrEqual(spared[lead], (long) m * least).onlyEnforceIf(chosen);
            if (m == 0) model.addEquality(spared[lead], 0).onlyEnforceIf(chosen);
            for (int j = 0; j < count; j++) {
                long most = (long) m * (ticks.blanks.get(j).width() + ticks.ripKerf);
                if (j != lead)
                    model.addLessOrEqual(spared[lead], most).onlyEnforceIf(new Literal[] {chosen, before[j][lead]});
            }
        }
        model.addExactlyOne(choices);
        empties.add(choices);
        List<Literal> some = new ArrayList<>(List.of(choices.get(0)));
        for (int j = 0; j < count; j++) some.add(before[j][lead]);
        model.addBoolOr(some); // none before the first strip: a larger edge loss does as well
    }

    private void across(int lead) {
        int width = ticks.blanks.get(lead).width();
        LinearExprBuilder beside = LinearExpr.newBuilder().add(spared[lead]);
        for (int j = 0; j < count; j++) {
            if (j == lead) continue;
            beside.addTerm(before[j][lead], ticks.blanks.get(j).width() + ticks.ripKerf);
            beside.add(gated(spared[j], before[j][lead]));
        }
        LinearExpr taken = beside.build();
        LinearExpr reached = LinearExpr.newBuilder().add(taken).add(width).build();
        for (int s = 0; s < cut.sections.size(); s++) {
            if (!spotted(s)) continue;
            CutSection section = cut.sections.get(s);
            Literal here = cut.leadsIn[lead][s];
            LinearExpr start =
                    LinearExpr.newBuilder().add(taken).add(section.edgeLoss).build();
            model.addEquality(offset[lead], start).onlyEnforceIf(here);
            section.holds(reached, here);
            model.addEquality(y[lead], offset[lead]).onlyEnforceIf(new Literal[] {here, section.ridesRight.not()});
            model.addEquality(y[lead], LinearExpr.affine(offset[lead], -1, section.board.near() - width))
                    .onlyEnforceIf(new Literal[] {here, section.ridesRight});
        }
    }

    /** {@code value} when {@code gate} holds, else 0. */
    private IntVar gated(IntVar value, Literal gate) {
        IntVar gated = model.newIntVar(0, widest, "gated");
        model.addEquality(gated, value).onlyEnforceIf(gate);
        model.addEquality(gated, 0).onlyEnforceIf(gate.not());
        return gated;
    }

    private void avoidDefects(int i) {
        Blank blank = ticks.blanks.get(i);
        for (int lead = 0; lead < i; lead++) model.addEquality(y[i], y[lead]).onlyEnforceIf(cut.joins[i][lead]);
        for (int b = 0; b < ticks.boards.size(); b++)
            for (Bad bad : ticks.boards.get(b).defects()) {
                if (!bad.bars(ticks.part(blank))) continue;
                BoolVar[] clear = new BoolVar[4];
                for (int side = 0; side < 4; side++) clear[side] = model.newBoolVar("clear");
                model.addLessOrEqual(x[i], (long) bad.from() - blank.length()).onlyEnforceIf(clear[0]);
                model.addGreaterOrEqual(x[i], bad.to()).onlyEnforceIf(clear[1]);
                model.addLessOrEqual(y[i], (long) bad.left() - blank.width()).onlyEnforceIf(clear[2]);
                model.addGreaterOrEqual(y[i], bad.right()).onlyEnforceIf(clear[3]);
                for (int s = 0; s < cut.sections.size(); s++)
                    if (cut.sections.get(s).place == b)
                        model.addBoolOr(new Literal[] {cut.in[i][s].not(), clear[0], clear[1], clear[2], clear[3]});
            }
    }
}
