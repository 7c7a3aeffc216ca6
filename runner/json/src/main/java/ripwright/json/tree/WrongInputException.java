package ripwright.json.tree;

import java.util.List;
import java.util.Map;

/** All that is wrong with the files of one reading: at least one thing. Its message is what a user reads. */
public final class WrongInputException extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<Mistake> mistakes;
    private final transient MistakeText text;

    WrongInputException(List<Mistake> mistakes, Map<String, Long> counts) {
        super(new MistakeText(mistakes, counts).text("nothing was read"));
        this.mistakes = List.copyOf(mistakes);
        this.text = new MistakeText(mistakes, counts);
    }

    /** What is wrong, file by file in the order of their text; the first 1,000. */
    public List<Mistake> mistakes() {
        return mistakes;
    }

    /** As a user reads it, ended by a line break; {@code consequence} is as in "nothing was planned". */
    public String text(String consequence) {
        return text.text(consequence);
    }
}
