package platekeep.model.join;

import java.util.List;
import platekeep.model.compare.PlateEdit;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/**
 * Rows that open clashes name by their number from the bottom, since they have no ids. Rows that come or go below change
 * the number, so a side's clashes are told by the earlier plate's numbers while they are joined.
 */
final class NumberedRows {

    private NumberedRows() {}

    /**
     * The side with the rows of its clashes numbered as in the earlier plate; a row that was not there gets a number
     * above all of that.
     *
     * @param side the side with its rows from the top, as {@code edit} has them
     * @param own the side as its clashes number it, which is upside down where the chart was turned over
     */
    static Plate asIn(Plate base, Plate side, PlateEdit edit, Plate own) {
        if (side.clashes().stream().noneMatch(c -> c.numberAt("row").isPresent())) {
            return side;
        }
        int rows = side.rows().size();
        boolean turned = side != own;
        List<Clash> clashes = side.clashes().stream()
                .map(clash -> clash.numberAt("row")
                        .map(n -> turned ? n - 1 : rows - n)
                        .filter(row -> row >= 0 && row < rows)
                        .map(row -> at(clash, number(base, edit.pairing().before(row), row)))
                        .orElse(clash))
                .toList();
        return side.edit().clashes(clashes).build();
    }

    private static int number(Plate base, int before, int row) {
        return before >= 0 ? base.rows().size() - before : base.rows().size() + 1 + row;
    }

    /** The handle of the row with such a number. */
    static int handle(int number, int side, RowJoin rows) {
        int row = rows.base() - number;
        return row >= 0 ? row : rows.held(rows.handle(side, -row - 1));
    }

    /** The same clash, about the row with another number. */
    static Clash at(Clash clash, int number) {
        Value.Builder place = new Value.Builder();
        clash.place().entries().forEach((key, value) -> place.put(key, key.equals("row") ? Value.of(number) : value));
        return clash.withPlace(place.build());
    }
}
