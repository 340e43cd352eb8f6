package platekeep.model.stitch;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * The old kinds of an edited plate in which a start went along with its figure: figures without a start of their own that
 * made the same way are the old ones in a new place.
 *
 * <p>A start that left one place and one that came to another tell of a {@link Way}: moved, mirrored left to right, or
 * mirrored top to bottom, when every up becomes a down. A figure that is, cable for cable and colour for colour, an old
 * figure gone that way takes its kinds from there; all others are the cables that lie where they lay. Without such starts
 * nothing is taken for moved, since erasing at one end and painting at the other gives the same picture.
 */
final class MovedAlong implements OldKinds {

    private static final int MOST_WAYS = 16;

    private final Plate before;
    private final Plate edited;
    private final Kinds was;
    private final Figures is;
    private final OldKinds inPlace;
    private final Map<RowId, Integer> rowsBefore;
    private final Map<RowId, Integer> rowsNow;
    private final Optional<Way>[] cameBy;

    /** Where a cable of the edited plate came from: signs are 1, or -1 where it is mirrored. */
    private record Way(int rowSign, int rowOffset, int pleatSign, int pleatOffset) {
        int row(int row) {
            return rowSign * row + rowOffset;
        }

        int pleat(int pleat) {
            return pleatSign * pleat + pleatOffset;
        }
    }

    /** What the cables of the edited plate were, in place or moved along. */
    static OldKinds of(Plate before, Kinds was, Plate edited) {
        boolean moved = !only(before, edited, Kinds.indexOf(before.rows())).isEmpty()
                && !only(edited, before, Kinds.indexOf(edited.rows())).isEmpty();
        return moved ? new MovedAlong(before, was, edited) : OldKinds.of(was, before, edited);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private MovedAlong(Plate before, Kinds was, Plate edited) {
        this.before = before;
        this.edited = edited;
        this.was = was;
        this.inPlace = OldKinds.of(was, before, edited);
        this.is = Figures.of(edited);
        this.rowsBefore = Kinds.indexOf(before.rows());
        this.rowsNow = Kinds.indexOf(edited.rows());
        Set<Way> ways = ways();
        this.cameBy = ways.isEmpty() ? new Optional[0] : new Optional[is.count()];
        for (int f = 0; f < cameBy.length; f++) {
            int figure = f;
            cameBy[f] = ways.stream().filter(way -> came(is.get(figure), way)).findFirst();
        }
    }

    @Override
    public Optional<CableKind> at(int row, int position) {
        if (cameBy.length == 0) {
            return inPlace.at(row, position);
        }
        Optional<Way> way = cameBy[is.at(row, position)];
        if (way.isEmpty()) {
            return inPlace.at(row, position);
        }
        Way by = way.get();
        return was.at(by.row(row), by.pleat(position)).map(k -> by.rowSign() < 0 ? k.turned() : k);
    }

    private Set<Way> ways() {
        Set<Way> ways = new LinkedHashSet<>();
        for (Start left : only(before, edited, rowsBefore)) {
            for (Start came : only(edited, before, rowsNow)) {
                for (Way way : ways(left, came)) {
                    if (proved(way, came) && ways.add(way) && ways.size() == MOST_WAYS) {
                        return ways;
                    }
                }
            }
        }
        return ways;
    }

    private List<Way> ways(Start left, Start came) {
        int rowBefore = rowsBefore.get(left.row());
        int rowNow = rowsNow.get(came.row());
        if (left.cable() == came.cable()) {
            return List.of(
                    new Way(1, rowBefore - rowNow, 1, left.pleat() - came.pleat()),
                    new Way(1, rowBefore - rowNow, -1, left.pleat() + came.pleat()));
        }
        return List.of(new Way(-1, rowBefore + rowNow, 1, left.pleat() - came.pleat()));
    }

    /** Whether the start's own figure went this way. */
    private boolean proved(Way way, Start came) {
        return is.figureAt(rowsNow.get(came.row()), came.pleat())
                .filter(figure -> came(figure, way))
                .isPresent();
    }

    /** The starts at places of the one plate at which the other has none. */
    private static List<Start> only(Plate one, Plate other, Map<RowId, Integer> rows) {
        Set<List<Object>> places = new HashSet<>();
        other.starts().forEach(start -> places.add(List.of(start.row(), start.pleat())));
        return one.starts().stream()
                .filter(start -> rows.containsKey(start.row()))
                .filter(start -> !places.contains(List.<Object>of(start.row(), start.pleat())))
                .toList();
    }

    /** Whether the figure is an old one that came this way, and did not lie in its new place before. */
    private boolean came(Figure figure, Way way) {
        int old = was.figures().at(way.row(figure.bottom()), way.pleat(figure.first()));
        if (old == Figures.NONE || was.figures().get(old).cables() != figure.cables()) {
            return false;
        }
        for (int r = figure.top(); r <= figure.bottom(); r++) {
            for (int p = figure.from(); p <= figure.to(); p++) {
                if (is.at(r, p) == figure.number() && !sameCable(way, old, r, p)) {
                    return false;
                }
            }
        }
        return !stillThere(was.figures().get(old));
    }

    private boolean sameCable(Way way, int old, int row, int pleat) {
        return was.figures().at(way.row(row), way.pleat(pleat)) == old
                && before.cellAt(way.row(row), way.pleat(pleat)) == edited.cellAt(row, pleat);
    }

    /** Whether an old figure lies, unchanged, where it lay. */
    private boolean stillThere(Figure old) {
        for (int r = old.top(); r <= old.bottom(); r++) {
            Integer row = before.rows().get(r).id().map(rowsNow::get).orElse(null);
            for (int p = old.from(); p <= old.to(); p++) {
                char cell = row == null ? Row.EMPTY : edited.cellAt(row, p);
                if (was.figures().at(r, p) == old.number() && cell != before.cellAt(r, p)) {
                    return false;
                }
            }
        }
        return true;
    }
}
