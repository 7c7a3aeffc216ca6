package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.ObjectKind;
import ripwright.stock.History;

/** The job and the board that an offcut was left over from. */
final class CameFromFields extends ObjectKind<History> {
    @Override
    public String expected() {
        return "an object with job and board";
    }

    @Override
    protected History read(Fields fields) {
        String job = fields.required("job", Names.of("job it came from"));
        String board = fields.required("board", Names.of("board it came from"));
        return new History(Optional.empty(), Optional.empty(), Optional.of(job), Optional.of(board));
    }
}
