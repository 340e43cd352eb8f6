package platekeep.model.join.edits.change;

import java.util.TreeMap;
import platekeep.model.plate.RowId;

/**
 * A row that a designer put in.
 *
 * @param cells the ink at each position that has a cable, positions as before any move
 */
public record NewRow(RowId id, TreeMap<Integer, Character> cells) {}
