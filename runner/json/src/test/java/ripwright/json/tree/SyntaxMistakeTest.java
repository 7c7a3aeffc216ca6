package ripwright.json.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of texts that are no JSON: path, line, column, what stands there and what would be right. */
class SyntaxMistakeTest {
    private static final String CUT = " the text ends here, in the middle; the file seems cut short.";
    private static final String NUMBER = " a number that JSON does not know; write it like 0.5, 5 or 1.25.";
    private static final String WORDS = " Text goes in double quotes; true, false and null are in small letters.";
    private static final String HINT =
            " A length with a fraction or a unit goes in double quotes, as in \"2 3/8\" or \"38 mm\".";

    private static final String QUOTES =
            " is no quote here; names and text go in straight double quotes, \"like this\".";

    static Stream<Arguments> texts() {
        return Stream.of(
                Arguments.of("{", "$ 1:2" + CUT),
                Arguments.of("{\"a\"", "$.a 1:5" + CUT),
                Arguments.of("{\"a\":", "$.a 1:6" + CUT),
                Arguments.of("{\"a\":1,", "$.a 1:8" + CUT),
                Arguments.of("{\"a\":1,}", "$.a 1:8 a comma before }; take the comma out."),
                Arguments.of("[1,]", "$[1] 1:4 a comma before ]; take the comma out."),
                Arguments.of("[1 2]", "$[1] 1:4 found 2 where a comma or ] is due." + HINT),
                Arguments.of(
                        "{\"a\" 1}", "$.a 1:6 found 1 where a colon is due, between a field's name and its value."),
                Arguments.of("{a:1}", "$ 1:2 found a where the name of a field in double quotes is due."),
                Arguments.of("{'a':1}", "$ 1:2 '" + QUOTES),
                Arguments.of("{\"a\":\u201Cb\u201D}", "$.a 1:6 \u201C" + QUOTES),
                Arguments.of("{\"a\":1, // b\n\"c\":2}", "$.a 1:9 a remark; these files have none, take it out."),
                Arguments.of("{\"a\":1 /* b */}", "$.a 1:8 a remark; these files have none, take it out."),
                Arguments.of("{\"a\":NaN}", "$.a 1:6 NaN is not a number; write one in plain digits."),
                Arguments.of("{\"a\":-Infinity}", "$.a 1:6 -Infinity is not a number; write one in plain digits."),
                Arguments.of("{\"a\":01}", "$.a 1:7" + NUMBER),
                Arguments.of("{\"a\":1.}", "$.a 1:7" + NUMBER),
                Arguments.of("{\"a\":.5}", "$.a 1:6" + NUMBER),
                Arguments.of("{\"a\":+5}", "$.a 1:7" + NUMBER),
                Arguments.of("{\"a\":1e}", "$.a 1:7" + NUMBER),
                Arguments.of("{\"a\":-x}", "$.a 1:7" + NUMBER),
                Arguments.of("{\"a\":\"x\ny\"}", "$.a 1:8 the line ends inside text; close it with a double quote."),
                Arguments.of("{\"a\":\"x\ty\"}", "$.a 1:8 a control character inside text; leave it out."),
                Arguments.of(
                        "{\"a\":\"\\q\"}",
                        "$.a 1:8 a backslash before something JSON does not know; a backslash itself is written \\\\."),
                Arguments.of(
                        "{\"a\":\"\\u12\"}",
                        "$.a 1:11 a backslash before something JSON does not know; a backslash itself is written \\\\."),
                Arguments.of("{\"a\":\"abc", "$.a 1:10" + CUT),
                Arguments.of("{\"a\":True}", "$.a 1:6 found True where a value is due." + WORDS),
                Arguments.of("{\"a\":oak}", "$.a 1:6 found oak where a value is due." + WORDS),
                Arguments.of("// c\n{}", "$ 1:1 a remark; these files have none, take it out."),
                Arguments.of("{\"a\":1 3/8}", "$.a 1:8 found 3 where a comma or } is due." + HINT),
                Arguments.of("{\"a\":3/8}", "$.a 1:7 found / where a comma or } is due." + HINT),
                Arguments.of("{\"a\":2-3/8}", "$.a 1:7 found -3 where a comma or } is due." + HINT),
                Arguments.of("{\"a\":12in}", "$.a 1:8 found in where a comma or } is due." + HINT),
                Arguments.of("{\"a\":\"1\" in}", "$.a 1:10 found in where a comma or } is due."),
                Arguments.of("]", "$ 1:1 found ] where the file's one value is due: an object, starting with {."),
                Arguments.of("{\"a\":1]", "$.a 1:7 found ] where a comma or } is due."),
                Arguments.of("{\u201ca\u201d:1}", "$ 1:2 \u201C" + QUOTES),
                Arguments.of("{\"a\":1;\"b\":2}", "$.a 1:7 found ; where a comma or } is due."),
                Arguments.of("{\"a\":\u00001}", "$.a 1:7 a control character; leave it out."),
                Arguments.of("{,}", "$ 1:2 found , where the name of a field in double quotes is due."),
                Arguments.of("{\"a\":,}", "$.a 1:6 found , where a value is due."),
                Arguments.of(
                        "{\"a\":1,,\"b\":2}", "$.a 1:8 found , where the name of a field in double quotes is due."),
                Arguments.of("{\"a\":[1 2]}", "$.a[1] 1:9 found 2 where a comma or ] is due." + HINT),
                Arguments.of("{\"a\":[{\"b\":}]}", "$.a[0].b 1:12 found } where a value is due."),
                Arguments.of(
                        "{} {}",
                        "$ 1:4 something follows the end of the value; a file holds one value and nothing after it."),
                Arguments.of(
                        "{} x",
                        "$ 1:4 something follows the end of the value; a file holds one value and nothing after it."));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void a_text_that_is_no_json(String text, String told) {
        Problems problems = new Problems();
        new JsonText(new Source("file", text), problems).root();
        String mistake = "nothing";
        try {
            problems.throwIfAny();
        } catch (WrongInputException e) {
            assertThat(e.mistakes()).hasSize(1);
            Mistake first = e.mistakes().get(0);
            Mistake.Spot spot = first.spot().orElseThrow();
            mistake = first.path() + " " + spot.line() + ":" + spot.column() + " " + first.what();
        }
        assertThat(mistake).isEqualTo(told);
    }
}
