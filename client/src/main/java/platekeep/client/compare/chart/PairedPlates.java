package platekeep.client.compare.chart;

import java.util.List;
import java.util.Optional;
import platekeep.model.compare.CableChange;
import platekeep.model.compare.CableChange.How;
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

    private PairedPlates(Comparison comparison) {
        this.comparison = comparison;
        this.carried = CarriedPicture.of(comparison);
        this.lines = LinedUp.of(comparison, carried);
        this.before = Drawing.of(comparison.before());
        this.after = Drawing.of(comparison.after());
        this.stitches = ChangedStitches.of(comparison.before(), comparison.after());
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
        if (lines.isByNumber()) {
            return List.of();
        }
        return side == Side.BEFORE ? carried.before(row) : carried.after(row);
    }

    /**
     * The colour that a cable had which lies, or would lie, at a place of the later plate now that all moves are
     * followed.
     *
     * @return {@code 0xRRGGBB} or {@link Drawing#NOTHING}
     */
    public int was(Line line, int position) {
        if (line.after() != Line.NONE && !lines.isByNumber()) {
            return rgb(comparison.before(), carried.was(line.after(), position));
        }
        return line.before() == Line.NONE
                ? Drawing.NOTHING
                : rgb(comparison.before(), comparison.before().cellAt(line.before(), position));
    }

    /** What happened to a cable at a place of the later plate; in a gap, what went is taken out. */
    public Optional<How> how(Line line, int position) {
        if (line.after() != Line.NONE && !lines.isByNumber()) {
            return carried.at(line.after(), position);
        }
        int was = was(line, position);
        int is = is(line, position);
        if (was == is) {
            return Optional.empty();
        }
        return Optional.of(
                was == Drawing.NOTHING ? How.PUT_IN : is == Drawing.NOTHING ? How.TAKEN_OUT : How.RECOLOURED);
    }

    /** The colour of the cable at a place of the later plate, or {@link Drawing#NOTHING}. */
    public int is(Line line, int position) {
        return line.after() == Line.NONE
                ? Drawing.NOTHING
                : rgb(comparison.after(), comparison.after().cellAt(line.after(), position));
    }

    private static int rgb(Plate plate, char key) {
        return key == Row.EMPTY
                ? Drawing.NOTHING
                : plate.palette().get(key).map(c -> c.rgb()).orElse(0x808080);
    }
}
