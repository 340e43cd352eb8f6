package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;

/** What the craft costs on charts from an ordinary one to the largest that the format allows, and on unkind ones. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StitchBenchmark {

    /** Positions by rows. */
    @Param({"96x40", "200x200", "2000x2000"})
    public String size;

    /** A picture of large figures in four colours, single cables in a checkerboard, or one full sheet of stripes. */
    @Param({"picture", "checkerboard", "stripes"})
    public String drawing;

    private Plate plate;
    private Plate edited;

    @Setup
    public void draw() {
        int width = Integer.parseInt(size.substring(0, size.indexOf('x')));
        int height = Integer.parseInt(size.substring(size.indexOf('x') + 1));
        String[] rows = new String[height];
        for (int r = 0; r < height; r++) {
            StringBuilder row = new StringBuilder(Integer.toString(36 * 36 * 36 + r, 36)).append(' ');
            for (int i = 0; i < width; i++) {
                row.append(cell(r, i));
            }
            rows[r] = row.toString();
        }
        Plate drawn = Drawn.plate(rows);
        Start start = new Start(drawn.rows().get(height - 1).id().orElseThrow(), 1, CableKind.DOWN);
        plate = Drawn.started(drawn, start);
        edited = edited(plate);
    }

    private char cell(int row, int index) {
        return switch (drawing) {
            case "checkerboard" -> (row + index) % 2 == 0 ? 'a' : '.';
            case "stripes" -> "abcd".charAt(row % 4);
            default -> Math.sin(row / 9.0) + Math.cos(index / 11.0) > -0.3 ? "abcd".charAt(row / 5 % 4) : '.';
        };
    }

    /** A row put in in the middle and a patch painted. */
    private static Plate edited(Plate plate) {
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.add(rows.size() / 2, Row.of("0000", rows.get(0).cells()));
        Random random = new Random(1);
        for (int n = 0; n < 10; n++) {
            int r = random.nextInt(rows.size());
            StringBuilder cells = new StringBuilder(rows.get(r).cells());
            cells.setCharAt(random.nextInt(cells.length()), n % 2 == 0 ? 'a' : '.');
            rows.set(r, rows.get(r).withCells(cells.toString()));
        }
        return plate.edit().rows(rows).build();
    }

    @Benchmark
    public Kinds kinds() {
        return Kinds.of(plate);
    }

    @Benchmark
    public List<Finding> check() {
        return Check.of(plate, CheckSettings.DEFAULT);
    }

    @Benchmark
    public Plate keepKinds() {
        return KeptKinds.after(plate, edited);
    }
}
