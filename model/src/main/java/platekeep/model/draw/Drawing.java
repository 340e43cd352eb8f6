package platekeep.model.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Kinds;

/**
 * A plate ready to be drawn: which cable lies where, in which colour and on which half-level, with gathering rows,
 * geometric lines and single stitches. Made once a plate, linear in its cells; asking costs nothing.
 *
 * <p>Rows are counted from the top, positions from the chart's left end, both from 0. Across, lengths are in pleats
 * from the left edge of the first pleat: the cable at index i covers i to i + 2. Down, they are in rows from the top
 * edge of the first row; what lies above the picture has negative heights.
 */
public final class Drawing {
    /** Where no cable lies. */
    public static final int NOTHING = -1;

    /** So many rows from a line one still points at it. */
    private static final double NEAR = 0.6;

    private static final int UNKNOWN_COLOUR = 0x808080;

    private final Plate plate;
    private final int rows;
    private final int positions;
    private final Kinds kinds;
    private final Checkerboard emptyIsUp;
    private final int[][] rgb;
    private final boolean[][] up;
    private final List<GatheringRow> gathering;
    private final List<Strand> strands;
    private final List<Knot> knots;
    private final double top;
    private final Levels levels;

    private Drawing(Plate plate, Kinds kinds) {
        this.plate = plate;
        this.kinds = kinds;
        this.emptyIsUp = Checkerboard.of(plate);
        this.rows = plate.rows().size();
        this.positions = plate.positions();
        this.rgb = new int[rows][];
        this.up = new boolean[rows][];
        int[] colours = colours(plate);
        for (int row = 0; row < rows; row++) {
            rgb[row] = rgbOf(row, colours);
            up[row] = upOf(row);
        }
        this.levels = new Levels(plate);
        this.strands = LineStrands.of(plate, levels);
        this.knots = knots(plate);
        this.top = top(strands);
        this.gathering = levels.between(top, rows);
    }

    private static double top(List<Strand> strands) {
        return strands.stream().mapToDouble(s -> Math.min(s.y1(), s.y2()) - 0.5).reduce(0, Math::min);
    }

    /** The plate, drawn as it is to be worked. */
    public static Drawing of(Plate plate) {
        return new Drawing(plate, Kinds.of(plate));
    }

    /** A plate with the shape of another one: rows that look the same are shared with that one's drawing. */
    private Drawing(Plate plate, Kinds kinds, Drawing before) {
        this.plate = plate;
        this.kinds = kinds;
        this.emptyIsUp = Checkerboard.of(plate);
        this.rows = before.rows;
        this.positions = before.positions;
        this.rgb = before.rgb.clone();
        this.up = before.up.clone();
        int[] colours = colours(plate);
        boolean hasColours = plate.palette().equals(before.plate.palette());
        boolean hasEmpty = rows == 0 || emptyIsUp.at(0, 0) == before.emptyIsUp.at(0, 0);
        for (int row = 0; row < rows; row++) {
            if (!hasColours || plate.rows().get(row) != before.plate.rows().get(row)) {
                rgb[row] = rgbOf(row, colours);
            }
            if (!hasEmpty || !kinds.hasRowOf(before.kinds, row)) {
                up[row] = upOf(row);
            }
        }
        boolean hasLevels = plate.cloth().equals(before.plate.cloth())
                && plate.starts().equals(before.plate.starts())
                && plate.lines().equals(before.plate.lines())
                && hasColours
                && hasIdsOf(before.plate);
        this.levels = hasLevels ? before.levels : new Levels(plate);
        this.strands = hasLevels ? before.strands : LineStrands.of(plate, levels);
        this.knots = plate.marks().isEmpty() ? List.of() : knots(plate);
        this.top = hasLevels ? before.top : top(strands);
        this.gathering = hasLevels ? before.gathering : levels.between(top, rows);
    }

    private boolean hasIdsOf(Plate other) {
        boolean isSame = true;
        for (int row = 0; isSame && row < rows; row++) {
            isSame = plate.rows().get(row) == other.rows().get(row)
                    || plate.rows().get(row).id().equals(other.rows().get(row).id());
        }
        return isSame;
    }

    /**
     * The drawing of a plate that this one was changed to. While the chart keeps its size, it costs as much as the rows
     * that changed and the runs of cables in all of them; else it is made anew.
     */
    public Drawing changedTo(Plate after) {
        boolean hasShape = after.pleats().equals(plate.pleats()) && after.rows().size() == rows;
        Kinds now = Kinds.of(after, kinds);
        return hasShape ? new Drawing(after, now, this) : new Drawing(after, now);
    }

    private static int[] colours(Plate plate) {
        int[] colours = new int[128];
        Arrays.fill(colours, UNKNOWN_COLOUR);
        plate.palette().entries().forEach((key, colour) -> colours[key] = colour.rgb());
        colours[Row.EMPTY] = NOTHING;
        return colours;
    }

    private int[] rgbOf(int row, int[] colours) {
        String cells = plate.rows().get(row).cells();
        int[] shades = new int[positions];
        for (int i = 0; i < positions; i++) {
            shades[i] = colours[cells.charAt(i) & 127];
        }
        return shades;
    }

    private boolean[] upOf(int row) {
        boolean[] isUp = new boolean[positions];
        for (int i = emptyIsUp.at(row, plate.from()) ? 0 : 1; i < positions; i += 2) {
            isUp[i] = true;
        }
        kinds.writeUp(row, isUp);
        return isUp;
    }

