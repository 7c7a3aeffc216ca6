package ripwright.testing;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.measure.Length;
import ripwright.testing.Ticks.TickBoard;

/**
 * What offcuts fetch and time costs, on clear boards. There one leftover beside the last strip and one behind the last
 * blank of a strip are worth as much as any other division of the same waste and need no more cuts, so only those are
 * looked at; an empty strip is never worth its kerf.
 */
final class CutWorth {
    private static final long INCH = 25_400_000;

    private final CutModel cut;
    private final Ticks ticks;
    private final CpModel model;
    private final int keepLength;
    private final boolean salvaged;
    private final List<LinearExprBuilder> room =
            new ArrayList<>(); // of a section: square ticks of all that comes from it

    CutWorth(CutModel cut) {
        this.cut = cut;
        this.ticks = cut.ticks;
        this.model = cut.model;
        this.keepLength = ticks.of(ticks.job.keep().length());
        this.salvaged = ticks.job.salvage().signum() > 0;
    }

    static void requireSolvable(Ticks ticks) {
        boolean salvaged = ticks.job.salvage().signum() > 0;
        for (TickBoard board : ticks.boards) {
            if (!board.defects().isEmpty()
                    || (salvaged && !board.board().defects().isEmpty()))
                throw new IllegalArgumentException(
                        "Defects matter: " + board.board().id() + ".");
            if (salvaged
                    && (board.board().tapered()
                            || board.board().crook().exceeds(board.board().edgeLoss())))
                throw new IllegalArgumentException(
                        "Taper or crook matters: " + board.board().id() + ".");
        }
    }

    void addTo(ExactSum cost) {
        for (CutSection section : cut.sections) loseNoMore(section);
        for (int s = 0; s < cut.sections.size(); s++)
            room.add(LinearExpr.newBuilder().add(cut.room(s)));
        for (int b = 0; b < cut.used.length; b++) {
            List<CutSection> sections = sections(b);
            besideSections(b, sections, cost);
            if (!salvaged) continue;
            for (CutSection section : sections) {
                if (!section.board.board().ripped()) besideLastStrip(section, cost);
                behindBlanks(section, cost);
                enough(section);
            }
        }
        if (ticks.job.labor().isPresent()) labor(cost);
    }

    /** No edge loses more than it must: on clear boards that never pays. */
    private void loseNoMore(CutSection section) {
        boolean straight = section.board.board().straightEdges() >= 1;
        if (straight) model.addEquality(section.edgeLoss, 0);
        else if (salvaged) model.addLessOrEqual(section.edgeLoss, section.board.edgeLoss());
    }

    private List<CutSection> sections(int b) {
        return cut.sections.stream().filter(section -> section.place == b).toList();
    }

    /** Follows from the rest, and helps: blanks and offcuts, made larger by their kerfs, fit into the section made larger. */
    private void enough(CutSection section) {
        long width = (long) section.board.near() + ticks.ripKerf;
        LinearExprBuilder all = LinearExpr.newBuilder()
                .addTerm(section.to, width)
                .addTerm(section.from, -width)
                .addTerm(section.open, ticks.crosscutKerf * width);
        model.addLessOrEqual(room.get(cut.sections.indexOf(section)), all);
    }

    /** Full-width leftovers, and the cuts between them and the sections. */
    private void besideSections(int b, List<CutSection> sections, ExactSum cost) {
        TickBoard board = ticks.boards.get(b);
        CutSection first = sections.get(0);
        CutSection last = sections.get(sections.size() - 1);
        boolean atNearEnd = board.from() > 0 && board.to() == board.length();
        if (ticks.over > 0) {
            leavesOver(board, sections, cost);
            return;
        }
        if (!board.board().tapered()) closeUp(sections, atNearEnd);
        LinearExpr near = LinearExpr.affine(first.from, 1, -board.from());
        LinearExpr far = LinearExpr.affine(last.to, -1, board.to());
        if (salvaged) fullWidth(board, atNearEnd ? near : far, first.open, cost);
        crosscuts(cost, first.open, unless(LinearExpr.affine(first.from, 1, 0), first.open));
        crosscuts(cost, first.open, unless(LinearExpr.affine(last.to, -1, board.length()), first.open));
        for (int k = 1; k < sections.size(); k++) {
            Literal open = sections.get(k).open;
            crosscuts(cost, open, model.falseLiteral());
            crosscuts(cost, open, unless(gap(sections, k, -ticks.crosscutKerf), open));
        }
    }

