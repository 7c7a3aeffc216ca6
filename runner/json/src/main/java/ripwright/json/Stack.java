package ripwright.json;

import java.util.List;
import ripwright.json.tree.Fields;
import ripwright.stock.Board;

/**
 * The boards on hand and the entries they were read from.
 *
 * @param boards every one of them
 * @param entries the entry of each, in the same order
 */
record Stack(List<Board> boards, List<Fields> entries) {}
