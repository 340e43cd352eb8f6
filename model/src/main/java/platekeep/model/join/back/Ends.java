package platekeep.model.join.back;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** How far the chart goes at one end. An end that would cut cables off stays. */
enum Ends implements Fact {
    LEFT,
    RIGHT;

    private int end(Pleats pleats) {
        return this == LEFT ? pleats.from() : pleats.to();
    }

    @Override
    public boolean same(Plate one, Plate other) {
        return one.pleats().map(this::end).equals(other.pleats().map(this::end));
    }

    @Override
    public Plate copy(Plate now, Plate from) {
        Optional<Pleats> was = now.pleats();
        if (was.isEmpty() || from.pleats().isEmpty()) {
            return now;
        }
        int end = end(from.pleats().get());
        int left = this == LEFT ? end : was.get().from();
        int right = this == RIGHT ? end : was.get().to();
        if (right - left < 1 || right - left > Pleats.MOST_POSITIONS || cutsOff(now, left, right)) {
            return now;
        }
        List<Row> rows = now.rows().stream()
                .map(row -> row.withCells(fitted(row.cells(), was.get(), left, right)))
                .toList();
        return now.edit()
                .pleats(was.map(p -> p.withEnds(left, right)))
                .rows(rows)
                .build();
    }

    private static boolean cutsOff(Plate plate, int left, int right) {
        Pleats pleats = plate.pleats().orElseThrow();
        for (Row row : plate.rows()) {
            for (int p = pleats.from(); p < pleats.to(); p++) {
                boolean isOutside = p < left || p >= right;
                if (isOutside && row.cells().charAt(pleats.index(p)) != Row.EMPTY) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String fitted(String cells, Pleats was, int left, int right) {
        StringBuilder out = new StringBuilder();
        for (int p = left; p < right; p++) {
            out.append(was.hasPosition(p) ? cells.charAt(was.index(p)) : Row.EMPTY);
        }
        return out.toString();
    }
}
