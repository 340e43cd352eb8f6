package platekeep.client.plate.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.Unknown;

/** Single stitches on top of the picture: put on, moved, taken off. One lies in the valley that a cable spans. */
public final class MarkEdits {
    /** The stitches that a plate knows. */
    public static final List<String> STITCHES =
            List.of("french knot", "bullion", "bullion flower", "lazy daisy", "satin bar");

    private MarkEdits() {}

    /** The stitch that lies over the cable at a spot. */
    public static Optional<Mark> at(Plate plate, Spot spot) {
        double middle = plate.from() + spot.index() + 0.5;
        return plate.marks().stream()
                .filter(mark -> plate.indexOf(mark.row()) == spot.row() && Math.abs(mark.place() - middle) <= 0.5)
                .findFirst();
    }

    public static Plate add(Plate plate, Spot spot, String stitch, char colour) {
        List<Mark> marks = new ArrayList<>(plate.marks());
        plate.rows()
                .get(spot.row())
                .id()
                .ifPresent(row -> marks.add(new Mark(stitch, row, place(plate, spot), colour, Unknown.NONE)));
        return plate.edit().marks(marks).build();
    }

    public static Plate move(Plate plate, Mark mark, Spot spot) {
        List<Mark> marks = new ArrayList<>(plate.marks());
        marks.remove(mark);
        plate.rows().get(spot.row()).id().ifPresent(row -> marks.add(mark.at(row, place(plate, spot))));
        return plate.edit().marks(marks).build();
    }

    public static Plate remove(Plate plate, Mark mark) {
        List<Mark> marks = new ArrayList<>(plate.marks());
        marks.remove(mark);
        return plate.edit().marks(marks).build();
    }

    private static String place(Plate plate, Spot spot) {
        return Pleat.text(plate.from() + spot.index() + 0.5);
    }
}
