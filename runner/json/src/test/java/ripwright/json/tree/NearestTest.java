package ripwright.json.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> FIELDS = List.of(
            "id", "species", "thickness", "millsTo", "width", "widthAtFarEnd", "length", "crook", "straightEdges");

    @Tag("locale")
    @ParameterizedTest
    @CsvSource({
        "widht, Did you mean \"width\"?",
        "wdth, Did you mean \"width\"?",
        "ID, Did you mean \"id\"?",
        "WIDTH, Did you mean \"width\"?",
        "thicknes, Did you mean \"thickness\"?",
        "straight_edges, Did you mean \"straightEdges\"?",
        "widthAtEnd, Did you mean \"widthAtFarEnd\"?",
        "lenght, Did you mean \"length\"?",
        "crock, Did you mean \"crook\"?",
        "thick, Did you mean \"thickness\"?",
        "len, Did you mean \"length\"?",
        "wi, The nearest known one is \"id\".",
        "wood, The nearest known one is \"id\".",
    })
    void a_mistyped_field_is_recognized(String typed, String told) {
        assertThat(new Nearest(typed, FIELDS).sentence()).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({"1", "1000", "1000000"})
    void a_word_of_any_length_is_answered_at_once(int length) {
        assertThat(new Nearest("x".repeat(length), FIELDS).sentence()).startsWith("The nearest known one is ");
    }
}
