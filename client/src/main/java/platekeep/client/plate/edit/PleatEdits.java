package platekeep.client.plate.edit;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;

/** Widening, narrowing and shifting. What was at pleat 7 stays at pleat 7 when a chart is widened or narrowed. */
public final class PleatEdits {

    private PleatEdits() {}

    /**
     * Adds pleats (or takes away, where negative) at both ends.
     *
     * @return empty where the chart would become too narrow or too wide, or cables would be cut off
     */
    public static Optional<Plate> widen(Plate plate, int left, int right) {
        Pleats pleats = plate.pleats().orElseThrow();
        int from = pleats.from() - left;
        int to = pleats.to() + right;
        boolean fits = from >= -Pleats.FARTHEST
                && to <= Pleats.FARTHEST
                && to - from >= 1
                && to - from <= Pleats.MOST_POSITIONS;
        if (!fits || !plate.rows().stream().allMatch(row -> isEmptyBeyond(row.cells(), -left, -right))) {
            return Optional.empty();
        }
        List<Row> rows = plate.rows().stream()
                .map(row -> row.withCells(widened(row.cells(), left, right)))
                .toList();
        return Optional.of(plate.edit()
                .pleats(Optional.of(new Pleats(from, to, pleats.unknown())))
                .rows(rows)
                .build());
    }

    private static boolean isEmptyBeyond(String cells, int cutLeft, int cutRight) {
        String left = cells.substring(0, Math.max(0, Math.min(cells.length(), cutLeft)));
        String right = cells.substring(Math.max(0, cells.length() - Math.max(0, cutRight)));
        return isEmpty(left) && isEmpty(right);
    }

    private static boolean isEmpty(String cells) {
        return cells.chars().allMatch(c -> c == Row.EMPTY);
    }

    private static String widened(String cells, int left, int right) {
        String empty = String.valueOf(Row.EMPTY);
        String cut = cells.substring(Math.max(0, -left), cells.length() - Math.max(0, -right));
        return empty.repeat(Math.max(0, left)) + cut + empty.repeat(Math.max(0, right));
    }

    /**
     * Moves the picture with its starts, single stitches and remarks so many pleats to the right (or left, where
     * negative); pleat numbers stay where they are.
     *
     * @return empty where cables would leave the chart
     */
    public static Optional<Plate> shift(Plate plate, int by) {
        if (!plate.rows().stream().allMatch(row -> isEmptyBeyond(row.cells(), -by, by))) {
            return Optional.empty();
        }
        List<Row> rows = plate.rows().stream()
                .map(row -> row.withCells(widened(row.cells(), by, -by)))
                .toList();
        return Optional.of(plate.edit()
                .rows(rows)
                .starts(plate.starts().stream().map(s -> moved(s, by)).toList())
                .marks(plate.marks().stream().map(m -> moved(m, by)).toList())
                .remarks(plate.remarks().stream().map(r -> moved(r, by)).toList())
                .build());
    }

    private static Start moved(Start start, int by) {
        return start.at(start.row(), start.pleat() + by, start.cable());
    }

    private static Mark moved(Mark mark, int by) {
        return mark.at(mark.row(), Pleat.text(mark.place() + by));
    }

    private static Remark moved(Remark remark, int by) {
        return new Remark(
                remark.id(),
                remark.row(),
                remark.from().map(from -> from + by),
                remark.to().map(to -> to + by),
                remark.by(),
                remark.on(),
                remark.text(),
                remark.done(),
                remark.unknown());
    }
}
