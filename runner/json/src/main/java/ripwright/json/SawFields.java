package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.saw.Saw;

/** The two saws. */
final class SawFields extends ObjectKind<Saw> {
    private final Lengths lengths;

    SawFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object with ripKerf and crosscutKerf";
    }

    @Override
    protected Saw read(Fields fields) {
        Length ripKerf = fields.required("ripKerf", lengths.kerf());
        Length crosscutKerf = fields.required("crosscutKerf", lengths.kerf());
        Optional<Length> longestRip = fields.optional("longestRip", lengths.size());
        Optional<Length> shortestRip = fields.optional("shortestRip", lengths.size());
        Optional<Length> narrowestRip = fields.optional("narrowestRip", lengths.size());
        Optional<Length> shortestCrosscut = fields.optional("shortestCrosscut", lengths.size());
        if (fields.good("longestRip", "shortestRip")) {
            Length longest = longestRip.orElseThrow();
            Length shortest = shortestRip.orElseThrow();
            if (shortest.exceeds(longest))
                fields.wrong(
                        "longestRip",
                        lengths.text(longest) + " is under shortestRip, " + lengths.text(shortest)
                                + ". Make it as long at least.");
        }
        return fields.build(
                () -> new Saw(ripKerf, crosscutKerf, longestRip, shortestRip, narrowestRip, shortestCrosscut),
                () -> new Saw(
                        Length.ZERO,
                        Length.ZERO,
                        Optional.empty(),
                        goodOnly(fields, shortestRip),
                        Optional.empty(),
                        Optional.empty()));
    }

    /** What else must fit the shortest rip is checked against it even when there is a mistake beside it. */
    private static Optional<Length> goodOnly(Fields fields, Optional<Length> shortestRip) {
        return shortestRip.filter(length -> fields.good("shortestRip"));
    }
}
