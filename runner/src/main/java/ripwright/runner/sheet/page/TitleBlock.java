package ripwright.runner.sheet.page;

import java.util.List;

/**
 * What a plan comes to.
 *
 * @param job the job's name
 * @param status whether every part is made, in a sentence
 * @param facts the figures
 * @param sentences what the figures do not say by themselves
 */
public record TitleBlock(String job, String status, List<Fact> facts, List<String> sentences) {
    /** Keeps copies of the lists. */
    public TitleBlock {
        facts = List.copyOf(facts);
        sentences = List.copyOf(sentences);
    }

    /**
     * One figure.
     *
     * @param name what it is
     * @param value as written
     */
    public record Fact(String name, String value) {}
}
