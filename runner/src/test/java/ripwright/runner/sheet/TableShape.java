package ripwright.runner.sheet;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** How many columns each row of a table's bodies fills, spans counted. */
final class TableShape {
    private TableShape() {}

    static List<Integer> of(Element table) {
        List<Integer> widths = new ArrayList<>();
        NodeList bodies = table.getElementsByTagName("tbody");
        for (int b = 0; b < bodies.getLength(); b++) {
            NodeList rows = ((Element) bodies.item(b)).getElementsByTagName("tr");
            int[] filled = new int[rows.getLength()];
            for (int r = 0; r < rows.getLength(); r++) {
                NodeList cells = rows.item(r).getChildNodes();
                for (int c = 0; c < cells.getLength(); c++) {
                    if (!(cells.item(c) instanceof Element cell)) continue;
                    for (int i = 0; i < span(cell, "rowspan"); i++) filled[r + i] += span(cell, "colspan");
                }
            }
            for (int width : filled) widths.add(width);
        }
        return widths;
    }

    private static int span(Element cell, String attribute) {
        return cell.hasAttribute(attribute) ? Integer.parseInt(cell.getAttribute(attribute)) : 1;
    }
}
