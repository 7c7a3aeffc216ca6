package ripwright.internal.model;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What a board leaves for test blanks; found when first asked for. */
public final class TestWoodPieces {
    /** Nothing. */
    public static final TestWoodPieces NONE = new TestWoodPieces(List::of);

    private final Supplier<List<TestWoodPiece>> find;
    private volatile @Nullable List<TestWoodPiece> found;

    TestWoodPieces(Supplier<List<TestWoodPiece>> find) {
        this.find = find;
    }

    List<TestWoodPiece> all() {
        List<TestWoodPiece> all = found;
        if (all == null) {
            all = List.copyOf(find.get());
            found = all;
        }
        return all;
    }
}
