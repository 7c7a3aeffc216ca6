package ripwright.testing;

import com.google.ortools.sat.CpSolver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.internal.geometry.Layout;
import ripwright.stock.Edge;
import ripwright.testing.Ticks.Blank;

/** Reads layouts off a solved model. */
final class CutReading {
    private final CutModel cut;
    private final Optional<CutPositions> positions;
    private final CpSolver solved;
    private final Ticks ticks;

    CutReading(CutModel cut, Optional<CutPositions> positions, CpSolver solved) {
        this.cut = cut;
        this.positions = positions;
        this.solved = solved;
        this.ticks = cut.ticks;
    }

    List<Layout> layouts() {
        List<Layout> layouts = new ArrayList<>();
        for (int b = 0; b < cut.used.length; b++) {
            if (!solved.booleanValue(cut.used[b])) continue;
            List<Layout.Section> sections = new ArrayList<>();
            for (int s = 0; s < cut.sections.size(); s++)
                if (cut.sections.get(s).place == b && solved.booleanValue(cut.sections.get(s).open))
                    sections.add(section(s));
            layouts.add(new Layout(b, sections));
        }
        return layouts;
    }

    private Layout.Section section(int s) {
        CutSection section = cut.sections.get(s);
        boolean spotted = !section.board.defects().isEmpty();
        List<Integer> leads = new ArrayList<>();
        for (int i = 0; i < ticks.blanks.size(); i++) if (solved.booleanValue(cut.leadsIn[i][s])) leads.add(i);
        leads.sort(
                spotted
                        ? Comparator.comparing(lead -> solved.value(positions.orElseThrow().offset[lead]))
                        : Comparator.comparing(
                                        (Integer lead) -> ticks.blanks.get(lead).width())
                                .reversed());
        List<Layout.Strip> strips = new ArrayList<>();
        for (int lead : leads) {
            if (spotted) empties(lead, strips);
            List<Layout.Blank> blanks = spotted ? lying(lead) : packed(lead, solved.value(section.spanFrom));
            strips.add(new Layout.Strip(ticks.nanometers(ticks.blanks.get(lead).width()), blanks));
        }
        return new Layout.Section(
                ticks.nanometers(solved.value(section.from)),
                ticks.nanometers(solved.value(section.to)),
                solved.booleanValue(section.ridesRight) ? Edge.RIGHT : Edge.LEFT,
                ticks.nanometers(solved.value(section.edgeLoss)),
                strips);
    }

    /** The empty strips before a leader's: what they take is shared among them as evenly as whole ticks allow. */
    private void empties(int lead, List<Layout.Strip> strips) {
        CutPositions lying = positions.orElseThrow();
        int number = 0;
        while (!solved.booleanValue(lying.empties.get(lead).get(number))) number++;
        long widths = solved.value(lying.spared[lead]) - (long) number * ticks.ripKerf;
        for (int left = number; left > 0; left--) {
            long width = -Math.floorDiv(-widths, left);
            strips.add(new Layout.Strip(ticks.nanometers(width), List.of()));
            widths -= width;
        }
    }

    private List<Integer> strip(int lead) {
        List<Integer> blanks = new ArrayList<>();
        for (int i = lead; i < ticks.blanks.size(); i++) if (solved.booleanValue(cut.joins[i][lead])) blanks.add(i);
        return blanks;
    }

    private List<Layout.Blank> lying(int lead) {
        return strip(lead).stream()
                .sorted(Comparator.comparing(i -> solved.value(positions.orElseThrow().x[i])))
                .map(i -> new Layout.Blank(
                        ticks.blanks.get(i).part(), ticks.nanometers(solved.value(positions.orElseThrow().x[i]))))
                .toList();
    }

    private List<Layout.Blank> packed(int lead, long from) {
        List<Blank> longestFirst = strip(lead).stream()
                .map(ticks.blanks::get)
                .sorted(Comparator.comparing(Blank::length).reversed())
                .toList();
        List<Layout.Blank> blanks = new ArrayList<>();
        long x = from;
        for (Blank blank : longestFirst) {
            blanks.add(new Layout.Blank(blank.part(), ticks.nanometers(x)));
            x += blank.length() + ticks.crosscutKerf;
        }
        return blanks;
    }
}
