package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class PictureTest {
    @Test
    void a_picture_stands_alone_and_shows_the_boards_asked_for() {
        String svg = new Picture(WindowSeat.job(), WindowSeat.plan(), List.of("oak-3", "oak-1")).svg();
        Document picture = Markups.parsed(svg);

        assertThat(svg).startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"").doesNotContain("class=\"\"", "url(");
        assertThat(Markups.texts(picture, "title")).containsExactly("Board oak-1", "Board oak-3");
        assertThat(Markups.texts(picture, "text")).contains("S1, 2 1/4", "B1 seat rail", "B20 apron");
    }

    @Test
    void a_board_is_drawn_as_on_the_sheet() {
        String svg = new Picture(WindowSeat.job(), WindowSeat.plan(), List.of("oak-1")).svg();
        String sheet = new Sheet(WindowSeat.job(), WindowSeat.plan()).html();
        Document picture = Markups.parsed(svg);
        Document page = Markups.parsed(sheet);

        assertThat(Markups.elements(page, "path").stream().map(path -> path.getAttribute("d")))
                .containsAll(Markups.elements(picture, "path").stream()
                        .map(path -> path.getAttribute("d"))
                        .toList());
    }
}
