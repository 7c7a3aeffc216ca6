package ripwright.json.tree;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;

/**
 * Writes one JSON object, always the same bytes for the same values. For the thread that called {@link #bytes} or {@link #line},
 * until that returns.
 */
public final class JsonOut {
    private final JsonGenerator json;
    private final JsonLayout layout;

    private JsonOut(JsonGenerator json, JsonLayout layout) {
        this.json = json;
        this.layout = layout;
        json.setPrettyPrinter(layout);
    }

    /** The object with those fields, in UTF-8, ended by a line break. */
    public static byte[] bytes(Consumer<JsonOut> fields) {
        return bytes(JsonWriteFeature.COMBINE_UNICODE_SURROGATES_IN_UTF8, new JsonLayout(false), fields);
    }

    /** The same on one line and in ASCII, so that whatever prints it prints it right; without a line break at its end. */
    public static String line(Consumer<JsonOut> fields) {
        byte[] bytes = bytes(JsonWriteFeature.ESCAPE_NON_ASCII, new JsonLayout(true), fields);
        return new String(bytes, 0, bytes.length - 1, StandardCharsets.US_ASCII);
    }

    private static byte[] bytes(JsonWriteFeature letters, JsonLayout layout, Consumer<JsonOut> fields) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .enable(letters)
                .build();
        try (JsonGenerator json = factory.createGenerator(bytes, JsonEncoding.UTF8)) {
            JsonOut out = new JsonOut(json, layout);
            out.layout.next(true);
            json.writeStartObject();
            fields.accept(out);
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory failed.", e);
        }
        return bytes.toByteArray();
    }

    /** A field with an object on one line, but for lists in it that are broken. */
    public void object(String name, Runnable fields) {
        write(() -> json.writeFieldName(name));
        object(fields);
    }

    private void object(Runnable fields) {
        write(() -> {
            layout.next(false);
            json.writeStartObject();
            fields.run();
            json.writeEndObject();
        });
    }

    /** A field with a list of objects, every one on a line of its own. */
    public <T> void list(String name, List<T> items, Consumer<T> fieldsOf) {
        write(() -> {
            json.writeFieldName(name);
            layout.next(true);
            json.writeStartArray();
            for (T item : items) object(() -> fieldsOf.accept(item));
            json.writeEndArray();
        });
    }

    /** A field with a list of texts, all on one line. */
    public void texts(String name, List<String> texts) {
        write(() -> {
            json.writeFieldName(name);
            layout.next(false);
            json.writeStartArray();
            for (String text : texts) json.writeString(text);
            json.writeEndArray();
        });
    }

    /** A field with a list of whole numbers, all on one line. */
    public void numbers(String name, List<Integer> numbers) {
        write(() -> {
            json.writeFieldName(name);
            layout.next(false);
            json.writeStartArray();
            for (int number : numbers) json.writeNumber(number);
            json.writeEndArray();
        });
    }

    /** A field with text. */
    public void text(String name, String text) {
        write(() -> json.writeStringField(name, text));
    }

    /** A field with a number, written out in plain digits. */
    public void number(String name, BigDecimal number) {
        write(() -> json.writeNumberField(name, number));
    }

    /** A field with a whole number. */
    public void number(String name, int number) {
        write(() -> json.writeNumberField(name, number));
    }

    /** A field that is true or false. */
    public void flag(String name, boolean flag) {
        write(() -> json.writeBooleanField(name, flag));
    }

    private interface Writing {
        void run() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory failed.", e);
        }
    }
}
