package ripwright.json;

import ripwright.json.tree.JsonOut;

/**
 * Writes rack files: the same bytes for the same rack, and exactly the rack that is read back; where an offcut came from is
 * written only if both its job and its board are known. Keeps no state; safe on any thread.
 */
public final class RackWriter {
    private RackWriter() {}

    /** The rack as its file holds it, in UTF-8. */
    public static byte[] bytes(Rack rack) {
        return JsonOut.bytes(json -> write(rack, json));
    }

    /** The same fields into an object of a larger text. */
    static void write(Rack rack, JsonOut json) {
        StockOut stock = new StockOut(json, rack.units());
        json.number("format", Format.NUMBER);
        json.text("units", rack.units().symbol());
        json.list("offcuts", rack.offcuts(), stock::offcut);
    }
}
