package platekeep.model.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** Reads the rows of the picture, and single rows and runs of cells as they stand in clashes. */
final class RowsReader {
    private static final int ID_AND_SPACE = RowId.LENGTH + 1;

    private final Shapes shapes;
    private final Optional<Pleats> pleats;
    private final boolean[] coloured = new boolean[128];

    RowsReader(Shapes shapes, Palette palette, Optional<Pleats> pleats) {
        this.shapes = shapes;
        this.pleats = pleats;
        coloured[Row.EMPTY] = true;
        palette.entries().keySet().forEach(key -> coloured[key] = true);
    }

    /** The rows, top row first; an id that stood already is taken off the later row. */
    List<Row> rows(List<Piece> pieces, int at) {
        if (pieces.size() > Plate.MOST_ROWS) {
            shapes.problems()
                    .found(
                            Rule.ROW_COUNT,
                            at,
                            "a plate has at most " + Plate.MOST_ROWS + " rows, not " + pieces.size() + ".");
        }
        List<Row> rows = new ArrayList<>(pieces.size());
        Set<RowId> ids = new HashSet<>();
        for (int i = 0; i < pieces.size(); i++) {
            int fromBottom = pieces.size() - i;
            Row row = row(pieces.get(i), Optional.of(fromBottom));
            if (row.id().isPresent() && !ids.add(row.id().get())) {
                shapes.problems()
                        .foundInPicture(
                                Rule.DOUBLE_ID,
                                pieces.get(i).at(),
                                fromBottom,
                                OptionalInt.empty(),
                                "the row's id " + row.id().get() + " stands above already; this row has none now.");
                row = Row.bare(row.cells());
            }
            rows.add(row);
        }
        return rows;
    }

    /** One row as it stands in {@code rows}, with its number from the bottom where it lies in the picture. */
    Row row(Piece piece, Optional<Integer> fromBottom) {
        if (!(piece instanceof Piece.Str text)) {
            shapes.wrongType(piece, "row", "a text");
            return Row.bare("");
        }
        String line = text.text();
        int space = line.indexOf(' ');
        if (space < 0) {
            return Row.bare(cells(line, piece.at() + 1, fromBottom, OptionalInt.empty()));
        }
        String id = line.substring(0, space);
        if (!RowId.isRowId(id)) {
            found(
                    Rule.ROW_FORM,
                    piece.at(),
                    fromBottom,
                    OptionalInt.empty(),
                    "a row is its id (" + Words.ROW_ID_SAID + "), a space and the cells, or the cells alone; "
                            + Say.quoted(id) + " is no id.");
            return Row.bare("");
        }
        String cells = line.substring(ID_AND_SPACE);
        return new Row(
                Optional.of(new RowId(id)),
                cells(cells, piece.at() + 1 + ID_AND_SPACE, fromBottom, OptionalInt.empty()));
    }

    /**
     * Cells, as many as the chart has positions, or as many as told.
     *
     * @param at where the first cell stands
     */
    String cells(String cells, int at, Optional<Integer> fromBottom, OptionalInt expected) {
        int length = expected.orElse(pleats.map(Pleats::positions).orElse(cells.length()));
        if (cells.length() != length) {
            found(
                    expected.isPresent() ? Rule.CLASH_EXTENT : Rule.ROW_LENGTH,
                    at,
                    fromBottom,
                    OptionalInt.empty(),
                    "there are " + cells.length() + " cells here, but " + length + " positions; "
                            + (cells.length() < length ? "add some." : "take some out."));
        }
        for (int i = 0; i < cells.length(); i++) {
            char c = cells.charAt(i);
            if ((c >= coloured.length || !coloured[c]) && cells.indexOf(c) == i) {
                badCell(cells, i, at, fromBottom);
            }
        }
        return cells;
    }

    /** Reports a character once a row, at its first cell. */
    private void badCell(String cells, int i, int at, Optional<Integer> fromBottom) {
        String shown = Say.quoted(cells.substring(i, cells.offsetByCodePoints(i, 1)));
        OptionalInt pleat = pleats.isPresent() && fromBottom.isPresent()
                ? OptionalInt.of(pleats.get().from() + i)
                : OptionalInt.empty();
        if (Palette.isKey(cells.charAt(i))) {
            found(
                    Rule.CELL_COLOUR,
                    at + i,
                    fromBottom,
                    pleat,
                    "the colour " + shown + " is not in \"colours\"; add it there or use another.");
        } else {
            found(
                    Rule.ROW_FORM,
                    at + i,
                    fromBottom,
                    pleat,
                    "a cell is \".\" or the key of a colour, not " + shown + "; change it.");
        }
    }

    private void found(Rule rule, int at, Optional<Integer> fromBottom, OptionalInt pleat, String sentence) {
        if (fromBottom.isPresent()) {
            shapes.problems().foundInPicture(rule, at, fromBottom.get(), pleat, sentence);
        } else {
            shapes.problems().found(rule, at, sentence);
        }
    }
}
