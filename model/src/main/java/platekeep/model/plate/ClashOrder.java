package platekeep.model.plate;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The order in which clashes are listed: by what they are about, then as rows run from the top, then by position, then
 * by key. A row is named by its id or by its number from the bottom; a geometric line lies by its gathering row, which is
 * counted from the top.
 */
final class ClashOrder implements Comparator<Clash> {
    private final Map<String, Integer> indexById = new HashMap<>();
    private final int rowCount;
    private final Comparator<Clash> order = Comparator.comparing(Clash::what)
            .thenComparingDouble(this::row)
            .thenComparingDouble(ClashOrder::position)
            .thenComparing(clash -> clash.place().text(), CodePoints.ORDER)
            .thenComparing(clash -> clash.value().text(), CodePoints.ORDER);

    /** The order in a plate with these rows, top row first. */
    ClashOrder(List<Row> rows) {
        rowCount = rows.size();
        for (int i = 0; i < rowCount; i++) {
            int index = i;
            rows.get(i).id().ifPresent(id -> indexById.putIfAbsent(id.text(), index));
        }
    }

    @Override
    public int compare(Clash a, Clash b) {
        return order.compare(a, b);
    }

    /** How far down the row lies: -1 above the top row, after all others what is on no row. */
    private double row(Clash clash) {
        String key = clash.what() == Clash.What.ROWS ? "after" : "row";
        Optional<Value> named = clash.at(key);
        if (clash.what() == Clash.What.LINE) {
            return clash.textAt("on").flatMap(GatheringRow::place).orElse(Double.MAX_VALUE);
        }
        if (named.filter(Value.NOTHING::equals).isPresent()) {
            return -1;
        }
        Optional<Integer> fromBottom = clash.numberAt(key);
        return fromBottom
                .map(number -> rowCount - number)
                .orElseGet(() -> clash.textAt(key).map(indexById::get).orElse(rowCount));
    }

    private static double position(Clash clash) {
        Optional<Integer> number = clash.numberAt("from").or(() -> clash.numberAt("pleat"));
        return number.map(Integer::doubleValue)
                .or(() -> clash.textAt("pleat").filter(Pleat::isPleat).map(Pleat::place))
                .orElse(0.0);
    }
}
