package platekeep.model.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Where on the chart a start, a single stitch or a remark lies; everything else lies nowhere. */
final class ThingPlaces {
    private final Map<Side, Plate> plates;
    private final Map<Side, Map<RowId, Integer>> rows = new HashMap<>();

    ThingPlaces(Plate before, Plate after) {
        plates = Map.of(Side.BEFORE, before, Side.AFTER, after);
    }

    /** The places of a thing of one of the plates. */
    List<Place> of(Side side, Object thing) {
        if (thing instanceof Start start) {
            return at(side, start.row(), start.pleat(), start.pleat());
        }
        if (thing instanceof Mark mark) {
            int left = (int) Math.ceil(mark.place()) - 1;
            return at(side, mark.row(), left, (int) Math.floor(mark.place()));
        }
        if (thing instanceof Remark remark && remark.row().isPresent()) {
            Plate plate = plates.get(side);
            int first = remark.from().orElse(plate.from());
            return at(
                    side,
                    remark.row().get(),
                    first,
                    remark.to().orElse(remark.from().orElse(plate.from() + plate.positions() - 1)));
        }
        return List.of();
    }

    private List<Place> at(Side side, RowId row, int from, int to) {
        return Optional.ofNullable(rowsOf(side).get(row))
                .map(index -> List.of(new Place(side, index, from, to)))
                .orElse(List.of());
    }

    private Map<RowId, Integer> rowsOf(Side side) {
        return rows.computeIfAbsent(side, s -> {
            Map<RowId, Integer> indexes = new HashMap<>();
            List<Row> all = plates.get(s).rows();
            for (int i = all.size() - 1; i >= 0; i--) {
                int index = i;
                all.get(i).id().ifPresent(id -> indexes.put(id, index));
            }
            return indexes;
        });
    }
}
