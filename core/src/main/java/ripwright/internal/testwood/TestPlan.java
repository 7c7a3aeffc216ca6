package ripwright.internal.testwood;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Piece;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.PlanIds;
import ripwright.internal.pieces.RipSetting;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Setting;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;

/** The test blanks of a plan: what they prove, where they come from, and what that leaves of the wood they come from. */
public final class TestPlan {
    private final Job job;
    private final List<RipSetting> settings;
    private final List<ProvingBlank> blanks = new ArrayList<>();
    private final Map<Piece, Use> uses = new HashMap<>();
    private final Set<String> opened = new HashSet<>();
    private int crosscuts;

    /** Plans them; a {@link NoTestWoodException} when wood for one cannot be found. */
    public TestPlan(Job job, List<Layout> layouts, CutPieces cutting, PlanIds ids) {
        this.job = job;
        this.settings = cutting.settings();
        if (settings.stream().noneMatch(RipSetting::tested) || job.testRip().tries() == 0) return;
        for (TestWoodChoice.Taken one :
                choose(new TestWoodPool(job, layouts, cutting)).taken()) {
            blanks.add(blank(one, ids));
            uses.put(one.wood().piece, new Use(one.wood(), one.nth()));
            if (one.wood().uncut) opened.add(one.wood().from);
        }
        for (Use use : uses.values()) crosscuts += use.wood().cuts(use.count());
    }

    private record Use(TestWood wood, int count) {}

    /**
     * A test blank and the place of the setting it is first needed at.
     *
     * @param blank the plan's test blank
     * @param piece where it lies
     * @param first the place of the first setting it proves
     */
    public record ProvingBlank(TestBlank blank, Piece piece, int first) {
        public String id() {
            return blank.id();
        }

        /** Whether it is cut off when its board is broken down. */
        public boolean fromBoard() {
            return blank.from().equals(piece.board().id());
        }
    }

    /** In the order they are first needed. */
    public List<ProvingBlank> blanks() {
        return List.copyOf(blanks);
    }

    /** Whether that board is cut for some of them alone. */
    public boolean opens(Board board) {
        return opened.contains(board.id());
    }

    /** How many crosscuts free them. */
    public int crosscuts() {
        return crosscuts;
    }

    /** The settings as the plan has them. */
    public List<Setting> settings() {
        List<Setting> named = new ArrayList<>();
        for (RipSetting setting : settings)
            named.add(new Setting(setting.id(), new Length(setting.width()), test(setting.id())));
        return named;
    }

    private Optional<Setting.Test> test(String setting) {
        return blanks.stream()
                .map(ProvingBlank::blank)
                .filter(blank -> blank.proves().contains(setting))
                .findFirst()
                .map(blank -> new Setting.Test(blank.id(), blank.source()));
    }

    /** What test blanks leave of a piece. */
    public Optional<Piece> rest(Piece piece) {
        Use use = uses.get(piece);
        return use == null ? Optional.of(piece) : use.wood().rest(use.count());
    }

    private TestWoodChoice.Answer choose(TestWoodPool pool) {
        if (pool.capacity() < job.testRip().tries()) throw noWood(firstTested());
        TestChains chains = new TestChains(settings, ripKerf(), job.testRip().tries());
        Optional<TestWoodChoice.Answer> best = Optional.empty();
        Optional<TestChain> stuck = Optional.empty();
        for (List<TestChain> way : chains.fewest()) {
            TestWoodChoice choice = new TestWoodChoice(pool.wood(), settings, way, ripKerf());
            Optional<TestWoodChoice.Answer> answer = choice.best();
            if (answer.isEmpty()) stuck = stuck.or(() -> Optional.of(choice.stuck()));
            else if (best.isEmpty() || answer.get().compareTo(best.get()) < 0) best = answer;
        }
        Optional<TestChain> missing = stuck;
        return best.orElseThrow(() -> noWood(missing.orElseThrow()));
    }

    private TestChain firstTested() {
        int first = 0;
        while (!settings.get(first).tested()) first++;
        return new TestChain(settings.get(first).thicknesses().first(), List.of(first));
    }

    private NoTestWoodException noWood(TestChain chain) {
        long width = settings.get(chain.first()).width();
        return new NoTestWoodException(
                new Length(width),
                new Length(chain.thickness()),
                new Length(width + ripKerf()),
                job.testRip().length());
    }

    private ProvingBlank blank(TestWoodChoice.Taken one, PlanIds ids) {
        Piece piece = one.wood().blank(one.nth());
        TestBlank blank = new TestBlank(
                ids.next(PlanIds.Kind.TEST_BLANK),
                one.wood().from,
                one.wood().source,
                new Length(piece.narrowWidth()),
                new Length(piece.length()),
                piece.board().millsTo(),
                piece.board().species(),
                one.chain().settings().stream()
                        .map(setting -> settings.get(setting).id())
                        .toList());
        return new ProvingBlank(blank, piece, one.chain().first());
    }

    private long ripKerf() {
        return job.saw().ripKerf().nanometers();
    }
}
