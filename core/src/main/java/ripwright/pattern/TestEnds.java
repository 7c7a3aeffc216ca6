package ripwright.pattern;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What a board leaves for test blanks; found when first asked for. */
public final class TestEnds {
    /** Nothing. */
    public static final TestEnds NONE = new TestEnds(List::of);

    private final Supplier<List<TestEnd>> find;
    private volatile @Nullable List<TestEnd> found;

    TestEnds(Supplier<List<TestEnd>> find) {
        this.find = find;
    }

    List<TestEnd> all() {
        List<TestEnd> all = found;
        if (all == null) {
            all = List.copyOf(find.get());
            found = all;
        }
        return all;
    }
}
