package platekeep.client.compare.chart;

import java.util.Optional;
import platekeep.model.compare.Side;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Says in words what lies at a place of two charts, on both sides. */
public final class PlaceInWords {
    private PlaceInWords() {}

    /**
     * What lies at a place.
     *
     * @param side the chart that is pointed at
     * @param pleat in pleats from the frame's left edge
     * @param at in lines
     * @return empty beside the charts
     */
    public static Optional<String> of(PairedPlates plates, Side side, double pleat, double at) {
        int index = (int) Math.floor(at);
        if (index < 0 || index >= plates.lines().size()) {
            return Optional.empty();
        }
        Line line = plates.lines().line(index);
        Side there = line.row(side) == Line.NONE ? other(side) : side;
        Drawing drawing = plates.drawing(there);
        int row = line.row(there);
        return drawing.at(pleat - plates.offset(there), row + at - index).map(spot -> words(plates, line, there, spot));
    }

    private static Side other(Side side) {
        return side == Side.BEFORE ? Side.AFTER : Side.BEFORE;
    }

    private static String words(PairedPlates plates, Line line, Side side, Spot spot) {
        int position = plates.plate(side).from() + spot.index();
        String where = ", pleats " + position + " and " + (position + 1) + ": ";
        if (line.before() == Line.NONE) {
            return rowIs(plates, line) + where + colour(plates.plate(Side.AFTER), line.after(), position);
        }
        if (line.after() == Line.NONE) {
            String fate = line.fate() == Line.Fate.LEFT ? " (moved away)" : " (removed)";
            return "Row " + plates.plate(Side.BEFORE).numberFromBottom(line.before()) + " as it was" + fate + where
                    + colour(plates.plate(Side.BEFORE), line.before(), position);
        }
        String is = colour(plates.plate(Side.AFTER), line.after(), position);
        String was = colour(plates.plate(Side.BEFORE), line.before(), position);
        return rowIs(plates, line) + where + (is.equals(was) ? is : is + ", before " + was);
    }

    private static String rowIs(PairedPlates plates, Line line) {
        int number = plates.plate(Side.AFTER).numberFromBottom(line.after());
        String row = "Row " + number;
        return switch (line.fate()) {
            case ADDED -> row + " (added)";
            case CAME -> row + " (moved here)";
            default ->
                line.before() == Line.NONE || plates.plate(Side.BEFORE).numberFromBottom(line.before()) == number
                        ? row
                        : row + " (row " + plates.plate(Side.BEFORE).numberFromBottom(line.before()) + " before)";
        };
    }

    private static String colour(Plate plate, int row, int position) {
        char key = plate.cellAt(row, position);
        return key == Row.EMPTY
                ? "no cable"
                : plate.palette().get(key).map(Colour::name).orElse("a colour that is not in the palette");
    }
}
