package ripwright.plan;

import java.util.Optional;
import ripwright.measure.Length;

/**
 * One fence position.
 *
 * @param id unique in the plan
 * @param width the strips it makes
 * @param test how it is proved; empty when no setting is tested
 */
public record Setting(String id, Length width, Optional<Test> test) {
    /**
     * The test blank a setting is proved on first.
     *
     * @param blank its id
     * @param source where it comes from
     */
    public record Test(String blank, TestBlank.Source source) {}
}
