package platekeep.client.plate.piece;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Figure;
import platekeep.model.stitch.Figures;

/**
 * Places that were chosen on a chart: a rectangle, or the cables of a figure. Rows are counted from the top, positions
 * from the chart's left end, both from 0. Never empty; may reach beyond the chart, as when it was moved.
 */
public final class Area {
    private final int top;
    private final int left;
    private final int height;
    private final int width;
    private final BitSet places;

    private Area(int top, int left, int height, int width, BitSet places) {
        this.top = top;
        this.left = left;
        this.height = height;
        this.width = width;
        this.places = places;
    }

    /** The rectangle between two corners, both included. */
    public static Area between(Spot one, Spot other) {
        int top = Math.min(one.row(), other.row());
        int left = Math.min(one.index(), other.index());
        int height = Math.abs(one.row() - other.row()) + 1;
        int width = Math.abs(one.index() - other.index()) + 1;
        BitSet all = new BitSet(height * width);
        all.set(0, height * width);
        return new Area(top, left, height, width, all);
    }

    /** Some places of a rectangle, counted row by row from its corner. */
    static Area of(Spot corner, int height, int width, BitSet places) {
        return new Area(corner.row(), corner.index(), height, width, places);
    }

    /** The whole chart; empty where a plate has none. */
    public static Optional<Area> whole(Plate plate) {
        return plate.rows().isEmpty()
                ? Optional.empty()
                : Optional.of(between(new Spot(0, 0), new Spot(plate.rows().size() - 1, plate.positions() - 1)));
    }

    /** The cables of the figure at a spot; empty where no cable lies. Linear in the cells of the chart. */
    public static Optional<Area> figure(Plate plate, Spot spot) {
        Figures figures = Figures.of(plate);
        return figures.figureAt(spot.row(), plate.from() + spot.index()).map(f -> of(figures, f, plate.from()));
    }

    private static Area of(Figures figures, Figure figure, int from) {
        int height = figure.rows();
        int width = figure.to() - figure.from() + 1;
        BitSet places = new BitSet(height * width);
        for (int r = 0; r < height; r++) {
            for (int i = 0; i < width; i++) {
                places.set(r * width + i, figures.at(figure.top() + r, figure.from() + i) == figure.number());
            }
        }
        return new Area(figure.top(), figure.from() - from, height, width, places);
    }

    public int top() {
        return top;
    }

    /** The lowest row, included. */
    public int bottom() {
        return top + height - 1;
    }

    public int left() {
        return left;
    }

    /** The rightmost position, included. */
    public int right() {
        return left + width - 1;
    }

    public int height() {
        return height;
    }

    /** How many positions it is wide. */
    public int width() {
        return width;
    }

    /** Whether it is a rectangle without gaps. */
    public boolean isRectangle() {
        return places.cardinality() == height * width;
    }

    public boolean has(Spot spot) {
        int r = spot.row() - top;
        int i = spot.index() - left;
        return r >= 0 && r < height && i >= 0 && i < width && places.get(r * width + i);
    }

    /** All its places, from the top, then from the left. */
    public List<Spot> spots() {
        List<Spot> spots = new ArrayList<>(places.cardinality());
        for (int at = places.nextSetBit(0); at >= 0; at = places.nextSetBit(at + 1)) {
            spots.add(new Spot(top + at / width, left + at % width));
        }
        return spots;
    }

    /** The box around the cables that lie in it; the area itself where none does. */
    public Area boxOfCables(Plate plate) {
        List<Spot> cables = cables(plate);
        if (cables.isEmpty()) {
            return this;
        }
        int[] rows = cables.stream().mapToInt(Spot::row).toArray();
        int[] places = cables.stream().mapToInt(Spot::index).sorted().toArray();
        return between(new Spot(rows[0], places[0]), new Spot(rows[rows.length - 1], places[places.length - 1]));
    }

    /** Its places at which a cable lies. */
    public List<Spot> cables(Plate plate) {
        return spots().stream()
                .filter(s -> plate.cellAt(s.row(), plate.from() + s.index()) != Row.EMPTY)
                .toList();
    }

    public Area moved(int rows, int positions) {
        return new Area(top + rows, left + positions, height, width, places);
    }

    /** This and another one together. */
    public Area with(Area other) {
        int newTop = Math.min(top, other.top);
        int newLeft = Math.min(left, other.left);
        int newHeight = Math.max(bottom(), other.bottom()) - newTop + 1;
        int newWidth = Math.max(right(), other.right()) - newLeft + 1;
        BitSet both = new BitSet(newHeight * newWidth);
        for (Area area : List.of(this, other)) {
            area.spots().forEach(s -> both.set((s.row() - newTop) * newWidth + s.index() - newLeft));
        }
        return new Area(newTop, newLeft, newHeight, newWidth, both);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Area a
                && top == a.top
                && left == a.left
                && height == a.height
                && width == a.width
                && places.equals(a.places);
    }

    @Override
    public int hashCode() {
        return Objects.hash(top, left, height, width, places);
    }

    @Override
    public String toString() {
        return "rows " + top + " to " + bottom() + ", places " + left + " to " + right();
    }
}
