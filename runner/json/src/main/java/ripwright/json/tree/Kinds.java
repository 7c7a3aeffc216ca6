package ripwright.json.tree;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The kinds that hold no named fields. */
public final class Kinds {
    private Kinds() {}

    /** What {@code read} makes of a value; its {@link IllegalArgumentException} says what is wrong, empty that it is no such kind. */
    public static <T> Kind<T> of(String expected, T standIn, Function<Value, Optional<T>> read) {
        return new SimpleKind<>(expected, standIn, read);
    }

    /** True or false. */
    public static Kind<Boolean> flag() {
        return of("true or false", false, Value::flag);
    }

    /** One of those words. */
    public static <T> Kind<T> choice(Map<String, T> words, T standIn) {
        boolean two = words.size() == 2;
        String all = words.keySet().stream()
                .map(word -> "\"" + word + "\"")
                .sorted()
                .collect(Collectors.joining(two ? " or " : ", "));
        String expected = two ? all : "one of " + all;
        return of(expected, standIn, value -> value.text().map(words::get));
    }

    /** One of those constants, in lower case. */
    public static <T extends Enum<T>> Kind<T> choice(Class<T> constants) {
        Map<String, T> words = new LinkedHashMap<>();
        for (T constant : constants.getEnumConstants())
            words.put(constant.name().toLowerCase(Locale.ROOT), constant);
        return choice(words, constants.getEnumConstants()[0]);
    }

    /** A number without decimals, from {@code least} to {@code most}. */
    public static Kind<Long> whole(long least, long most) {
        boolean any = least == Long.MIN_VALUE && most == Long.MAX_VALUE;
        String expected = any ? "a whole number" : "a whole number from " + least + " to " + most;
        return of(
                expected,
                least,
                value -> value.number().map(digits -> new NumberText(digits).whole(least, most, expected)));
    }

    /** As {@link #whole}, as an int. */
    public static Kind<Integer> wholeInt(int least, int most) {
        Kind<Long> whole = whole(least, most);
        return of(
                whole.expected(),
                least,
                value -> value.number()
                        .map(digits -> Math.toIntExact(new NumberText(digits).whole(least, most, whole.expected()))));
    }

    /** A number, exactly as it is written, from {@code least} to {@code most}. */
    public static Kind<BigDecimal> number(String expected, BigDecimal least, BigDecimal most) {
        return of(expected, least, value -> value.number().map(digits -> number(digits, expected, least, most)));
    }

    private static BigDecimal number(String digits, String expected, BigDecimal least, BigDecimal most) {
        BigDecimal number = new NumberText(digits).exact();
        if (number.compareTo(least) < 0 || number.compareTo(most) > 0)
            throw new IllegalArgumentException(digits + "; it must be " + expected + ".");
        return number;
    }

    /** A list, each of its values of one kind. */
    public static <T> Kind<List<T>> list(Kind<T> each) {
        return list(each, Integer.MAX_VALUE);
    }

    /** A list of {@code most} values at most, each of one kind. A longer one is not looked into. */
    public static <T> Kind<List<T>> list(Kind<T> each, int most) {
        return of(
                "a list",
                List.of(),
                value -> value.items(most).map(items -> {
                    List<T> read = new ArrayList<>(items.size());
                    for (Value item : items) read.add(each.read(item));
                    return read;
                }));
    }

    private record SimpleKind<T>(String expected, T standIn, Function<Value, Optional<T>> reader) implements Kind<T> {
        @Override
        public T read(Value value) {
            try {
                Optional<T> read = reader.apply(value);
                if (read.isEmpty()) value.refuse(this);
                return read.orElse(standIn);
            } catch (IllegalArgumentException e) {
                value.wrong(String.valueOf(e.getMessage()));
                return standIn;
            }
        }
    }
}
