package platekeep.model.plate;

import java.util.List;
import java.util.Optional;

/**
 * A design plate: the chart that says which colour of cable stitch lies over which pair of pleats, row stacked on row,
 * and all that is known about it. See {@link Draft} to make a changed one.
 *
 * @param id a UUID, kept through renames
 * @param title not blank
 * @param number the designer's own plate number
 * @param origin where it comes from, {@link Origin#NONE} when unsaid
 * @param fromPlate the plate that it was started from
 * @param state how far it has come
 * @param uses what it is for ({@code for} in the text): sorted, no doubles
 * @param themes sorted by code point, no doubles
 * @param ages youngest first, no doubles
 * @param designers in the order given
 * @param notes free text, a line each
 * @param palette the colours by key
 * @param pleats what the chart covers; empty for a plate that is only a scan yet (then it has no rows)
 * @param cloth what it was drawn for, {@link Cloth#NONE} when unsaid
 * @param starts where stitching starts, from the bottom, then from the left
 * @param repeat set when the chart is one repeat of a strip
 * @param rows top row first, all equally long
 * @param lines geometric lines, as given
 * @param marks by row from the bottom, then pleat, then stitch
 * @param notions as given
 * @param remarks by day, then id
 * @param clashes what is open after a join
 * @param unknown keys that this version does not know
 */
public record Plate(
        String id,
        String title,
        Optional<String> number,
        Origin origin,
        Optional<FromPlate> fromPlate,
        Optional<State> state,
        List<String> uses,
        List<String> themes,
        List<Age> ages,
        List<String> designers,
        List<String> notes,
        Palette palette,
        Optional<Pleats> pleats,
        Cloth cloth,
        List<Start> starts,
        Optional<Repeat> repeat,
        List<Row> rows,
        List<Line> lines,
        List<Mark> marks,
        List<Notion> notions,
        List<Remark> remarks,
        List<Clash> clashes,
        Unknown unknown) {

    /** A plate has at most this many rows. */
    public static final int MOST_ROWS = 2000;

    public Plate {
        title = CodePoints.nfc(title);
        number = CodePoints.said(number);
        uses = CodePoints.nfc(uses);
        themes = CodePoints.nfc(themes);
        ages = List.copyOf(ages);
        designers = CodePoints.nfc(designers);
        notes = CodePoints.nfc(notes);
        starts = List.copyOf(starts);
        rows = List.copyOf(rows);
        lines = List.copyOf(lines);
        marks = List.copyOf(marks);
        notions = List.copyOf(notions);
        remarks = List.copyOf(remarks);
        clashes = List.copyOf(clashes);
    }

    /** How many cable positions a row has; 0 without a chart. */
    public int positions() {
        return pleats.map(Pleats::positions).orElse(0);
    }

    /** The first pleat of the chart; 0 without a chart. */
    public int from() {
        return pleats.map(Pleats::from).orElse(0);
    }

    /** The index of the row with this id, top row 0; -1 when there is none. Linear in the rows. */
    public int indexOf(RowId row) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).id().filter(row::equals).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    /** The row's number as people count: the bottom row is 1. */
    public int numberFromBottom(int index) {
        return rows.size() - index;
    }

    /** The cell at a row (top row 0) and position; {@link Row#EMPTY} outside the chart. */
    public char cellAt(int index, int position) {
        int i = position - from();
        if (index < 0 || index >= rows.size() || i < 0 || i >= positions()) {
            return Row.EMPTY;
        }
        return rows.get(index).cells().charAt(i);
    }

    /** Whether something waits for a decision. */
    public boolean hasClashes() {
        return !clashes.isEmpty();
    }

    /** A copy to change. */
    public Draft edit() {
        return new Draft(this);
    }
}
