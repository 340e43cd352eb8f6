package platekeep.model.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** How long reading and writing take: a library of ten thousand plates of 96 x 40, and the largest plate there can be. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PlateTextBenchmark {
    private static final int LIBRARY = 10_000;
    private static final int COLOURS = 6;

    private byte[] small = {};
    private byte[] large = {};
    private Plate largePlate = new Draft("", "").build();

    /** Makes the plates, always the same ones. */
    @Setup
    public void makePlates() {
        small = PlateText.bytes(plate(96, 40));
        largePlate = plate(Pleats.MOST_POSITIONS, Plate.MOST_ROWS);
        large = PlateText.bytes(largePlate);
    }

    @Benchmark
    public void readTenThousandSmallPlates(Blackhole hole) {
        for (int i = 0; i < LIBRARY; i++) {
            hole.consume(PlateText.read("small.json", small));
        }
    }

    @Benchmark
    public Reading<Plate> readTheLargestPlate() {
        return PlateText.read("large.json", large);
    }

    @Benchmark
    public byte[] writeTheLargestPlate() {
        return PlateText.bytes(largePlate);
    }

    private static Plate plate(int positions, int rowCount) {
        Random random = new Random(7);
        TreeMap<Character, Colour> colours = new TreeMap<>();
        for (int i = 0; i < COLOURS; i++) {
            colours.put(Palette.KEYS.charAt(i), new Colour("colour " + i, "#A63C2B", 4));
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < rowCount; i++) {
            StringBuilder cells = new StringBuilder();
            for (int p = 0; p < positions; p++) {
                cells.append(random.nextBoolean() ? Row.EMPTY : Palette.KEYS.charAt(random.nextInt(COLOURS)));
            }
            rows.add(new Row(Optional.of(RowId.of(i)), cells.toString()));
        }
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Harbour Light")
                .themes(List.of("lighthouses", "seaside"))
                .designers(List.of("First Designer"))
                .palette(Palette.of(colours))
                .pleats(Optional.of(new Pleats(1, 1 + positions)))
                .rows(rows)
                .build();
    }

    /** Prints the figures. */
    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(PlateTextBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
