package ripwright.json.tree;

import java.util.function.Function;

/**
 * An object whose fields are read one by one; a field that is not asked for is a mistake.
 *
 * @param <T> what it is read as
 */
public abstract class ObjectKind<T> implements Kind<T> {
    /** For subclasses. */
    protected ObjectKind() {}

    /** An object that {@code read} reads, whatever is wrong: it must take every stand-in. */
    public static <T> ObjectKind<T> of(String expected, Function<Fields, T> read) {
        return new ObjectKind<>() {
            @Override
            public String expected() {
                return expected;
            }

            @Override
            protected T read(Fields fields) {
                return read.apply(fields);
            }
        };
    }

    /** Reads the fields; asks for every one there may be, whatever is wrong, and builds nothing that is not clean. */
    protected abstract T read(Fields fields);

    @Override
    public final T read(Value value) {
        return value.fields()
                .map(fields -> {
                    T read = read(fields);
                    fields.noteUnknownAndMissing();
                    return read;
                })
                .orElseGet(() -> {
                    value.refuse(this);
                    return standIn();
                });
    }

    @Override
    public final T standIn() {
        return read(Fields.none());
    }
}
