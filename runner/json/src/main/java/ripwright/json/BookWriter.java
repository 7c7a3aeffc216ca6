package ripwright.json;

import ripwright.json.tree.JsonOut;
import ripwright.measure.Unit;
import ripwright.settle.Settlement;

/** Writes books: the same bytes for the same book, and exactly the book that is read back. */
public final class BookWriter {
    private final JsonOut json;
    private final StockOut stock;

    private BookWriter(JsonOut json, Unit units) {
        this.json = json;
        this.stock = new StockOut(json, units);
    }

    /** The book as its file holds it, in UTF-8. */
    public static byte[] bytes(Book book) {
        return JsonOut.bytes(json -> {
            json.number("format", Format.NUMBER);
            json.text("units", book.units().symbol());
            json.list("booked", book.booked(), new BookWriter(json, book.units())::write);
        });
    }

    private void write(Booked entry) {
        Settlement settlement = entry.settlement();
        json.text("job", entry.job());
        json.text("on", entry.on());
        json.text("file", entry.file());
        json.text("plan", entry.plan());
        entry.before().ifPresent(digest -> json.text("before", digest));
        json.text("after", entry.after());
        json.text("left", entry.left());
        json.list("cut", settlement.cut(), board -> stock.board(board, 1));
        json.list("taken", settlement.taken(), taken -> {
            json.number("place", taken.place());
            stock.offcut(taken.offcut());
        });
        json.list("entered", settlement.entered(), stock::offcut);
        entry.writtenBefore().ifPresent(text -> json.text("writtenBefore", text));
    }
}
