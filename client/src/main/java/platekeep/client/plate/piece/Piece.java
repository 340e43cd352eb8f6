package platekeep.client.plate.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.random.RandomGenerator;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.stitch.Figure;
import platekeep.model.stitch.Figures;
import platekeep.model.stitch.Kinds;
import platekeep.model.stitch.RowIds;

/**
 * A part of a picture by itself: its cables with their colours and kinds, the starts and single stitches on them, and
 * what was remarked there. Nothing lies where it has no cable, so that it can be put over others.
 *
 * <p>What mirroring does to a kind is geometry: left to right none, top to bottom every up becomes a down.
 */
public final class Piece {
    private final int height;
    private final int width;
    private final char[] cells;
    private final BitSet up;
    private final BitSet places;
    private final Palette palette;
    private final List<Held<Start>> starts;
    private final List<Held<Mark>> marks;
    private final List<Held<Remark>> remarks;

    /**
     * Something that goes along.
     *
     * @param row counted from the piece's top row
     * @param from its position, or its pleat, from the piece's left end
     * @param to where it ends; as {@code from} for what is at one place
     */
    record Held<T>(T what, int row, double from, double to) {}

    private Piece(int height, int width, char[] cells, BitSet up, Palette palette, Pins pins) {
        this.height = height;
        this.width = width;
        this.cells = cells;
        this.up = up;
        this.places = new BitSet(cells.length);
        for (int at = 0; at < cells.length; at++) {
            if (cells[at] != Row.EMPTY) {
                places.set(at);
            }
        }
        this.palette = palette;
        this.starts = List.copyOf(pins.starts());
        this.marks = List.copyOf(pins.marks());
        this.remarks = List.copyOf(pins.remarks());
    }

    private record Pins(List<Held<Start>> starts, List<Held<Mark>> marks, List<Held<Remark>> remarks) {}

    /**
     * The cables of an area with all that belongs to them; empty where no cable lies in it. A figure that is in the area
     * whole gets a start of its own, where it is the only one.
     */
    public static Optional<Piece> of(Plate plate, Area area) {
        return area.cables(plate).map(cables -> of(plate, Kinds.of(plate), cables));
    }

    /**
     * @param cables an area in which a cable lies everywhere, as small as may be
     */
    static Piece of(Plate plate, Kinds kinds, Area cables) {
        int width = cables.width();
        char[] cells = new char[cables.height() * width];
        Arrays.fill(cells, Row.EMPTY);
        BitSet up = new BitSet(cells.length);
        boolean[] isUp = new boolean[plate.positions()];
        boolean[] isUsed = new boolean[128];
        for (int r = 0; r < cables.height(); r++) {
            String row = plate.rows().get(cables.top() + r).cells();
            kinds.writeUp(cables.top() + r, isUp);
            for (int i = cables.next(cables.top() + r, cables.left());
                    i >= 0;
                    i = cables.next(cables.top() + r, i + 1)) {
                int at = r * width + i - cables.left();
                cells[at] = row.charAt(i);
                isUsed[cells[at] & 127] = true;
                if (isUp[i]) {
                    up.set(at);
                }
            }
        }
        int[] box = {cables.top(), cables.bottom(), cables.left(), cables.right()};
        Pins pins = new PinsOf(plate, cells, box, width).found(kinds, cables.size());
        pins.marks().forEach(held -> isUsed[held.what().colour() & 127] = true);
        TreeMap<Character, Colour> used = new TreeMap<>(plate.palette().entries());
        used.keySet().removeIf(key -> !isUsed[key & 127]);
        return new Piece(cables.height(), width, cells, up, new Palette(used), pins);
    }

    /** What is pinned to the cables that were cut out. */
    private record PinsOf(Plate plate, char[] cells, int[] box, int width) {
        Pins found(Kinds kinds, int cables) {
            List<Held<Start>> starts = new ArrayList<>();
            for (Start start : plate.starts()) {
                int row = plate.indexOf(start.row()) - box[0];
                int at = start.pleat() - plate.from() - box[2];
                if (has(row, at)) {
                    starts.add(new Held<>(asIs(start, kinds, box[0] + row), row, at, at));
                }
            }
            if (starts.isEmpty()) {
                whole(kinds, cables).ifPresent(starts::add);
            }
            return new Pins(starts, marks(), remarks());
        }

        /** A start that another one on its figure overrules says what its cable is. */
        private static Start asIs(Start start, Kinds kinds, int row) {
            return start.at(
                    start.row(), start.pleat(), kinds.at(row, start.pleat()).orElseThrow());
        }

        private Optional<Held<Start>> whole(Kinds kinds, int cables) {
            Figures figures = kinds.figures();
            int number = Figures.NONE;
            for (int at = 0; at < cells.length; at++) {
                boolean begins = cells[at] != Row.EMPTY && (at % width == 0 || cells[at - 1] == Row.EMPTY);
                if (begins) {
                    int here = figures.at(box[0] + at / width, plate.from() + box[2] + at % width);
                    if (number != Figures.NONE && here != number) {
                        return Optional.empty();
                    }
                    number = here;
                }
            }
            Figure figure = figures.get(number);
            return figure.cables() == cables
                    ? plate.rows().get(figure.bottom()).id().map(id -> own(figure, kinds, id))
                    : Optional.empty();
        }

        private Held<Start> own(Figure figure, Kinds kinds, RowId id) {
            int at = figure.first() - plate.from() - box[2];
            return new Held<>(new Start(id, figure.first(), kinds.first(figure)), figure.bottom() - box[0], at, at);
        }

