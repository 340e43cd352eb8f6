package platekeep.model.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Plate;

/**
 * Where the thread of a geometric line lies. A trellis of n steps takes 2(n + 1) pleats a repeat, a wave four (common
 * practice, no source); a line on one level is drawn as cables or as slanted stitches. A line whose gathering row
 * cannot be placed lies nowhere.
 */
final class LineStrands {
    private static final double QUARTER = 0.25;

    private LineStrands() {}

    static List<Strand> of(Plate plate, Levels levels) {
        List<Strand> strands = new ArrayList<>();
        for (Line line : plate.lines()) {
            OptionalDouble on = levels.y(line.on());
            if (on.isPresent()) {
                double to = line.toRow()
                        .map(levels::y)
                        .filter(OptionalDouble::isPresent)
                        .orElse(on)
                        .getAsDouble();
                add(strands, plate, line, on.getAsDouble(), to);
            }
        }
        return List.copyOf(strands);
    }

    private static void add(List<Strand> strands, Plate plate, Line line, double on, double to) {
        int rgb = plate.palette().get(line.colour()).map(Colour::rgb).orElse(0x808080);
        int cables = Math.min(line.to() - line.from(), 4000);
        for (int i = 0; i < cables; i++) {
            double x = line.from() + i - plate.from() + 0.5;
            boolean up = line.start().turned(i) == CableKind.UP;
            if (on != to) {
                strands.add(new Strand(x, level(line, i, on, to), x + 1, level(line, i + 1, on, to), rgb));
            } else if (line.stitch().toLowerCase(Locale.ROOT).contains("cable")) {
                double y = on + (up ? -QUARTER : QUARTER);
                strands.add(new Strand(x - 0.5, y, x + 1.5, y, rgb));
            } else {
                strands.add(new Strand(x - 0.25, on + QUARTER, x + 1.25, on - QUARTER, rgb));
            }
        }
    }

    /** The height of the thread at the i-th pleat: level cable, n steps one way, level cable, n steps back. */
    private static double level(Line line, int i, double on, double to) {
        double n = line.steps().filter(steps -> steps > 0).orElse(1);
        double at = i % (2 * (n + 1));
        double part = at <= n + 1 ? Math.max(0, at - 1) / n : 1 - Math.max(0, at - (n + 2)) / n;
        return on + (to - on) * part;
    }
}
