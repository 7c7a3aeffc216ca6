package ripwright.testing;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ripwright.testing.Ticks.Blank;
import ripwright.testing.Ticks.TickBoard;

/**
 * The model of section 3 of the contract as whole-number constraints: which blank comes from which strip, section and board.
 * A strip is known by its first blank in the list, its leader: there are as many strips as leaders, each as wide as its
 * leader. Where strips and blanks lie matters on boards with defects only: see {@link CutPositions}. Legend of indices: i
 * and j are blanks, lead is the leader of a strip, s a section, b a board.
 */
final class CutModel {
    private static final int MOST_SECTIONS = 3;

    final Ticks ticks;
    final CpModel model = new CpModel();
    final List<CutSection> sections = new ArrayList<>(); // three of a board at the most, open or not
    final Literal[] used; // used[b]: it is cut
    final Literal[] made; // made[i]
    final Literal[][] in; // in[i][s]
    final Literal[][] joins; // joins[i][lead]: it is in that leader's strip; joins[i][i]: it leads one
    final Literal[][] leadsIn; // leadsIn[i][s]: it leads a strip there
    private final int count; // of blanks

    /**
     * The model of that job.
     *
     * @param all whether every part must be made
     */
    CutModel(Ticks ticks, boolean all) {
        this.ticks = ticks;
        count = ticks.blanks.size();
        used = new Literal[ticks.boards.size()];
        made = new Literal[count];
        joins = new Literal[count][count];
        for (int b = 0; b < used.length; b++) board(b);
        in = new Literal[count][sections.size()];
        leadsIn = new Literal[count][sections.size()];
        for (int i = 0; i < count; i++) made[i] = all ? model.trueLiteral() : model.newBoolVar("made " + i);
        strips();
        homes();
        for (CutSection section : sections) fill(section);
        for (int b = 0; b < used.length; b++) rooms(b);
        together();
        copies();
    }

    private void board(int b) {
        TickBoard board = ticks.boards.get(b);
        used[b] = model.newBoolVar("used " + b);
        int most = board.board().ripped() ? 1 : Math.min(MOST_SECTIONS, count);
        CutSection before = null;
        List<Literal> open = new ArrayList<>();
        for (int number = 0; number < most; number++) {
            CutSection section = new CutSection(ticks, model, b, number, before);
            model.addImplication(section.open, used[b]);
            open.add(section.open);
            sections.add(section);
            before = section;
        }
        open.add(used[b].not());
        model.addBoolOr(open);
    }

    /** Every blank that is made is in one strip, its own or that of an earlier one as wide as it. */
    private void strips() {
        for (int i = 0; i < count; i++) {
            List<Literal> choices = new ArrayList<>(List.of(made[i].not()));
            for (int lead = 0; lead < count; lead++) {
                boolean may = lead <= i
                        && ticks.blanks.get(lead).width() == ticks.blanks.get(i).width();
                joins[i][lead] = may ? model.newBoolVar("joins " + i + " " + lead) : model.falseLiteral();
                if (may) choices.add(joins[i][lead]);
                if (may && lead < i) model.addImplication(joins[i][lead], joins[lead][lead]);
            }
            model.addExactlyOne(choices);
        }
    }

    /** Every blank that is made is in one section, all of one strip in the same. */
    private void homes() {
        for (int i = 0; i < count; i++) {
            List<Literal> choices = new ArrayList<>(List.of(made[i].not()));
            for (int s = 0; s < sections.size(); s++) {
                boolean may = ticks.suits(ticks.blanks.get(i), sections.get(s).board);
                in[i][s] = may ? model.newBoolVar("in " + i + " " + s) : model.falseLiteral();
                leadsIn[i][s] = may ? model.newBoolVar("leads in " + i + " " + s) : model.falseLiteral();
                if (!may) continue;
                choices.add(in[i][s]);
                model.addImplication(in[i][s], sections.get(s).open);
                model.addImplication(leadsIn[i][s], in[i][s]);
                model.addImplication(leadsIn[i][s], joins[i][i]);
                model.addBoolOr(new Literal[] {leadsIn[i][s], in[i][s].not(), joins[i][i].not()});
            }
            model.addExactlyOne(choices);
            for (int lead = 0; lead < i; lead++)
                for (int s = 0; s < sections.size(); s++) {
                    model.addBoolOr(new Literal[] {joins[i][lead].not(), in[i][s].not(), in[lead][s]});
                    model.addBoolOr(new Literal[] {joins[i][lead].not(), in[i][s], in[lead][s].not()});
                }
        }
    }

