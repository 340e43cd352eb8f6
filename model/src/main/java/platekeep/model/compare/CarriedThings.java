package platekeep.model.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.stitch.Labels;

/**
 * The starts, marks and remarks of the earlier plate where the moves of the picture and its figures have brought them: what only
 * went along was not changed.
 */
final class CarriedThings {
    private final Plate after;
    private final PlateEdit edit;
    private final Grid cells;
    private final Optional<Labels> labels;
    private final List<Start> starts;
    private final Map<RowId, Integer> rows = new HashMap<>();

    /** @param cells those of the earlier plate */
    CarriedThings(Plate before, Plate after, PlateEdit edit, Grid cells) {
        this.after = after;
        this.edit = edit;
        this.cells = cells;
        starts = before.starts();
        labels = edit.figures().isEmpty() ? Optional.empty() : Optional.of(cells.figures());
        List<Row> all = before.rows();
        for (int i = 0; i < all.size(); i++) {
            int row = i;
            all.get(i).id().ifPresent(id -> rows.putIfAbsent(id, row));
        }
    }

    /** The start as it would stand had nobody changed it itself. */
    Start start(Start start) {
        int k = cells.frame().index(start.pleat());
        Optional<Motion> motion = motion(start.row(), k, k);
        Optional<RowId> row = motion.flatMap(m -> row(start.row(), m));
        if (row.isEmpty()) {
            return start;
        }
        boolean turned = edit.turnedOver() != motion.get().rowSign() < 0;
        return start.at(
                row.get(),
                cells.frame().position(motion.get().position(k)),
                turned ? start.cable().turned() : start.cable());
    }

    /** Of the starts that came the one in the figure of the earlier plate that this start was alone in, if that is alone there too. */
    Optional<Start> sameFigure(Start start, List<Start> came) {
        if (came.isEmpty()) {
            return Optional.empty();
        }
        Labels figures = labels.orElseGet(cells::figures);
        int figure = figureAt(figures, rows.get(start.row()), cells.frame().index(start.pleat()));
        boolean alone = starts.stream()
                        .filter(s -> figureAt(
                                        figures,
                                        rows.get(s.row()),
                                        cells.frame().index(s.pleat()))
                                == figure)
                        .count()
                == 1;
        List<Start> there = came.stream()
                .filter(now -> {
                    int row = after.indexOf(now.row());
                    int i = row < 0 ? -1 : edit.pairing().before(row);
                    int k = cells.frame().index(now.pleat());
                    return figureAt(figures, i, edit.picture().inverse().position(k)) == figure;
                })
                .toList();
        return figure >= 0 && alone && there.size() == 1 ? Optional.of(there.get(0)) : Optional.empty();
    }

    private static int figureAt(Labels figures, Integer row, int k) {
        return row == null || row < 0 ? Labels.NONE : figures.at(row, k);
    }

    /** The line in the letter that its colour has now. */
    Line line(Line line) {
        return line.withColour(edit.renaming().letter(line.colour()).orElse(line.colour()));
    }

    /** The remark as it would stand had nobody changed it itself. */
    Remark remark(Remark remark) {
        if (remark.row().isEmpty() || remark.from().isEmpty() || remark.to().isEmpty()) {
            return remark;
        }
        int from = cells.frame().index(remark.from().get());
        int to = cells.frame().index(remark.to().get());
        Optional<Motion> motion = motion(remark.row().get(), from, to);
        Optional<RowId> row = motion.flatMap(m -> row(remark.row().get(), m));
        if (row.isEmpty()) {
            return remark;
        }
        int a = cells.frame().position(motion.get().position(from));
        int b = cells.frame().position(motion.get().position(to));
        return remark.at(row.get(), Math.min(a, b), Math.max(a, b));
    }

    /** The mark as it would stand had nobody changed it itself, in the letter that its colour has now. */
    Mark mark(Mark mark) {
        char now = edit.renaming().letter(mark.colour()).orElse(mark.colour());
        return carried(mark.withColour(now));
    }

    private Mark carried(Mark mark) {
        double place = mark.place() - cells.frame().from();
        int k = (int) Math.floor(place);
        Optional<Motion> motion = motion(mark.row(), k, place == k ? k - 1 : k);
        Optional<RowId> row = motion.flatMap(m -> row(mark.row(), m));
        return row.isEmpty()
                ? mark
                : mark.at(
                        row.get(),
                        Pleat.text(motion.get().pleat(place) + cells.frame().from()));
    }

    /** The motion of what lies on a cable, or else on the one beside it. */
    private Optional<Motion> motion(RowId id, int k, int otherwise) {
        if (!edit.moves() && !edit.turnedOver()) {
            return Optional.empty();
        }
        return Optional.ofNullable(rows.get(id)).map(row -> {
            int figure = figure(row, k);
            return edit.motionOf(figure < 0 ? figure(row, otherwise) : figure);
        });
    }

    private int figure(int row, int k) {
        return labels.map(l -> l.at(row, k)).orElse(Labels.NONE);
    }

    private Optional<RowId> row(RowId id, Motion motion) {
        int now = edit.pairing().after(rows.get(id));
        int row = now < 0 ? -1 : motion.row(now);
        return row < 0 || row >= after.rows().size()
                ? Optional.empty()
                : after.rows().get(row).id();
    }
}
