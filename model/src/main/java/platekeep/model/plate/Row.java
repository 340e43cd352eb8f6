package platekeep.model.plate;

import java.util.Optional;

/**
 * One row of stacked cables.
 *
 * @param id its identity; empty for a row that was typed by hand and has none yet
 * @param cells one character for each cable position from the left: {@link #EMPTY} or a key of the palette
 */
public record Row(Optional<RowId> id, String cells) {

    /** The cell where no cable lies. */
    public static final char EMPTY = '.';

    public static Row of(String id, String cells) {
        return new Row(Optional.of(new RowId(id)), cells);
    }

    /** A row that has no id yet. */
    public static Row bare(String cells) {
        return new Row(Optional.empty(), cells);
    }

    public Row withCells(String newCells) {
        return new Row(id, newCells);
    }

    public Row withId(RowId newId) {
        return new Row(Optional.of(newId), cells);
    }

    /** Whether no cable lies in the row. */
    public boolean isBlank() {
        for (int i = 0; i < cells.length(); i++) {
            if (cells.charAt(i) != EMPTY) {
                return false;
            }
        }
        return true;
    }

    /** Whether another row has the same id and its cables at the same places, of whatever colour. */
    public boolean liesLike(Row other) {
        if (this == other) {
            return true;
        }
        boolean isAlike = id.equals(other.id) && cells.length() == other.cells.length();
        for (int i = 0; isAlike && i < cells.length(); i++) {
            isAlike = (cells.charAt(i) == EMPTY) == (other.cells.charAt(i) == EMPTY);
        }
        return isAlike;
    }

    /** The row as it stands in the text: id and a space where there is an id, then the cells. */
    public String text() {
        return id.map(i -> i.text() + " " + cells).orElse(cells);
    }
}
