package platekeep.model.join;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;
import platekeep.model.stitch.KeptKinds;

/**
 * Decides open clashes, one at a time. Each decision gives a plate without that clash; the plate that was given stays as
 * it is, so going back is keeping it.
 */
public final class Settling {

    private Settling() {}

    /** The clash is settled by what stands: it goes, and nothing else changes. */
    public static Plate keep(Plate plate, Clash clash) {
        List<Clash> left = new ArrayList<>(plate.clashes());
        left.remove(clash);
        return plate.edit().clashes(left).build();
    }

    /**
     * The clash is settled by a value: one of its sides', its base, or any other that fits its kind.
     *
     * @param value as the clash's sides have it; {@link Value#NOTHING} takes the thing away
     * @throws IllegalArgumentException when the value does not fit
     */
    public static Plate choose(Plate plate, Clash clash, Value value) {
        Plate settled = keep(plate, clash);
        Plate chosen = put(settled, clash, value);
        boolean drawn = !chosen.rows().equals(plate.rows());
        return drawn && hasAllIds(plate) && hasAllIds(chosen) ? KeptKinds.after(plate, chosen) : chosen;
    }

    /** The plate with a value in the clash's place, its clashes left alone. */
    static Plate put(Plate plate, Clash clash, Value value) {
        return switch (clash.what()) {
            case CABLES -> cables(plate, clash, value);
            case ROW, TWINS -> wholeRow(plate, clash, value);
            case ROWS -> runOfRows(plate, clash, value);
            case ORDER -> order(plate, clash, value);
            case PLEATS -> pleats(plate, clash, value);
            case FIELD -> SettledFields.field(plate, clash.textAt("field").orElse(""), value);
            case COLOUR ->
                SettledFields.colour(plate, clash.textAt("key").orElse(" ").charAt(0), value);
            case FIGURE -> SettledFigures.moved(plate, clash, value);
            default -> SettledFields.thing(plate, clash, value);
        };
    }

    private static boolean hasAllIds(Plate plate) {
        return plate.rows().stream().allMatch(row -> row.id().isPresent());
    }

    /** The index of the row that a clash names by id or by its number from the bottom; -1 when it is gone. */
    public static int row(Plate plate, Clash clash) {
        return clash.textAt("row")
                .filter(RowId::isRowId)
                .map(id -> plate.indexOf(new RowId(id)))
                .or(() -> clash.numberAt("row").map(n -> plate.rows().size() - n))
                .filter(r -> r < plate.rows().size())
                .orElse(-1);
    }

    static String text(Value value) {
        if (value instanceof Value.Text t) {
            return t.string();
        }
        throw new IllegalArgumentException("a text is wanted here, not " + value.text());
    }

    private static Plate withRow(Plate plate, int row, String cells) {
        if (cells.length() != plate.positions()) {
            throw new IllegalArgumentException("a row of this plate has " + plate.positions() + " cables");
        }
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.set(row, rows.get(row).withCells(cells));
        return plate.edit().rows(rows).build();
    }

    private static Plate cables(Plate plate, Clash clash, Value value) {
        int row = row(plate, clash);
        if (row < 0) {
            return plate;
        }
        String chosen = text(value);
        int from = clash.numberAt("from").orElse(0) - plate.from();
        String cells = plate.rows().get(row).cells();
        return withRow(plate, row, cells.substring(0, from) + chosen + cells.substring(from + chosen.length()));
    }

    private static Plate wholeRow(Plate plate, Clash clash, Value value) {
        int row = row(plate, clash);
        if (row < 0) {
            return plate;
        }
        return value.equals(Value.NOTHING) ? withoutRows(plate, Set.of(row)) : withRow(plate, row, text(value));
    }

