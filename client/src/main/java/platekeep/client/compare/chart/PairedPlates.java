package platekeep.client.compare.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import platekeep.model.compare.CableChange;
import platekeep.model.compare.CarriedPicture;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Side;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Two plates compared and ready to be drawn together: on lines, in one frame of pleats. Across, lengths are in pleats
 * from the frame's left edge; down, in lines from the top edge of the first line, less than 0 above it. Made in the
 * background, in time linear in the cells; asking costs a row at most.
 */
public final class PairedPlates {
    private final Comparison comparison;
    private final CarriedPicture carried;
    private final LinedUp lines;
    private final Drawing before;
    private final Drawing after;
    private final ChangedStitches stitches;
    private final int[] shadesBefore;
    private final int[] shadesAfter;
    private final Map<Side, List<List<CableChange>>> changes;

    private PairedPlates(Comparison comparison) {
        this.comparison = comparison;
        this.carried = CarriedPicture.of(comparison);
        this.lines = LinedUp.of(comparison, carried);
        this.before = Drawing.of(comparison.before());
        this.after = Drawing.of(comparison.after());
        this.stitches = ChangedStitches.of(comparison.before(), comparison.after());
        this.shadesBefore = shades(comparison.before());
        this.shadesAfter = shades(comparison.after());
        this.changes = Map.of(Side.BEFORE, changesOf(Side.BEFORE), Side.AFTER, changesOf(Side.AFTER));
    }

    /** Makes two compared plates ready to be drawn. */
    public static PairedPlates of(Comparison comparison) {
        return new PairedPlates(comparison);
    }

    public Comparison comparison() {
        return comparison;
    }

    public LinedUp lines() {
        return lines;
    }

    public Plate plate(Side side) {
        return side == Side.BEFORE ? comparison.before() : comparison.after();
    }

    public Drawing drawing(Side side) {
        return side == Side.BEFORE ? before : after;
    }

    /** The lines and single stitches that changed. */
    public ChangedStitches stitches() {
        return stitches;
    }

    /** How many pleats the frame covers; 0 where neither plate has a chart. */
    public int pleats() {
        int width = comparison.frame().width();
        return width == 0 ? 0 : width + 1;
    }

    /** The first pleat of the frame. */
    public int from() {
        return comparison.frame().from();
    }

    /** How far a side's chart begins right of the frame's left edge, in pleats. */
    public int offset(Side side) {
        return drawing(side).positions() == 0 ? 0 : plate(side).from() - from();
    }

    /** Where what is drawn begins: 0, or less where geometric lines lie above the picture. */
    public double top() {
        return Math.min(before.top(), after.top());
    }

    /** A height of a side's own chart, in rows, as a height in lines. */
    public double lineOf(Side side, double row) {
        int rows = drawing(side).rows();
        int whole = (int) Math.floor(row);
        if (whole < 0 || rows == 0) {
            return row;
        }
        return whole >= rows ? lines.of(side, rows - 1) + 1 + row - rows : lines.of(side, whole) + row - whole;
    }

    /** What happened to the cables of a side's row; positions. */
    public List<CableChange> changes(Side side, int row) {
        return changes.get(side).get(row);
    }

    private List<List<CableChange>> changesOf(Side side) {
        List<List<CableChange>> all = new ArrayList<>();
        for (int row = 0; row < plate(side).rows().size(); row++) {
            boolean isOne = !lines.isByNumber();
            all.add(!isOne ? List.of() : side == Side.BEFORE ? carried.before(row) : carried.after(row));
        }
        return all;
    }

    /**
     * The colour that a cable had which lies, or would lie, at a place of the later plate now that all moves are
     * followed.
     *
     * @return {@code 0xRRGGBB} or {@link Drawing#NOTHING}
     */
    public int was(Line line, int position) {
        if (line.after() != Line.NONE && !lines.isByNumber()) {
            return shadesBefore[carried.was(line.after(), position) & 127];
        }
        return line.before() == Line.NONE
                ? Drawing.NOTHING
                : shadesBefore[comparison.before().cellAt(line.before(), position) & 127];
    }

    /** The colour of the cable at a place of the later plate, or {@link Drawing#NOTHING}. */
    public int is(Line line, int position) {
        return line.after() == Line.NONE
                ? Drawing.NOTHING
                : shadesAfter[comparison.after().cellAt(line.after(), position) & 127];
    }

    /** Whether something happened to a cable at a place of the later plate; a colour's new shade is nothing. */
    public boolean isChanged(Line line, int position) {
        return line.after() != Line.NONE && !lines.isByNumber()
                ? carried.isChanged(line.after(), position)
                : was(line, position) != is(line, position);
    }

    private static int[] shades(Plate plate) {
        int[] shades = new int[128];
        Arrays.fill(shades, 0x808080);
        shades[Row.EMPTY] = Drawing.NOTHING;
        plate.palette().entries().forEach((key, colour) -> shades[key] = colour.rgb());
        return shades;
    }
}
