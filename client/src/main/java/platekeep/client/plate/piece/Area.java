package platekeep.client.plate.piece;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
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
    private Plate rimOn;
    private Optional<Area> rim = Optional.empty();

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

    /** Some places of a rectangle, counted row by row from its corner; not changed afterwards. */
    static Area of(Spot corner, int height, int width, BitSet places) {
        return new Area(corner.row(), corner.index(), height, width, places);
    }

    /** Some spots; empty where there are none. */
    public static Optional<Area> of(Collection<Spot> spots) {
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        int top = spots.stream().mapToInt(Spot::row).min().orElseThrow();
        int left = spots.stream().mapToInt(Spot::index).min().orElseThrow();
        int height = spots.stream().mapToInt(Spot::row).max().orElseThrow() - top + 1;
        int width = spots.stream().mapToInt(Spot::index).max().orElseThrow() - left + 1;
        BitSet places = new BitSet(height * width);
        spots.forEach(spot -> places.set((spot.row() - top) * width + spot.index() - left));
        return Optional.of(new Area(top, left, height, width, places));
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
        return figures.figureAt(spot.row(), plate.from() + spot.index())
                .map(f ->
                        new Area(f.top(), f.from() - plate.from(), f.rows(), f.to() - f.from() + 1, figures.cells(f)));
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
        return has(spot.row(), spot.index());
    }

    boolean has(int row, int index) {
        int r = row - top;
        int i = index - left;
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

    /**
     * The next of its places in a row.
     *
     * @param index not left of its left end
     * @return a position not left of the index; -1 where there is none
     */
    int next(int row, int index) {
        int end = (row - top + 1) * width;
        int from = end - width + index - left;
        int at = from < end ? places.nextSetBit(from) : -1;
        return at < 0 || at >= end ? -1 : index + at - from;
    }

    /**
     * The outermost of its cables on a plate: those that lack one of the four beside them; empty where no cable lies in
     * it. Costs little when asked again of the same plate.
     */
    public Optional<Area> rim(Plate plate) {
        if (plate != rimOn) {
            rimOn = plate;
            rim = cables(plate).map(Area::rim);
        }
        return rim;
    }

    private Area rim() {
        BitSet outer = new BitSet(places.length());
        for (int r = 0; r < height; r++) {
            BitSet inner = row(r);
            inner.and(row(r - 1));
            inner.and(row(r + 1));
            int end = (r + 1) * width;
            int from = places.nextSetBit(r * width);
            while (from >= 0 && from < end) {
                int to = Math.min(end, places.nextClearBit(from));
                outer.set(from);
                outer.set(to - 1);
                int begin = r * width;
                for (int at = inner.nextClearBit(from - begin); at < to - begin; at = inner.nextClearBit(at + 1)) {
                    outer.set(begin + at);
                }
                from = places.nextSetBit(to);
            }
        }
        return new Area(top, left, height, width, outer);
    }

    /** The places of one of its rows; none above and below. */
    private BitSet row(int r) {
        return r < 0 || r >= height ? new BitSet() : places.get(r * width, (r + 1) * width);
    }

    /** Tells a listener of each of its places in some rows and positions, all included, from the top, then the left. */
    public void each(int[] rows, int[] positions, Each each) {
        for (int row = Math.max(top, rows[0]); row <= Math.min(bottom(), rows[1]); row++) {
            int last = Math.min(right(), positions[1]);
            int i = next(row, Math.max(left, positions[0]));
            while (i >= 0 && i <= last) {
                each.at(row, i);
                i = next(row, i + 1);
            }
        }
    }

    /** Hears of places. */
    public interface Each {
        void at(int row, int index);
    }

    /** How many places it has. */
    public int size() {
        return places.cardinality();
    }

    /** The box around the cables that lie in it; the area itself where none does. */
    public Area boxOfCables(Plate plate) {
        return cables(plate)
                .map(c -> between(new Spot(c.top, c.left), new Spot(c.bottom(), c.right())))
                .orElse(this);
    }

    /** Those of its places at which a cable lies; empty where none does. Linear in its places. */
    public Optional<Area> cables(Plate plate) {
        int[] box = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
        BitSet found = (BitSet) places.clone();
        for (int r = 0; r < height; r++) {
            int row = top + r;
            boolean isOnChart = row >= 0 && row < plate.rows().size();
            String cells = isOnChart ? plate.rows().get(row).cells() : "";
            int begin = r * width - left;
            int end = (r + 1) * width;
            for (int at = places.nextSetBit(r * width); at >= 0 && at < end; at = places.nextSetBit(at + 1)) {
                int index = at - begin;
                if (index < 0 || index >= cells.length() || cells.charAt(index) == Row.EMPTY) {
                    found.clear(at);
                } else {
                    box[0] = Math.min(box[0], row);
                    box[1] = row;
                    box[2] = Math.min(box[2], index);
                    box[3] = Math.max(box[3], index);
                }
            }
        }
        return box[1] < 0 ? Optional.empty() : Optional.of(new Area(top, left, height, width, found).cut(box));
    }

    /** What lies between two rows and two positions, all included. */
    private Area cut(int[] box) {
        int newHeight = box[1] - box[0] + 1;
        int newWidth = box[3] - box[2] + 1;
        if (newHeight == height && newWidth == width) {
            return this;
        }
        BitSet kept = new BitSet(newHeight * newWidth);
        for (int r = 0; r < newHeight; r++) {
            int begin = (box[0] - top + r) * width + box[2] - left;
            for (int at = places.nextSetBit(begin); at >= 0 && at < begin + newWidth; at = places.nextSetBit(at + 1)) {
                kept.set(r * newWidth + at - begin);
            }
        }
        return new Area(box[0], box[2], newHeight, newWidth, kept);
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
            for (int r = area.top; r <= area.bottom(); r++) {
                for (int i = area.left; i <= area.right(); i++) {
                    if (area.has(r, i)) {
                        both.set((r - newTop) * newWidth + i - newLeft);
                    }
                }
            }
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
