package ripwright.json.tree;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Lays JSON out for people: some objects and lists have every value on a line of its own, others all on one. Or all of it
 * on one line, for programs that read it by lines.
 */
final class JsonLayout implements PrettyPrinter {
    private final boolean onOneLine;
    private final Deque<Boolean> broken = new ArrayDeque<>(); // of every open object and list, innermost first
    private boolean nextBroken;
    private int indent;

    JsonLayout(boolean onOneLine) {
        this.onOneLine = onOneLine;
    }

    /** Whether the next object or list has every value on a line of its own. */
    void next(boolean broken) {
        nextBroken = broken && !onOneLine;
    }

    private void open() {
        broken.push(nextBroken);
        if (nextBroken) indent++;
    }

    private void before(JsonGenerator json, String inline) throws IOException {
        json.writeRaw(broken.element() ? "\n" + "  ".repeat(indent) : inline);
    }

    private void close(JsonGenerator json, int entries, String inline) throws IOException {
        boolean wasBroken = broken.pop();
        if (wasBroken) indent--;
        if (entries > 0) json.writeRaw(wasBroken ? "\n" + "  ".repeat(indent) : inline);
    }

    @Override
    public void writeRootValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw('\n');
    }

    @Override
    public void writeStartObject(JsonGenerator json) throws IOException {
        open();
        json.writeRaw('{');
    }

    @Override
    public void beforeObjectEntries(JsonGenerator json) throws IOException {
        before(json, " ");
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
        json.writeRaw(',');
        before(json, " ");
    }

    @Override
    public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw(": ");
    }

    @Override
    public void writeEndObject(JsonGenerator json, int entries) throws IOException {
        close(json, entries, " ");
        json.writeRaw('}');
    }

    @Override
    public void writeStartArray(JsonGenerator json) throws IOException {
        open();
        json.writeRaw('[');
    }

    @Override
    public void beforeArrayValues(JsonGenerator json) throws IOException {
        before(json, "");
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw(',');
        before(json, " ");
    }

    @Override
    public void writeEndArray(JsonGenerator json, int entries) throws IOException {
        close(json, entries, "");
        json.writeRaw(']');
    }
}
