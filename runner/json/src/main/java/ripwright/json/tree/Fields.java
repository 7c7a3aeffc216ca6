package ripwright.json.tree;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The fields of an object, read one by one; whatever is never asked for is a field nobody knows. */
public final class Fields {
    private final @Nullable Value object; // null: there is no object, and nothing is wrong with that
    private final Map<String, JsonNode.Member> members;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Set<String> good = new HashSet<>(); // read, and nothing wrong
    private final List<Missing> missing = new ArrayList<>(); // told, unless it is only misspelled
    private final long problemsBefore;

    /**
     * What is not there.
     *
     * @param at the field where that is told
     * @param names the fields any of which would do
     * @param what what is told
     */
    private record Missing(String at, List<String> names, String what) {}

    Fields(Value object, Map<String, JsonNode.Member> members) {
        this.object = object;
        this.members = members;
        this.problemsBefore = object.problems();
    }

    private Fields() {
        this.object = null;
        this.members = Map.of();
        this.problemsBefore = 0;
    }

    /** The fields of no object at all: every kind's stand-in. */
    static Fields none() {
        return new Fields();
    }

    /** What the field of that name says; its absence is a mistake. */
    public <T> T required(String name, Kind<T> kind) {
        Optional<T> read = optional(name, kind);
        if (read.isEmpty()) missing(name, List.of(name), "missing. It must be " + kind.expected() + ".");
        return read.orElseGet(kind::standIn);
    }

    /** Notes at that field what is wrong as none of {@code names} is there; not where one of them is only misspelled. */
    public void missing(String at, List<String> names, String what) {
        missing.add(new Missing(at, names, what));
    }

    /** What the field of that name says; empty when it is not there. */
    public <T> Optional<T> optional(String name, Kind<T> kind) {
        Optional<Value> value = value(name);
        if (value.isEmpty()) return Optional.empty();
        long before = value.get().problems();
        T read = kind.read(value.get());
        if (value.get().problems() == before) good.add(name);
        return Optional.of(read);
    }

    /** What the field of that name says; {@code otherwise} when it is not there. */
    public <T> T optional(String name, Kind<T> kind, T otherwise) {
        return optional(name, kind).orElse(otherwise);
    }

    /** The field of that name as it stands; empty when it is not there. */
    public Optional<Value> value(String name) {
        asked.add(name);
        JsonNode.Member member = members.get(name);
        return member == null || object == null ? Optional.empty() : Optional.of(object.field(name, member));
    }

    /** The names of all fields that are there, each as its value. */
    public Map<String, Value> all() {
        Map<String, Value> all = new LinkedHashMap<>();
        for (String name : members.keySet()) value(name).ifPresent(value -> all.put(name, value));
        return all;
    }

    /** Whether all those fields are there and nothing was wrong when they were read. */
    public boolean good(String... names) {
        return good.containsAll(List.of(names));
    }

    /** Whether there is an object, and nothing is wrong in it so far. */
    public boolean clean() {
        return object != null && missing.isEmpty() && object.problems() == problemsBefore;
    }

    /** Notes what is wrong with the field of that name. */
    public void wrong(String name, String what) {
        if (object == null) return;
        JsonNode.Member member = members.get(name);
        object.wrongField(name, member == null ? -1 : member.value().at(), what);
    }

    /**
     * What {@code builder} builds when nothing is wrong in the object so far. Else, or when it refuses with an {@link
     * IllegalArgumentException}, which is noted, what {@code standIn} builds.
     */
    public <T> T build(Supplier<T> builder, Supplier<T> standIn) {
        if (object == null || !clean()) return standIn.get();
        try {
            return builder.get();
        } catch (IllegalArgumentException e) {
            object.wrong(String.valueOf(e.getMessage()));
            return standIn.get();
        }
    }

    /** Notes every field that was never asked for, and every required one that none of those is likely meant to be. */
    void noteUnknownAndMissing() {
        if (object == null) return;
        List<String> known = new ArrayList<>(asked);
        members.forEach((name, member) -> {
            if (asked.contains(name)) return;
            Nearest nearest = new Nearest(name, known);
            if (nearest.near()) missing.removeIf(one -> one.names().contains(nearest.best()));
            object.wrongField(name, member.at(), "no such field. " + nearest.sentence());
        });
        missing.forEach(one -> wrong(one.at(), one.what()));
    }
}
