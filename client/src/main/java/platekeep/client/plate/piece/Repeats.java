package platekeep.client.plate.piece;

import java.util.Optional;
import platekeep.client.plate.edit.PleatEdits;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Unknown;

/** One picture again and again across the pleats: a piece with gaps between, and a chart that is one repeat of a strip. */
public final class Repeats {
    private Repeats() {}

    /**
     * How many of a piece there can be beside each other, itself the first, to the right end of the chart.
     *
     * @param gap pleats between two of them
     */
    public static int room(Plate plate, Area area, int gap) {
        return 1 + Math.max(0, plate.positions() - 1 - area.right()) / every(area, gap);
    }

    /** Pleats from one to the next: a figure 24 pleats wide with 12 between comes every 36 (common practice, no source). */
    private static int every(Area area, int gap) {
        return area.width() + 1 + gap;
    }

    /**
     * Puts copies of what lies in an area to its right.
     *
     * @param times how many there are to be in all; no more than {@link #room}
     * @return empty where nothing lies in the area
     */
    public static Optional<Putting.Put> across(Plate plate, Area area, int gap, int times) {
        return Piece.of(plate, area).map(piece -> {
            Area cables = area.boxOfCables(plate);
            Putting.Put put = new Putting.Put(plate, 0);
            for (int n = 1; n < times; n++) {
                Spot corner = new Spot(cables.top(), cables.left() + n * every(cables, gap));
                Putting.Put next =
                        Putting.down(piece.copy(), put.plate(), corner).orElseThrow();
                put = new Putting.Put(next.plate(), put.turned() + next.turned());
            }
            return put;
        });
    }

    /** Says that the chart is one repeat of a strip. */
    public static Plate said(Plate plate, int every, int times) {
        Unknown unknown = plate.repeat().map(Repeat::unknown).orElse(Unknown.NONE);
        return plate.edit()
                .repeat(Optional.of(new Repeat(every, times, unknown)))
                .build();
    }

    /**
     * Works the repeats of a chart out in cables: the chart becomes as wide as all of them, and is one repeat no longer.
     *
     * @return empty where it would be wider than a chart can be
     */
    public static Optional<Plate> workedOut(Plate plate) {
        Repeat repeat = plate.repeat().orElseThrow();
        long more = (long) repeat.every() * (repeat.times() - 1);
        if (more > Integer.MAX_VALUE / 2) {
            return Optional.empty();
        }
        Optional<Piece> piece = Area.whole(plate).flatMap(area -> Piece.of(plate, area));
        Spot corner = Area.whole(plate)
                .map(a -> a.boxOfCables(plate))
                .map(a -> new Spot(a.top(), a.left()))
                .orElse(new Spot(0, 0));
        return PleatEdits.widen(plate, 0, (int) more)
                .map(wide -> wide.edit().repeat(Optional.empty()).build())
                .map(wide -> piece.map(p -> put(p, wide, corner, repeat)).orElse(wide));
    }

    private static Plate put(Piece piece, Plate wide, Spot corner, Repeat repeat) {
        Plate put = wide;
        for (int n = 1; n < repeat.times(); n++) {
            put = Putting.down(piece.copy(), put, corner.moved(0, n * repeat.every()))
                    .orElseThrow()
                    .plate();
        }
        return put;
    }
}