    private static List<Knot> knots(Plate plate) {
        List<Knot> knots = new ArrayList<>();
        for (Mark mark : plate.marks()) {
            int row = plate.indexOf(mark.row());
            if (row >= 0) {
                int rgb = plate.palette().get(mark.colour()).map(Colour::rgb).orElse(UNKNOWN_COLOUR);
                knots.add(new Knot(mark.stitch(), mark.place() - plate.from() + 0.5, row + 0.5, rgb));
            }
        }
        return List.copyOf(knots);
    }

    /** The plate that is drawn. */
    public Plate plate() {
        return plate;
    }

    public int rows() {
        return rows;
    }

    /** Cable positions in a row. */
    public int positions() {
        return positions;
    }

    /** Pleats that the chart covers: one more than positions; 0 without a chart. */
    public int pleats() {
        return positions == 0 ? 0 : positions + 1;
    }

    /** Where what is drawn begins, in rows from the chart's top edge: 0, or less where lines lie above the picture. */
    public double top() {
        return top;
    }

    /** The height of all that is drawn, in rows. */
    public double height() {
        return rows - top;
    }

    /** The colour of the cable there as {@code 0xRRGGBB}, or {@link #NOTHING}. */
    public int rgb(int row, int index) {
        return rgb[row][index];
    }

    /** Whether the cable there is up; where none lies, whether one would be by the plate's first start. */
    public boolean isUp(int row, int index) {
        return up[row][index];
    }

    /** What the cable there is; where none lies, what it would be by the plate's first start. */
    public CableKind kind(int row, int index) {
        return up[row][index] ? CableKind.UP : CableKind.DOWN;
    }

    /** Whether another drawing has the same rows, pleats, gathering rows, lines and single stitches. */
    public boolean hasShapeOf(Drawing other) {
        return rows == other.rows
                && positions == other.positions
                && plate.from() == other.plate.from()
                && gathering.equals(other.gathering)
                && strands.equals(other.strands)
                && knots.equals(other.knots);
    }

    /** Whether a row looks the same in another drawing of the same shape. */
    public boolean hasRowOf(Drawing other, int row) {
        boolean hasShades = rgb[row] == other.rgb[row] || Arrays.equals(rgb[row], other.rgb[row]);
        return hasShades && (up[row] == other.up[row] || Arrays.equals(up[row], other.up[row]));
    }

    /** Whether the spot is on the chart. */
    public boolean has(Spot spot) {
        return spot.row() >= 0 && spot.row() < rows && spot.index() >= 0 && spot.index() < positions;
    }

    /**
     * The place under a point: of the two cables that could cover it the one on the point's half-level, a cable before
     * an empty place.
     *
     * @param x in pleats from the left edge
     * @param y in rows from the top edge
     */
    public Optional<Spot> at(double x, double y) {
        int row = (int) Math.floor(y);
        int right = (int) Math.floor(x);
        CableKind level = y - row < 0.5 ? CableKind.UP : CableKind.DOWN;
        if (row < 0 || row >= rows || right < 0 || right > positions) {
            return Optional.empty();
        }
        List<Spot> near = List.of(new Spot(row, right), new Spot(row, right - 1)).stream()
                .filter(this::has)
                .toList();
        return near.stream()
                .filter(s -> kind(s.row(), s.index()) == level && rgb(s.row(), s.index()) != NOTHING)
                .findFirst()
                .or(() -> near.stream()
                        .filter(s -> kind(s.row(), s.index()) == level)
                        .findFirst())
                .or(() -> near.stream().findFirst());
    }

    /**
     * The geometric line under a point, by its place in the plate's list; of several the last.
     *
     * @param x in pleats from the left edge
     * @param y in rows from the top edge
     */
    public OptionalInt lineAt(double x, double y) {
        OptionalInt found = OptionalInt.empty();
        for (int n = 0; n < plate.lines().size(); n++) {
            Optional<double[]> box = lineBox(n);
            boolean isUnder = box.filter(b -> x >= b[0] && y >= b[1] && x <= b[2] && y <= b[3])
                    .isPresent();
            found = isUnder ? OptionalInt.of(n) : found;
        }
        return found;
    }

    /** The gathering row or half space nearest to a height in rows, as a plate writes it; empty while they have no numbers. */
    public Optional<String> gatheringRowAt(double y) {
        return levels.nearest(y);
    }

    /**
     * The box around a geometric line, by its place in the plate's list: left, top, right and bottom in pleats and rows;
     * empty where it lies nowhere.
     */
    public Optional<double[]> lineBox(int at) {
        Line line = plate.lines().get(at);
        OptionalDouble on = levels.y(line.on());
        if (on.isEmpty()) {
            return Optional.empty();
        }
        double other = line.toRow().map(levels::y).orElse(on).orElse(on.getAsDouble());
        return Optional.of(new double[] {
            line.from() - plate.from(),
            Math.min(on.getAsDouble(), other) - NEAR,
            line.to() - plate.from() + 1,
            Math.max(on.getAsDouble(), other) + NEAR
        });
    }

    /** The gathering rows behind what is drawn, top first. */
    public List<GatheringRow> gathering() {
        return gathering;
    }

    /** The thread of the geometric lines. */
    public List<Strand> strands() {
        return strands;
    }

    /** The single stitches on top. */
    public List<Knot> knots() {
        return knots;
    }
}
