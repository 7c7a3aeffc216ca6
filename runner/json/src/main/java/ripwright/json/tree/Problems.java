package ripwright.json.tree;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Collects what is wrong with one or more files that are read together. */
public final class Problems {
    private static final int MOST_KEPT = 1_000; // the rest is counted

    private record Found(int file, int offset, Mistake mistake) {}

    private record Raw(Optional<Source> source, String file, String path, int offset, String what) {}

    private final Map<String, Long> counts = new LinkedHashMap<>(); // of every file, in the order they were met
    private final Set<Raw> kept = new LinkedHashSet<>(); // the same mistake of several copies is told once
    private long count;

    /** Notes what is wrong with a file as a whole. */
    public void add(String file, String what) {
        add(file, "$", what);
    }

    /** Notes what is wrong with a file as a whole, which is called {@code whole}. */
    void add(String file, String whole, String what) {
        add(new Raw(Optional.empty(), file, whole, -1, what));
    }

    void add(Source source, String path, int offset, String what) {
        add(new Raw(Optional.of(source), source.name(), path, offset, what));
    }

    private void add(Raw raw) {
        if (kept.size() < MOST_KEPT && !kept.add(raw)) return;
        counts.merge(raw.file(), 1L, Long::sum);
        count++;
    }

    /** Makes mistakes in {@code file} come before those in files not met yet. */
    void meet(String file) {
        counts.putIfAbsent(file, 0L);
    }

    /** How many have been noted so far. */
    public long count() {
        return count;
    }

    /**
     * Throws all that has been noted, if anything, file by file in the order of their text.
     *
     * @throws WrongInputException with the first 1,000 of it, unless there is nothing
     */
    public void throwIfAny() throws WrongInputException {
        if (count == 0) return;
        List<String> files = List.copyOf(counts.keySet());
        List<Mistake> mistakes = kept.stream()
                .map(raw -> new Found(files.indexOf(raw.file()), raw.offset(), mistake(raw)))
                .sorted(Comparator.comparingInt(Found::file).thenComparingInt(Found::offset))
                .map(Found::mistake)
                .toList();
        throw new WrongInputException(mistakes, counts);
    }

    private static Mistake mistake(Raw raw) {
        return new Mistake(
                raw.file(),
                Source.clean(raw.path()),
                raw.source().map(source -> source.spot(raw.offset())),
                Source.clean(raw.what()));
    }
}
