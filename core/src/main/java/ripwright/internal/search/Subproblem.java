package ripwright.internal.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import ripwright.bill.Part;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.proof.OptimalityProof;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.stock.Board;

/**
 * Some parts and boards of a job, as a job of their own, for the proof to cut.
 *
 * @param whole the job
 * @param parts the places of the parts that are still to be made
 * @param boards the places of the boards they may be cut from
 * @param missing how many of each part of the whole job are to be made
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record Subproblem(JobNumbers whole, List<Integer> parts, List<Integer> boards, int[] missing) {
    /** The parts of which some are missing, on those boards. */
    static Subproblem of(JobNumbers whole, List<Integer> boards, int[] missing) {
        List<Integer> parts = new ArrayList<>();
        for (int p = 0; p < missing.length; p++) if (missing[p] > 0) parts.add(p);
        return new Subproblem(whole, parts, boards, missing.clone());
    }

    /**
     * The cheapest layouts that make all that is missing, as far as the proof comes; none when it finds none that cost less
     * than {@code most} millionths together, or a part is tied to certain boards.
     */
    List<PricedLayout> cheapest(long most, WorkBudget enough) {
        if (boards.isEmpty() || parts.isEmpty() || tied()) return List.of();
        LowerBound lowerBound = LowerBound.ofWholeBill(new JobNumbers(job()), enough, enough.mustEnd(), raised -> {});
        Money known = Money.of(BigDecimal.valueOf(most, 6));
        if (lowerBound.value().compareTo(known) >= 0) return List.of();
        return new OptimalityProof(lowerBound, enough, enough.mustEnd())
                .under(known).layouts().stream().map(this::inWhole).toList();
    }

    /** Whether a part may come from certain boards only, which need not be among these. */
    private boolean tied() {
        return parts.stream().anyMatch(p -> !whole.job().parts().get(p).boards().isEmpty());
    }

    private Job job() {
        Job all = whole.job();
        List<Board> stack = new ArrayList<>();
        List<Board> rack = new ArrayList<>();
        for (int b : boards) (all.board(b).fromRack() ? rack : stack).add(all.board(b));
        List<Part> bill = new ArrayList<>();
        for (int p : parts) bill.add(all.parts().get(p).times(missing[p]));
        return all.toBuilder().stack(stack).rack(rack).parts(bill).build();
    }

    /** The layout of a board of the rest, in the numbers of the whole job. */
    private PricedLayout inWhole(PricedLayout layout) {
        List<Layout.Section> sections = layout.layout().sections().stream()
                .map(section -> new Layout.Section(
                        section.from(),
                        section.to(),
                        section.referenceEdge(),
                        section.edgeLoss(),
                        section.strips().stream().map(this::inWhole).toList()))
                .toList();
        return whole.priced(new Layout(boards.get(layout.layout().board()), sections));
    }

    private Layout.Strip inWhole(Layout.Strip strip) {
        return new Layout.Strip(
                strip.width(),
                strip.blanks().stream()
                        .map(blank -> new Layout.Blank(parts.get(blank.part()), blank.from()))
                        .toList());
    }
}
