package platekeep.model.join.edits.change;

import platekeep.model.plate.RowId;

/** A cable position in a row. */
public record Cell(RowId row, int position) {}
