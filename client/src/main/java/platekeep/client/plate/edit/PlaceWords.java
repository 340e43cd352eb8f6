package platekeep.client.plate.edit;

import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;

/**
 * What lies at a place, in words: row from the bottom, pleats as the chart has them, up or down, colour, and what the
 * cable meets (an up cable the down cable above it, a down cable the up cable below it: common practice, no source).
 */
public final class PlaceWords {

    private PlaceWords() {}

    /** The cable there, the single stitch on it, and what was remarked and is still open. */
    public static String of(Drawing drawing, Spot spot) {
        Plate plate = drawing.plate();
        String stitch = MarkEdits.at(plate, spot)
                .map(mark -> "; " + mark.stitch() + " on it")
                .orElse("");
        String remarks = plate.remarks().stream()
                .filter(remark -> !remark.done() && isAbout(plate, remark, spot))
                .map(remark -> "; " + remark.by() + ": " + remark.text())
                .collect(Collectors.joining());
        return cable(drawing, spot) + stitch + remarks;
    }

    private static boolean isAbout(Plate plate, Remark remark, Spot spot) {
        int position = plate.from() + spot.index();
        return remark.row().filter(row -> plate.indexOf(row) == spot.row()).isPresent()
                && remark.from().filter(from -> from <= position).isPresent()
                && remark.to().or(remark::from).filter(to -> to >= position).isPresent();
    }

    private static String cable(Drawing drawing, Spot spot) {
        Plate plate = drawing.plate();
        int position = plate.from() + spot.index();
        String where = "row " + plate.numberFromBottom(spot.row()) + ", pleats " + position + " and " + (position + 1);
        char cell = plate.cellAt(spot.row(), position);
        if (cell == Row.EMPTY) {
            return where + ": no cable";
        }
        boolean up = drawing.kind(spot.row(), spot.index()) == CableKind.UP;
        return where + ": " + (up ? "up" : "down") + " cable, " + name(plate, cell) + "; " + meets(drawing, spot, up);
    }

    private static String meets(Drawing drawing, Spot spot, boolean up) {
        String side = up ? "above" : "below";
        Spot other = spot.moved(up ? -1 : 1, 0);
        Plate plate = drawing.plate();
        char cell = plate.cellAt(other.row(), plate.from() + other.index());
        boolean meets =
                cell != Row.EMPTY && drawing.kind(other.row(), other.index()) != drawing.kind(spot.row(), spot.index());
        return meets ? "meets " + name(plate, cell) + " " + side : "meets nothing " + side;
    }

    private static String name(Plate plate, char key) {
        Optional<Colour> colour = plate.palette().get(key);
        return colour.map(Colour::name).orElse("an unknown colour");
    }
}
