package platekeep.model.plate;

import java.util.Objects;
import java.util.Optional;

/**
 * One row of stacked cables: an identity, and one character for each cable position from the left, {@link #EMPTY} or a key
 * of the palette. Held as small as can be, since a library of ten thousand plates has half a million of them.
 */
public final class Row {

    /** The cell where no cable lies. */
    public static final char EMPTY = '.';

    private static final int NONE = -1;

    private final int id;
    private final String cells;

    /**
     * @param id its identity; empty for a row that was typed by hand and has none yet
     */
    public Row(Optional<RowId> id, String cells) {
        this(id.isPresent() ? id.get().number() : NONE, Objects.requireNonNull(cells));
    }

    private Row(int id, String cells) {
        this.id = id;
        this.cells = cells;
    }

    public static Row of(String id, String cells) {
        return new Row(Optional.of(new RowId(id)), cells);
    }

    /** A row that has no id yet. */
    public static Row bare(String cells) {
        return new Row(Optional.empty(), cells);
    }

    /** Its identity; empty for a row that has none yet. */
    public Optional<RowId> id() {
        return id == NONE ? Optional.empty() : Optional.of(RowId.of(id));
    }

    /** One character for each cable position. */
    public String cells() {
        return cells;
    }

    public Row withCells(String newCells) {
        return new Row(id, Objects.requireNonNull(newCells));
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
        boolean isAlike = id == other.id && cells.length() == other.cells.length();
        for (int i = 0; isAlike && i < cells.length(); i++) {
            isAlike = (cells.charAt(i) == EMPTY) == (other.cells.charAt(i) == EMPTY);
        }
        return isAlike;
    }

    /** The row as it stands in the text: id and a space where there is an id, then the cells. */
    public String text() {
        return id == NONE ? cells : RowId.of(id).text() + " " + cells;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Row row && row.id == id && row.cells.equals(cells);
    }

    @Override
    public int hashCode() {
        return 31 * id + cells.hashCode();
    }

    @Override
    public String toString() {
        return "Row[" + text() + "]";
    }
}
