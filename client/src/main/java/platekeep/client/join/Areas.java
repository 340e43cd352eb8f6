package platekeep.client.join;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import platekeep.model.compare.Place;
import platekeep.model.compare.Side;
import platekeep.model.join.Settling;
import platekeep.model.join.back.Reversal;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Where on a chart something lies that a question is about. */
final class Areas {
    private Areas() {}

    /**
     * Where a clash lies in a plate; empty for what is not on the chart.
     *
     * @param joined the plate that has all rows of the clash, to find the neighbourhood of one that is gone
     */
    static Optional<Area> of(Plate plate, Plate joined, Clash clash) {
        if (plate.rows().isEmpty() || plate.positions() == 0) {
            return Optional.empty();
        }
        return switch (clash.what()) {
            case CABLES, FIGURE -> row(plate, joined, clash).map(r -> across(plate, r, clash));
            case ROW ->
                row(plate, joined, clash)
                        .map(r -> changed(plate, clash)
                                .orElseGet(() -> wholeRow(plate, r))
                                .in(r));
            case TWINS, ORDER -> row(plate, joined, clash).map(r -> wholeRow(plate, r));
            case ROWS -> run(plate, joined, clash);
            case START, MARK -> row(plate, joined, clash).map(r -> pleat(plate, r, clash));
            case PLEATS -> Optional.of(end(plate, clash));
            case REMARK -> remark(plate, clash);
            case FIELD, COLOUR, LINE, NOTION -> Optional.empty();
        };
    }

    private static Optional<Integer> row(Plate plate, Plate joined, Clash clash) {
        int row = Settling.row(plate, clash);
        return row >= 0 ? Optional.of(row) : near(plate, joined, Settling.row(joined, clash));
    }

    /** The row in the place of one that is gone: the next one above that is still there, else the top. */
    private static Optional<Integer> near(Plate plate, Plate joined, int row) {
        for (int r = row; r >= 0 && r < joined.rows().size(); r--) {
            int at = joined.rows().get(r).id().map(plate::indexOf).orElse(-1);
            if (at >= 0) {
                return Optional.of(at);
            }
        }
        return Optional.of(0);
    }

    private static Area across(Plate plate, int row, Clash clash) {
        int from = clash.numberAt("from").orElse(plate.from());
        int to = clash.numberAt("to").orElse(from);
        return new Area(row, row, held(plate, from - plate.from()), held(plate, to - plate.from()));
    }

    private static int held(Plate plate, int index) {
        return Math.max(0, Math.min(plate.positions() - 1, index));
    }

    /** Where a row that one took out was changed by the other, wherever it lies. */
    private static Optional<Area> changed(Plate plate, Clash clash) {
        return RowChange.of(clash).filter(c -> c.to() < plate.positions()).map(c -> new Area(0, 0, c.from(), c.to()));
    }

    private static Area wholeRow(Plate plate, int row) {
        String cells = plate.rows().get(row).cells();
        int from = 0;
        int to = cells.length() - 1;
        while (from < to && cells.charAt(from) == Row.EMPTY) {
            from++;
        }
        while (to > from && cells.charAt(to) == Row.EMPTY) {
            to--;
        }
        return from == to && cells.charAt(from) == Row.EMPTY
                ? new Area(row, row, 0, cells.length() - 1)
                : new Area(row, row, from, to);
    }

    private static Area pleat(Plate plate, int row, Clash clash) {
        int pleat = clash.numberAt("pleat")
                .or(() -> clash.textAt("pleat")
                        .map(t -> t.split(" ")[0])
                        .filter(t -> t.matches("-?\\d{1,6}"))
                        .map(Integer::valueOf))
                .orElse(plate.from());
        int index = held(plate, pleat - plate.from());
        return new Area(row, row, index, index);
    }

    private static Optional<Area> run(Plate plate, Plate joined, Clash clash) {
        Optional<Area> all = clash.sides().stream()
                .flatMap(side -> ids(side.value()))
                .map(plate::indexOf)
                .filter(r -> r >= 0)
                .map(r -> wholeRow(plate, r))
                .reduce(Area::and);
        return all.or(() -> clash.textAt("after")
                .filter(RowId::isRowId)
                .map(id -> joined.indexOf(new RowId(id)))
                .flatMap(r -> near(plate, joined, r))
                .or(() -> Optional.of(0))
                .map(r -> wholeRow(plate, r)));
    }

    /** The ids of the rows that a value of a clash of rows lists. */
    static Stream<RowId> ids(Value value) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of();
        return items.stream()
                .filter(Value.Text.class::isInstance)
                .map(v -> ((Value.Text) v).string())
                .filter(text -> text.indexOf(' ') == 4 && RowId.isRowId(text.substring(0, 4)))
                .map(text -> new RowId(text.substring(0, 4)));
    }

    private static Area end(Plate plate, Clash clash) {
        boolean left = clash.textAt("end").equals(Optional.of("from"));
        int at = left ? 0 : plate.positions() - 1;
        return new Area(0, plate.rows().size() - 1, at, at);
    }

    private static Optional<Area> remark(Plate plate, Clash clash) {
        return plate.remarks().stream()
                .filter(r -> clash.textAt("id").equals(Optional.of(r.id().text())))
                .findFirst()
                .flatMap(r -> r.row()
                        .map(plate::indexOf)
                        .filter(at -> at >= 0)
                        .map(at -> new Area(
                                at,
                                at,
                                held(plate, r.from().orElse(plate.from()) - plate.from()),
                                held(plate, r.to().orElse(plate.from() + plate.positions()) - plate.from()))));
    }

    /** Where a settled change lies in a plate. */
    static Optional<Area> of(Plate plate, Reversal reversal) {
        Function<Place, Optional<Area>> area = place -> {
            Plate of = place.side() == Side.BEFORE ? reversal.base() : reversal.side();
            return Optional.of(place.row())
                    .filter(r -> r < of.rows().size())
                    .flatMap(r -> near(plate, of, r))
                    .map(r -> new Area(
                            r, r, held(plate, place.from() - plate.from()), held(plate, place.to() - plate.from())));
        };
        if (plate.rows().isEmpty() || plate.positions() == 0) {
            return Optional.empty();
        }
        return reversal.places().stream().map(area).flatMap(Optional::stream).reduce(Area::and);
    }
}