    /** What is left before, behind and between sections whose ends lie where a tape is read. */
    private void leavesOver(TickBoard board, List<CutSection> sections, ExactSum cost) {
        CutSection first = sections.get(0);
        CutSection last = sections.get(sections.size() - 1);
        if (salvaged && !board.board().ripped()) {
            fullWidth(board, LinearExpr.affine(first.from, 1, -board.from()), first.open, cost);
            fullWidth(board, LinearExpr.affine(last.to, -1, board.to()), first.open, cost);
        }
        crosscuts(cost, first.open, unless(LinearExpr.affine(first.from, 1, 0), first.open));
        crosscuts(cost, first.open, unless(LinearExpr.affine(last.to, -1, board.length()), first.open));
        for (int k = 1; k < sections.size(); k++) {
            Literal open = sections.get(k).open;
            crosscuts(cost, open, model.falseLiteral());
            crosscuts(cost, open, unless(gap(sections, k, -ticks.crosscutKerf), open));
            if (salvaged) fullWidth(board, gap(sections, k, -ticks.crosscutKerf), open, cost);
        }
    }

    /**
     * All full-width waste of a straight board is best left at one end, neighbors one kerf apart: gaps between sections cost two
     * kerfs and two cuts, and what is left at both ends costs two kerfs. A raw end that need not be trimmed is best kept for a
     * section, which then needs no cut there.
     */
    private void closeUp(List<CutSection> sections, boolean wasteAtNearEnd) {
        CutSection first = sections.get(0);
        CutSection last = sections.get(sections.size() - 1);
        if (wasteAtNearEnd) model.addEquality(last.to, first.board.to()).onlyEnforceIf(first.open);
        else model.addEquality(first.from, first.board.from());
        for (int k = 1; k < sections.size(); k++)
            model.addEquality(gap(sections, k, 0), LinearExpr.term(sections.get(k).open, ticks.crosscutKerf));
    }

    private static LinearExpr gap(List<CutSection> sections, int k, long more) {
        return LinearExpr.newBuilder()
                .add(sections.get(k).from)
                .addTerm(sections.get(k - 1).to, -1)
                .add(more)
                .build();
    }

    /** Charges a crosscut where {@code needed} holds and {@code spared} does not. */
    private void crosscuts(ExactSum cost, Literal needed, Literal spared) {
        BigFraction rate =
                ticks.job.labor().map(labor -> rate(labor.crosscutMinutes())).orElse(BigFraction.ZERO);
        cost.add(needed, rate);
        cost.add(spared, rate.negate());
    }

    /** A chance to be true, only where {@code rest} is 0 and {@code needed} holds. */
    private Literal unless(LinearExpr rest, Literal needed) {
        BoolVar spared = model.newBoolVar("no cut");
        model.addImplication(spared, needed);
        model.addEquality(rest, 0).onlyEnforceIf(spared);
        return spared;
    }

    private void fullWidth(TickBoard board, LinearExpr gap, Literal where, ExactSum cost) {
        if (board.near() < keepWidth()) return;
        IntVar kept = kept(board, gap, where);
        if (ticks.over == 0) model.addLessOrEqual(kept, gap); // follows from the rest, and helps
        cost.add(
                kept,
                worth(board, board.board().thickness()).multiply(board.near()).negate());
    }

    private void besideLastStrip(CutSection section, ExactSum cost) {
        TickBoard board = section.board;
        int s = cut.sections.indexOf(section);
        LinearExprBuilder width = LinearExpr.newBuilder().add(board.near()).addTerm(section.edgeLoss, -1);
        for (int i = 0; i < ticks.blanks.size(); i++)
            width.addTerm(cut.leadsIn[i][s], -(long) (ticks.blanks.get(i).width() + ticks.ripKerf));
        BoolVar keeps = model.newBoolVar("keeps what is beside");
        model.addImplication(keeps, section.open);
        model.addGreaterOrEqual(section.clear(), keepLength).onlyEnforceIf(keeps);
        model.addGreaterOrEqual(width, keepWidth()).onlyEnforceIf(keeps);
        IntVar wide = model.newIntVar(0, board.near(), "beside");
        model.addEquality(wide, width).onlyEnforceIf(keeps);
        model.addLessOrEqual(
                wide, LinearExpr.newBuilder().add(width).add(ticks.ripKerf)); // follows from the rest, and helps
        model.addEquality(wide, 0).onlyEnforceIf(keeps.not());
        IntVar area = model.newIntVar(0, (long) board.near() * board.length(), "area beside");
        IntVar length = model.newIntVar(0, board.length(), "length beside");
        model.addGreaterOrEqual(length, section.clear());
        model.addEquality(length, section.clear()).onlyEnforceIf(section.open);
        model.addMultiplicationEquality(area, wide, length);
        cost.add(area, worth(board, board.board().millsTo()).negate());
        room.get(s).addTerm(area, 1);
    }