    /** Its strips fit beside each other, the blanks of each behind each other, a kerf between any two. */
    private void fill(CutSection section) {
        int s = sections.indexOf(section);
        List<Literal> some = new ArrayList<>(List.of(section.open.not()));
        LinearExprBuilder across = LinearExpr.newBuilder().add(-ticks.ripKerf);
        for (int i = 0; i < count; i++) {
            some.add(in[i][s]);
            across.addTerm(leadsIn[i][s], ticks.blanks.get(i).width() + ticks.ripKerf);
            model.addLessOrEqual(along(i), section.span()).onlyEnforceIf(leadsIn[i][s]);
        }
        model.addBoolOr(some);
        section.holds(across.build());
    }

    /** What the blanks of a leader's strip take along the grain, a kerf between any two. */
    LinearExpr along(int lead) {
        LinearExprBuilder along = LinearExpr.newBuilder().add(-ticks.crosscutKerf);
        for (int i = lead; i < count; i++)
            along.addTerm(joins[i][lead], ticks.blanks.get(i).length() + ticks.crosscutKerf);
        return along.build();
    }

    /** Follows from the rest, and helps: blanks made larger by their kerfs fit into a board made larger by them. */
    private void rooms(int b) {
        TickBoard board = ticks.boards.get(b);
        long length = (ticks.over > 0 ? board.length() : (long) board.to() - board.from()) + ticks.crosscutKerf;
        long width = (long) Math.max(board.near(), board.far()) + ticks.ripKerf;
        LinearExprBuilder area = LinearExpr.newBuilder();
        for (int s = 0; s < sections.size(); s++) if (sections.get(s).place == b) area.add(room(s));
        model.addLessOrEqual(area, LinearExpr.term(used[b], length * width));
    }

    /** The square ticks of all blanks of a section, each made larger by its kerfs. */
    LinearExpr room(int s) {
        LinearExprBuilder area = LinearExpr.newBuilder();
        for (int i = 0; i < count; i++) {
            Blank blank = ticks.blanks.get(i);
            area.addTerm(in[i][s], (long) (blank.length() + ticks.crosscutKerf) * (blank.width() + ticks.ripKerf));
        }
        return area.build();
    }

    private void together() {
        Map<String, Literal[]> homes = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            String group = ticks.part(ticks.blanks.get(i)).together().orElse("");
            if (group.isEmpty()) continue;
            Literal[] home = homes.computeIfAbsent(group, name -> {
                Literal[] choices = new Literal[used.length];
                for (int b = 0; b < choices.length; b++) choices[b] = model.newBoolVar(name + " from " + b);
                model.addAtMostOne(choices);
                return choices;
            });
            for (int s = 0; s < sections.size(); s++) model.addImplication(in[i][s], home[sections.get(s).place]);
        }
    }

    /** Copies of one part are alike: let them be made, and lie in the sections, in their order. */
    private void copies() {
        for (int i = 0; i + 1 < count; i++) {
            if (ticks.blanks.get(i).part() != ticks.blanks.get(i + 1).part()) continue;
            model.addImplication(made[i + 1], made[i]);
            model.addLessOrEqual(home(i), home(i + 1));
        }
    }

    private LinearExpr home(int i) {
        LinearExprBuilder home = LinearExpr.newBuilder();
        for (int s = 0; s < sections.size(); s++) home.addTerm(in[i][s], s);
        return home.addTerm(made[i].not(), sections.size()).build();
    }
}
