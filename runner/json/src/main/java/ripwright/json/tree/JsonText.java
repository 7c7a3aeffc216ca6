package ripwright.json.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The text of a file as a tree. Notes keys that are there twice, and what is no JSON. */
final class JsonText {
    private static final int DEEPEST = 32; // a plan nests 8 deep

    private static final int MOST_FIELDS = 100_000; // of one object; only prices have more than some twenty
    private static final int LONGEST_SHORT = 40; // letters
    private static final int MOST_SHORT = 100_000;

    private final Source source;
    private final Problems problems;
    private final Map<String, String> shortTexts = new HashMap<>(); // each kept once: a job repeats most of them
    private final TextLimit limit = TextLimit.ofThisHeap();
    private int values;

    JsonText(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /** The one value of the file; empty when there is none that can be read. */
    Optional<JsonNode> root() {
        try (JsonParser parser = factory().createParser(source.text())) {
            try {
                return root(parser);
            } catch (JsonProcessingException e) {
                SyntaxMistake mistake = new SyntaxMistake(source.text(), parser, e);
                problems.add(source, path(parser.getParsingContext()), mistake.offset(), mistake.what());
                return Optional.empty();
            } catch (TooMuchException e) {
                problems.add(source, path(parser.getParsingContext()), at(parser), e.what);
                return Optional.empty();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from memory failed.", e);
        }
    }

    private Optional<JsonNode> root(JsonParser parser) throws IOException, TooMuchException {
        if (parser.nextToken() == null) {
            problems.add(source.name(), "the file is empty; it must hold one JSON object.");
            return Optional.empty();
        }
        JsonNode root = node(parser, 0);
        if (restIsBlank(parser)) return Optional.of(root);
        int more = firstNonBlank(parser.currentLocation().getCharOffset());
        problems.add(
                source,
                "$",
                more,
                "something follows the end of the value; a file holds one value and nothing after it.");
        return Optional.of(root);
    }

    private boolean restIsBlank(JsonParser parser) {
        return firstNonBlank(parser.currentLocation().getCharOffset())
                == source.text().length();
    }

    private int firstNonBlank(long from) {
        String text = source.text();
        int at = (int) from;
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) at++;
        return at;
    }

    private JsonNode node(JsonParser parser, int depth) throws IOException, TooMuchException {
        if (++values > limit.values()) throw new TooMuchException(limit.overValues());
        if (depth > DEEPEST) throw new TooMuchException("nested over " + DEEPEST + " deep; no job or plan is.");
        int at = at(parser);
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> new JsonNode.JsonObject(at, members(parser, depth));
            case START_ARRAY -> new JsonNode.JsonArray(at, items(parser, depth));
            case VALUE_STRING -> new JsonNode.JsonScalar(at, JsonNode.Type.TEXT, text(parser));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                new JsonNode.JsonScalar(at, JsonNode.Type.NUMBER, text(parser));
            case VALUE_TRUE, VALUE_FALSE -> new JsonNode.JsonScalar(at, JsonNode.Type.FLAG, parser.getText());
            case VALUE_NULL -> new JsonNode.JsonScalar(at, JsonNode.Type.NULL, "null");
            default -> throw new IllegalStateException("A value cannot start with " + token + ".");
        };
    }

    private Map<String, JsonNode.Member> members(JsonParser parser, int depth) throws IOException, TooMuchException {
        Map<String, JsonNode.Member> members = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            int at = at(parser);
            JsonNode.Member first = members.get(name);
            if (first != null)
                problems.add(
                        source,
                        path(parser.getParsingContext()),
                        at,
                        "here twice, first on line " + source.spot(first.at()).line() + ". Keep one.");
            parser.nextToken();
            JsonNode value = node(parser, depth + 1);
            if (first == null) members.put(name, new JsonNode.Member(at, value));
            if (members.size() > MOST_FIELDS)
                throw new TooMuchException("over 100,000 fields in one object; no job or plan has so many.");
        }
        return members;
    }

    private List<JsonNode> items(JsonParser parser, int depth) throws IOException, TooMuchException {
        List<JsonNode> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) items.add(node(parser, depth + 1));
        return items;
    }

    private String text(JsonParser parser) throws IOException {
        String text = parser.getText();
        if (text.length() > LONGEST_SHORT || shortTexts.size() > MOST_SHORT) return text;
        return shortTexts.computeIfAbsent(text, first -> first);
    }

    private static int at(JsonParser parser) {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private static String path(JsonStreamContext context) {
        return jsonPath(context).toString();
    }

    private static JsonPath jsonPath(JsonStreamContext context) {
        if (context.inRoot()) return JsonPath.ROOT;
        JsonPath parent = jsonPath(context.getParent());
        if (context.inArray()) return context.hasCurrentIndex() ? parent.item(context.getCurrentIndex()) : parent;
        return context.hasCurrentName() ? parent.field(context.getCurrentName()) : parent;
    }

    /** A factory of its own for each file: it keeps the names it has met. No limits but ours, whose messages are plain. */
    private static JsonFactory factory() {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(Integer.MAX_VALUE)
                        .maxNumberLength(Integer.MAX_VALUE)
                        .maxStringLength(Integer.MAX_VALUE)
                        .maxNameLength(Integer.MAX_VALUE)
                        .build())
                .build();
    }

    private static final class TooMuchException extends Exception {
        private static final long serialVersionUID = 1;

        private final String what;

        private TooMuchException(String what) {
            super(what);
            this.what = what;
        }
    }
}