    /** What lies on a row that goes, goes with it. */
    private static Plate withoutRows(Plate plate, Set<Integer> gone) {
        List<Row> rows = new ArrayList<>();
        Set<RowId> ids = new HashSet<>();
        for (int r = 0; r < plate.rows().size(); r++) {
            if (gone.contains(r)) {
                plate.rows().get(r).id().ifPresent(ids::add);
            } else {
                rows.add(plate.rows().get(r));
            }
        }
        return plate.edit()
                .rows(rows)
                .marks(plate.marks().stream()
                        .filter(m -> !ids.contains(m.row()))
                        .toList())
                .remarks(plate.remarks().stream()
                        .filter(m -> m.row().isEmpty() || !ids.contains(m.row().get()))
                        .toList())
                .clashes(plate.clashes().stream()
                        .filter(c -> c.textAt("row")
                                .filter(t -> RowId.isRowId(t) && ids.contains(new RowId(t)))
                                .isEmpty())
                        .toList())
                .build();
    }

    /** Of the rows that both sides put in, those of one run stay; nothing: none; all rows of both: both. */
    private static Plate runOfRows(Plate plate, Clash clash, Value value) {
        List<String> kept = texts(value);
        Set<Integer> gone = new HashSet<>();
        for (Clash.Side side : clash.sides()) {
            for (String row : texts(side.value())) {
                if (!kept.contains(row)) {
                    find(plate, row, gone).ifPresent(gone::add);
                }
            }
        }
        return gone.isEmpty() ? plate : withoutRows(plate, gone);
    }

    private static List<String> texts(Value value) {
        return value instanceof Value.Items items
                ? items.items().stream().map(Settling::text).toList()
                : List.of();
    }

    private static Optional<Integer> find(Plate plate, String rowText, Set<Integer> taken) {
        String id = rowText.contains(" ") ? rowText.substring(0, rowText.indexOf(' ')) : "";
        for (int r = 0; r < plate.rows().size(); r++) {
            Row row = plate.rows().get(r);
            boolean same = id.isEmpty()
                    ? row.text().equals(rowText)
                    : row.id().filter(i -> i.text().equals(id)).isPresent();
            if (same && !taken.contains(r)) {
                return Optional.of(r);
            }
        }
        return Optional.empty();
    }

    private static Plate order(Plate plate, Clash clash, Value value) {
        int row = row(plate, clash);
        if (row < 0) {
            return plate;
        }
        List<Row> rows = new ArrayList<>(plate.rows());
        Row moved = rows.remove(row);
        int at = 0;
        if (value instanceof Value.Text above) {
            for (int r = 0; r < rows.size(); r++) {
                at = rows.get(r)
                                .id()
                                .filter(id -> id.text().equals(above.string()))
                                .isPresent()
                        ? r + 1
                        : at;
            }
        }
        rows.add(at, moved);
        return plate.edit().rows(rows).build();
    }

    private static Plate pleats(Plate plate, Clash clash, Value value) {
        if (!(value instanceof Value.Num number) || plate.pleats().isEmpty()) {
            return plate;
        }
        int end = number.number().intValueExact();
        Pleats was = plate.pleats().get();
        Pleats now = clash.textAt("end").equals(Optional.of("from"))
                ? was.withEnds(end, was.to())
                : was.withEnds(was.from(), end);
        List<Row> rows = plate.rows().stream()
                .map(row -> row.withCells(fitted(row.cells(), was, now)))
                .toList();
        return plate.edit().pleats(Optional.of(now)).rows(rows).build();
    }

    private static String fitted(String cells, Pleats was, Pleats now) {
        StringBuilder out = new StringBuilder();
        for (int p = now.from(); p < now.to(); p++) {
            out.append(was.hasPosition(p) ? cells.charAt(was.index(p)) : Row.EMPTY);
        }
        return out.toString();
    }

    /** All rows of both sides: the answer "both" to a clash of rows put in at one place. */
    public static Value bothRuns(Clash clash) {
        List<Value> all = new ArrayList<>();
        for (Clash.Side side : clash.sides()) {
            if (side.value() instanceof Value.Items items) {
                all.addAll(items.items());
            }
        }
        return new Value.Items(all);
    }

    static Map<String, Value> entries(Value value) {
        if (value instanceof Value.Entries e) {
            return e.entries();
        }
        throw new IllegalArgumentException("an entry is wanted here, not " + value.text());
    }
}
