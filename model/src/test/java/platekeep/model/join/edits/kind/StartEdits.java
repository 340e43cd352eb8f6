package platekeep.model.join.edits.kind;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.model.join.edits.change.Cell;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;

/** Where stitching starts. */
final class StartEdits {
    private StartEdits() {}

    private static int index(Studio s) {
        if (s.base.starts().isEmpty()) {
            throw new Undetermined("no starts");
        }
        return s.upTo(s.base.starts().size());
    }

    static void turn(Studio s) {
        int i = index(s);
        Start was = s.base.starts().get(i);
        s.change.starts.put(
                i, Optional.of(was.at(was.row(), was.pleat(), was.cable().turned())));
    }

    static void gatheringRow(Studio s) {
        int i = index(s);
        Start was = s.base.starts().get(i);
        Optional<String> on = Optional.of(String.valueOf(1 + s.upTo(20)));
        if (was.on().equals(on)) {
            throw new Undetermined("no change");
        }
        s.change.starts.put(i, Optional.of(new Start(was.row(), was.pleat(), was.cable(), on, was.unknown())));
    }

    /** The start at another cable of its figure, with the kind that is there. */
    static void elsewhere(Studio s) {
        int i = index(s);
        Start was = s.base.starts().get(i);
        Set<Cell> figure = s.grid.figureAt(new Cell(was.row(), was.pleat()));
        Cell to = s.any(List.copyOf(figure));
        int d = s.grid.indexOf(was.row()) - s.grid.indexOf(to.row()) + to.position() - was.pleat();
        if (to.equals(new Cell(was.row(), was.pleat())) || s.change.gone.contains(to.row())) {
            throw new Undetermined("no change");
        }
        s.change.starts.put(
                i, Optional.of(was.at(to.row(), to.position(), was.cable().turned(d))));
    }

    static void rowGone(Studio s) {
        Start was = s.base.starts().get(index(s));
        RowEdits.take(s, List.of(was.row()));
    }

    static void cableErased(Studio s) {
        Start was = s.base.starts().get(index(s));
        s.paint(was.row(), was.pleat(), Row.EMPTY);
    }

    /** A start for a figure that followed the first one. */
    static void added(Studio s) {
        Start first = s.base.starts().get(0);
        List<Set<Cell>> followers = s.grid.figures().stream()
                .filter(f -> s.base.starts().stream().noneMatch(x -> f.contains(new Cell(x.row(), x.pleat()))))
                .toList();
        Cell at = s.any(List.copyOf(s.any(followers)));
        int d = s.grid.indexOf(first.row()) - s.grid.indexOf(at.row()) + at.position() - first.pleat();
        s.change.newStarts.add(new Start(at.row(), at.position(), first.cable().turned(d + s.upTo(2))));
    }
}
