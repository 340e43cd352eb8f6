package platekeep.client.plate;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.plate.edit.CableEdits;
import platekeep.client.plate.piece.Area;
import platekeep.client.plate.piece.Piece;
import platekeep.client.plate.piece.Putting;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.Kinds;

/**
 * What drawing and painting cost, in milliseconds of processor time: the median and what 19 of 20 stay under, after warming up. One
 * frame of a 60 Hz screen is 16.7 ms. Prints a table; asserts nothing.
 */
public final class PlateBenchmark {
    private static final int TURNS = 41;
    private static final Rectangle WINDOW = new Rectangle(0, 0, 1000, 620);

    /** The processor's time of this thread, so that what else the machine does counts less. */
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private PlateBenchmark() {}

    public static void main(String[] args) {
        System.out.printf("%-58s %10s %10s%n", "", "median ms", "19 of 20");
        for (int size : new int[] {200, 2000}) {
            Plate plate = picture(size);
            edits(size + " x " + size + ": ", plate);
            for (double pleat : new double[] {0.25, 1, 2, 4, 8, 14, 40}) {
                painting(size + " x " + size + ", " + pleat + " dots a pleat", plate, pleat);
            }
        }
    }

    private static Plate picture(int size) {
        List<Row> rows = new ArrayList<>();
        for (int r = 0; r < size; r++) {
            StringBuilder cells = new StringBuilder();
            for (int i = 0; i < size; i++) {
                boolean isThere = i > 0 && i < size - 1 && Math.sin(r / 9.0) + Math.cos(i / 11.0) > -0.3;
                cells.append(isThere ? "abc".charAt(r / 5 % 3) : Row.EMPTY);
            }
            rows.add(new Row(Optional.of(RowId.of(36 * 36 * 36 + r)), cells.toString()));
        }
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Waves")
                .palette(Palette.EMPTY
                        .with('a', new Colour("brick", "#A63C2B", 4))
                        .with('b', new Colour("chalk", "#F4F1E8", 4))
                        .with('c', new Colour("slate", "#3B4A59", 4)))
                .pleats(Optional.of(new Pleats(1, size + 1)))
                .rows(rows)
                .starts(List.of(new Start(RowId.of(36 * 36 * 36 + size - 1), 1, CableKind.DOWN)))
                .build();
    }

    private static void edits(String name, Plate plate) {
        int size = plate.positions();
        List<Spot> stroke = CableEdits.line(new Spot(size / 2, size / 4), new Spot(size / 2 + 3, size / 4 + 6));
        Plate painted = CableEdits.paint(plate, stroke, 'b');
        time(name + "paint 7 cables", () -> CableEdits.paint(plate, stroke, 'b'));
        Kinds kinds = Kinds.of(plate);
        Drawing before = Drawing.of(plate);
        time(name + "keep kinds after it", () -> KeptKinds.after(plate, kinds, painted));
        time(name + "open: make it ready to be drawn", () -> Drawing.of(painted));
        time(name + "make it ready to be drawn after a stroke", () -> before.changedTo(painted));
        time(name + "stroke as a whole, painted at 14 dots a pleat", () -> {
            Plate kept = KeptKinds.after(plate, kinds, CableEdits.paint(plate, stroke, 'b'));
            Drawing after = before.changedTo(kept);
            ChartScale scale = ChartScale.whole(14);
            int top = (int) scale.top(size / 2);
            Rectangle clip = new Rectangle((int) scale.left(size / 4.0), top, WINDOW.width, (int) (4 * scale.row()));
            return paint(after, scale, PlatePainter.View.CHART, clip, 1);
        });
        Plate recoloured = CableEdits.recolour(plate, stroke, 'c');
        time(name + "make it ready where only colours changed", () -> before.changedTo(recoloured));
        time(name + "line from corner to corner", () -> CableEdits.line(new Spot(0, 0), new Spot(size - 1, size / 2)));
        time(name + "fill", () -> CableEdits.alike(plate, new Spot(0, 1)));
        Area area = Area.figure(plate, new Spot(0, 1)).orElseThrow();
        time(name + "lift a figure off", () -> Putting.lifted(plate, area));
        Plate ground = Putting.lifted(plate, area);
        Piece piece = Piece.of(plate, area).orElseThrow();
        time(name + "put a figure down where it is dragged to", () -> Putting.down(piece, ground, new Spot(0, 1)));
    }

    private static void painting(String name, Plate plate, double pleat) {
        Drawing drawing = Drawing.of(plate);
        ChartScale scale = pleat < 1 ? ChartScale.exact(pleat) : ChartScale.whole((int) pleat);
        time(name + ": a window of the chart", () -> paint(drawing, scale, PlatePainter.View.CHART, WINDOW, 1));
        time(name + ": a window of the cloth", () -> paint(drawing, scale, PlatePainter.View.CLOTH, WINDOW, 1));
        if (pleat >= 1) {
            time(name + " by 1.5: chart", () -> paint(drawing, scale, PlatePainter.View.CHART, WINDOW, 1.5));
            time(name + " by 1.5: cloth", () -> paint(drawing, scale, PlatePainter.View.CLOTH, WINDOW, 1.5));
        }
    }

    private static final PlatePainter PAINTER = new PlatePainter();
    private static final BufferedImage SCREEN = new BufferedImage(1500, 930, BufferedImage.TYPE_INT_RGB);

    private static Object paint(
            Drawing drawing, ChartScale scale, PlatePainter.View view, Rectangle clip, double zoom) {
        Graphics2D g = SCREEN.createGraphics();
        g.scale(zoom, zoom);
        g.translate(-clip.x, -clip.y);
        g.setClip(clip);
        PAINTER.paint(g, drawing, scale, view);
        g.dispose();
        return SCREEN;
    }

    private interface Work {
        Object run();
    }

    private static void time(String name, Work work) {
        double[] took = new double[TURNS];
        long end = System.nanoTime() + 1_000_000_000L;
        int turns = 0;
        while (turns < TURNS && (turns < 5 || System.nanoTime() < end)) {
            long start = CLOCK.getCurrentThreadCpuTime();
            if (work.run() == null) {
                throw new IllegalStateException(name);
            }
            took[turns++] = (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
        }
        double[] warm = Arrays.copyOfRange(took, turns / 4, turns);
        Arrays.sort(warm);
        System.out.printf(
                Locale.ROOT, "%-58s %10.2f %10.2f%n", name, warm[warm.length / 2], warm[(warm.length - 1) * 19 / 20]);
    }
}