    private void behindBlanks(CutSection section, ExactSum cost) {
        int s = cut.sections.indexOf(section);
        for (int lead = 0; lead < ticks.blanks.size(); lead++) {
            int width = ticks.blanks.get(lead).width();
            if (width < keepWidth()) continue;
            LinearExpr rest = LinearExpr.newBuilder()
                    .add(section.clearTo)
                    .addTerm(section.spanFrom, -1)
                    .addTerm(cut.along(lead), -1)
                    .build();
            IntVar kept = kept(section.board, rest, cut.leadsIn[lead][s]);
            model.addLessOrEqual(kept, section.length()); // follows from the rest, and helps
            room.get(s).addTerm(kept, width + ticks.ripKerf);
            cost.add(
                    kept,
                    worth(section.board, section.board.board().millsTo())
                            .multiply(width)
                            .negate());
        }
    }

    /** What is left of {@code gap} behind a kerf, where that is long enough to keep and {@code where} holds; else 0. */
    private IntVar kept(TickBoard board, LinearExpr gap, Literal where) {
        IntVar kept = model.newIntVar(0, board.length(), "kept");
        BoolVar keeps = model.newBoolVar("keeps");
        model.addImplication(keeps, where);
        model.addEquality(kept, 0).onlyEnforceIf(keeps.not());
        model.addGreaterOrEqual(kept, keepLength).onlyEnforceIf(keeps);
        model.addEquality(LinearExpr.affine(kept, 1, ticks.crosscutKerf), gap).onlyEnforceIf(keeps);
        model.addLessThan(gap, (long) keepLength + ticks.crosscutKerf)
                .onlyEnforceIf(new Literal[] {where, keeps.not()});
        return kept;
    }

    private void labor(ExactSum cost) {
        BigFraction rip = rate(ticks.job.labor().orElseThrow().ripMinutes());
        Map<Integer, List<Literal>> settings = new TreeMap<>();
        for (int s = 0; s < cut.sections.size(); s++) {
            CutSection section = cut.sections.get(s);
            boolean ripped = section.board.board().ripped();
            boolean straightened = section.board.board().straightEdges() == 0
                    && (section.board.edgeLoss() > 0
                            || !section.board.board().crook().isZero());
            if (straightened) cost.add(section.open, rip);
            for (int lead = 0; lead < ticks.blanks.size(); lead++) {
                Literal strip = cut.leadsIn[lead][s];
                LinearExpr rest = LinearExpr.newBuilder()
                        .add(section.length())
                        .addTerm(cut.along(lead), -1)
                        .build();
                if (ticks.over > 0)
                    crosscuts(cost, strip, model.falseLiteral()); // it is squared, and ends with no blank
                else crosscuts(cost, model.falseLiteral(), unless(rest, strip));
                if (ripped) continue;
                cost.add(strip, rip);
                settings.computeIfAbsent(ticks.blanks.get(lead).width(), any -> new ArrayList<>())
                        .add(strip);
            }
        }
        for (Literal made : cut.made) crosscuts(cost, made, model.falseLiteral());
        settings.values().forEach(strips -> {
            BoolVar set = model.newBoolVar("set");
            for (Literal strip : strips) model.addImplication(strip, set);
            cost.add(set, rate(ticks.job.labor().orElseThrow().settingMinutes()));
        });
    }

    /** Money for that many minutes. */
    private BigFraction rate(BigDecimal minutes) {
        BigDecimal perHour = ticks.job.labor().orElseThrow().perHour();
        return fraction(minutes).multiply(fraction(perHour)).divide(60);
    }

    /** What a square tick of a leftover of that thickness fetches. */
    private BigFraction worth(TickBoard board, Length thickness) {
        BigFraction feet = BigFraction.of(
                BigInteger.valueOf(ticks.tick)
                        .pow(2)
                        .multiply(BigInteger.valueOf(Math.max(INCH, thickness.nanometers()))),
                BigInteger.valueOf(INCH).pow(3).multiply(BigInteger.valueOf(144)));
        return feet.multiply(fraction(ticks.job.price(board.board()))).multiply(fraction(ticks.job.salvage()));
    }

    private int keepWidth() {
        return (int) -Math.floorDiv(-ticks.job.keep().width().nanometers(), ticks.tick);
    }

    private static BigFraction fraction(BigDecimal number) {
        return BigFraction.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
    }
}