        private List<Held<Mark>> marks() {
            List<Held<Mark>> marks = new ArrayList<>();
            for (Mark mark : plate.marks()) {
                int row = plate.indexOf(mark.row()) - box[0];
                double at = mark.place() - plate.from() - box[2];
                int cable = (int) Math.floor(at);
                if (has(row, cable) || at == cable && has(row, cable - 1)) {
                    marks.add(new Held<>(mark, row, at, at));
                }
            }
            return marks;
        }

        private List<Held<Remark>> remarks() {
            List<Held<Remark>> remarks = new ArrayList<>();
            for (Remark remark : plate.remarks()) {
                if (remark.row().isEmpty() || remark.from().isEmpty()) {
                    continue;
                }
                int row = plate.indexOf(remark.row().get()) - box[0];
                int from = remark.from().get() - plate.from() - box[2];
                int to = remark.to().orElse(remark.from().get()) - plate.from() - box[2];
                boolean touches = false;
                for (int i = Math.max(0, from); i <= Math.min(width - 1, to); i++) {
                    touches |= has(row, i);
                }
                if (touches) {
                    remarks.add(new Held<>(remark, row, from, to));
                }
            }
            return remarks;
        }

        private boolean has(int row, int index) {
            return row >= 0
                    && row <= box[1] - box[0]
                    && index >= 0
                    && index < width
                    && cells[row * width + index] != Row.EMPTY;
        }
    }

    public int height() {
        return height;
    }

    /** How many positions it is wide. */
    public int width() {
        return width;
    }

    /** The colours of its cables and single stitches, by the keys that they had. */
    public Palette palette() {
        return palette;
    }

    char cell(int row, int index) {
        return cells[row * width + index];
    }

    boolean isUp(int row, int index) {
        return up.get(row * width + index);
    }

    CableKind kind(int row, int index) {
        return up.get(row * width + index) ? CableKind.UP : CableKind.DOWN;
    }

    List<Held<Start>> starts() {
        return starts;
    }

    List<Held<Mark>> marks() {
        return marks;
    }

    List<Held<Remark>> remarks() {
        return remarks;
    }

    /** Where its cables lie when its top left corner lies at a spot; may reach beyond the chart. */
    public Area at(Spot corner) {
        return Area.of(corner, height, width, places);
    }

    /** How many cables it has. */
    public int cables() {
        return places.cardinality();
    }

    /** As a copy: what was remarked is said once, and the gathering row of a start is the old place's. */
    public Piece copy() {
        List<Held<Start>> bare = starts.stream()
                .map(h -> new Held<>(bare(h.what()), h.row(), h.from(), h.to()))
                .toList();
        return new Piece(height, width, cells, up, palette, new Pins(bare, marks, List.of()));
    }

    private static Start bare(Start start) {
        return new Start(start.row(), start.pleat(), start.cable(), Optional.empty(), start.unknown());
    }

    /** Seen in a mirror that stands beside it. */
    public Piece mirroredLeftRight() {
        IntUnaryOperator there = at -> at / width * width + width - 1 - at % width;
        return turned(
                there,
                new Pins(
                        starts.stream().map(h -> across(h, width - 1)).toList(),
                        marks.stream().map(h -> across(h, width)).toList(),
                        remarks.stream().map(h -> across(h, width - 1)).toList()),
                false);
    }

    private static <T> Held<T> across(Held<T> held, int sum) {
        return new Held<>(held.what(), held.row(), sum - held.to(), sum - held.from());
    }

    /** Seen in a mirror that stands below it; every up becomes a down. */
    public Piece mirroredTopBottom() {
        IntUnaryOperator there = at -> (height - 1 - at / width) * width + at % width;
        return turned(
                there,
                new Pins(
                        starts.stream().map(h -> over(h, turned(h.what()))).toList(),
                        marks.stream().map(h -> over(h, h.what())).toList(),
                        remarks.stream().map(h -> over(h, h.what())).toList()),
                true);
    }

    private static Start turned(Start start) {
        return start.at(start.row(), start.pleat(), start.cable().turned());
    }

    private <T> Held<T> over(Held<T> held, T what) {
        return new Held<>(what, height - 1 - held.row(), held.from(), held.to());
    }

    private Piece turned(IntUnaryOperator there, Pins pins, boolean turnsKinds) {
        char[] newCells = new char[cells.length];
        BitSet newUp = new BitSet(cells.length);
        for (int at = 0; at < cells.length; at++) {
            int to = there.applyAsInt(at);
            newCells[to] = cells[at];
            newUp.set(to, cells[at] != Row.EMPTY && up.get(at) != turnsKinds);
        }
        return new Piece(height, width, newCells, newUp, palette, pins);
    }

    /** A plate of nothing but this piece, to be kept as a motif. */
    public Plate plate(String id, String title, RandomGenerator random) {
        Set<RowId> taken = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        for (int r = 0; r < height; r++) {
            RowId rowId = RowIds.fresh(taken, random);
            taken.add(rowId);
            rows.add(new Row(Optional.of(rowId), String.valueOf(Row.EMPTY).repeat(width)));
        }
        Plate empty = new Draft(id, title)
                .palette(palette)
                .pleats(Optional.of(new Pleats(1, width + 1)))
                .rows(rows)
                .build();
        return Putting.down(copy(), empty, new Spot(0, 0)).orElseThrow().plate();
    }

    /** The picture of a plate as a piece; empty where it has none. */
    public static Optional<Piece> of(Plate plate) {
        Plate named = RowIds.given(plate);
        return Area.whole(named).flatMap(area -> of(named, area));
    }
}
