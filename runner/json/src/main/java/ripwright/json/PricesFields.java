package ripwright.json;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import ripwright.json.tree.Fields;
import ripwright.json.tree.ObjectKind;
import ripwright.stock.Species;

/** Money per board foot of every wood; its fields are the woods' names. */
final class PricesFields extends ObjectKind<Map<Species, BigDecimal>> {
    @Override
    public String expected() {
        return "an object with a price per board foot for every wood";
    }

    @Override
    protected Map<Species, BigDecimal> read(Fields fields) {
        Map<Species, BigDecimal> prices = new LinkedHashMap<>();
        Map<Species, String> written = new HashMap<>();
        fields.all().forEach((name, value) -> {
            BigDecimal price = Amounts.money().read(value);
            try {
                Species species = Names.species(name);
                prices.put(species, price);
                String before = written.putIfAbsent(species, name);
                if (before != null) value.wrong("the same wood as \"" + before + "\" above. Keep one.");
            } catch (IllegalArgumentException e) {
                value.wrong(String.valueOf(e.getMessage()));
            }
        });
        return prices;
    }
}
