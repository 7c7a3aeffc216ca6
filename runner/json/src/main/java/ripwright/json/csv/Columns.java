package ripwright.json.csv;

import java.util.List;
import java.util.Map;
import ripwright.json.tree.Column;
import ripwright.json.tree.Column.Holds;

/**
 * The columns of a stack and of a cutting bill, each by the names shops give it; the fields are those of a job file. Immutable,
 * safe on any thread.
 */
public final class Columns {
    private static final Map<String, String> FACES = Map.ofEntries(
            Map.entry("shows", "show"),
            Map.entry("showing", "show"),
            Map.entry("visible", "show"),
            Map.entry("seen", "show"),
            Map.entry("front", "show"),
            Map.entry("yes", "show"),
            Map.entry("hide", "hidden"),
            Map.entry("hid", "hidden"),
            Map.entry("unseen", "hidden"),
            Map.entry("inside", "hidden"),
            Map.entry("back", "hidden"),
            Map.entry("no", "hidden"));

    private static final Map<String, String> EDGES =
            Map.of("both", "2", "two", "2", "left", "1", "one", "1", "neither", "0", "none", "0");

    private Columns() {}

    /** Those of a stack. */
    public static List<Column> stack() {
        return List.of(
                Column.required("id", Holds.TEXT, "board", "board id", "id", "board no", "no", "nr", "mark"),
                Column.optional("count", Holds.NUMBER, "count", "qty", "quantity", "pcs", "pieces", "copies"),
                Column.required("species", Holds.TEXT, "species", "wood", "timber", "lumber", "material"),
                Column.required("thickness", Holds.LENGTH, "thickness", "thick", "thickness now", "t"),
                Column.optional(
                        "millsTo",
                        Holds.LENGTH,
                        "mills to",
                        "mill to",
                        "milled to",
                        "milled thickness",
                        "finished thickness",
                        "finish thickness"),
                Column.required("width", Holds.LENGTH, "width", "wide", "width at marked end", "near width", "w"),
                Column.optional(
                        "widthAtFarEnd", Holds.LENGTH, "width at far end", "far width", "width far end", "other width"),
                Column.required("length", Holds.LENGTH, "length", "long", "l"),
                Column.optional("crook", Holds.LENGTH, "crook"),
                Column.required("straightEdges", Holds.NUMBER, "straight edges", "edges straight", "edges")
                        .reading(EDGES),
                Column.optional("edgeLoss", Holds.LENGTH, "edge loss", "loss at edge", "edge trim"),
                Column.optional("endTrim", Holds.LENGTH, "end trim", "trim", "end loss"),
                Column.optional("endTrim.near", Holds.LENGTH, "end trim near", "near end trim", "near trim"),
                Column.optional("endTrim.far", Holds.LENGTH, "end trim far", "far end trim", "far trim"),
                Column.optional("price", Holds.NUMBER, "price", "price per board foot", "price per bf", "price bf"),
                Column.optional("ripped", Holds.FLAG, "ripped", "already ripped", "ripped to width"),
                Column.optional("defects[].kind", Holds.TEXT, "defect", "defect kind", "kind of defect"),
                Column.optional("defects[].from", Holds.LENGTH, "defect from"),
                Column.optional("defects[].to", Holds.LENGTH, "defect to"),
                Column.optional("defects[].left", Holds.LENGTH, "defect left"),
                Column.optional("defects[].right", Holds.LENGTH, "defect right"),
                Column.optional("defects[].blocks", Holds.TEXT, "defect blocks", "blocks")
                        .reading(FACES));
    }

    /** Those of a cutting bill. A part whose face is not told shows: it gets clear wood. */
    public static List<Column> bill() {
        return List.of(
                Column.required("name", Holds.TEXT, "part", "part name", "name", "item", "piece", "description"),
                Column.required(
                        "count", Holds.NUMBER, "count", "qty", "quantity", "pcs", "no", "nr", "how many", "needed"),
                Column.required("length", Holds.LENGTH, "length", "finished length", "finish length", "long", "l"),
                Column.required("width", Holds.LENGTH, "width", "finished width", "finish width", "wide", "w"),
                Column.required(
                        "thickness", Holds.LENGTH, "thickness", "finished thickness", "finish thickness", "thick", "t"),
                Column.optional("species", Holds.CHOICES, "species", "wood", "timber", "lumber", "material"),
                Column.optional("face", Holds.TEXT, "face", "show", "shows", "visible")
                        .reading(FACES)
                        .otherwise("show"),
                Column.optional("sneakUp", Holds.LENGTH, "sneak up", "sneak up oversize", "oversize", "extra length"),
                Column.optional("edgeAllowance", Holds.LENGTH, "edge allowance", "extra width", "width allowance"),
                Column.optional("fitted", Holds.FLAG, "fitted", "fit", "fitted by hand", "cut to fit"),
                Column.optional("together", Holds.TEXT, "together", "group", "same board", "together group"));
    }
}
