package platekeep.model.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.diff.EditList;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import org.eclipse.jgit.merge.MergeAlgorithm;
import org.eclipse.jgit.merge.MergeResult;
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
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import platekeep.model.compare.Comparison;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.text.PlateText;

/**
 * What comparing and joining cost beside JGit's line diff and line merge of the same texts, from an ordinary plate to the
 * largest that the format allows, and on unkind ones.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(0)
public class JoinBenchmark {
    private static final int EDITS = 8;

    /** Positions by rows and what is done to them. */
    @Param({"96x40 edits", "200x200 edits", "2000x2000 edits", "2000x2000 blank", "2000x2000 equal", "2000x2000 moved"})
    public String drawing;

    private Plate base;
    private Plate mine;
    private Plate theirs;
    private RawText baseText;
    private RawText mineText;
    private RawText theirsText;

    /** Runs them all in this process and prints the figures. */
    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(JoinBenchmark.class.getSimpleName())
                        .build())
                .run();
    }

    @Setup
    public void draw() {
        Random random = new Random(1);
        int width = Integer.parseInt(drawing.substring(0, drawing.indexOf('x')));
        int height = Integer.parseInt(drawing.substring(drawing.indexOf('x') + 1, drawing.indexOf(' ')));
        String kind = drawing.substring(drawing.indexOf(' ') + 1);
        Charted.Ids ids = kind.equals("blank") || kind.equals("equal") ? Charted.Ids.NONE : Charted.Ids.GIVEN;
        int room = kind.equals("blank") || kind.equals("equal") ? 1 : 0;
        base = Charted.plate(random, height - 4 * EDITS * room, width, ids, Charted.Ground.FULL);
        base = base.edit().rows(drawn(base.rows(), kind)).starts(List.of()).build();
        mine = kind.equals("moved") ? moved(base) : edited(random, base, 0);
        theirs = edited(random, base, 1);
        baseText = new RawText(PlateText.bytes(base));
        mineText = new RawText(PlateText.bytes(mine));
        theirsText = new RawText(PlateText.bytes(theirs));
    }

    private static List<Row> drawn(List<Row> rows, String kind) {
        List<Row> out = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            StringBuilder cells = new StringBuilder();
            for (int i = 0; i < rows.get(r).cells().length(); i++) {
                cells.append(cell(r, i, kind));
            }
            out.add(rows.get(r).withCells(cells.toString()));
        }
        return out;
    }

    private static char cell(int row, int index, String kind) {
        return switch (kind) {
            case "blank" -> Row.EMPTY;
            case "equal" -> "abcd".charAt(index / 7 % 4);
            default ->
                index > 4 && Math.sin(row / 9.0) + Math.cos(index / 11.0) > -0.3
                        ? "abcd".charAt((row / 5 + index / 13) % 4)
                        : Row.EMPTY;
        };
    }

    /** The whole picture three pleats to the left. */
    private static Plate moved(Plate plate) {
        return plate.edit()
                .rows(plate.rows().stream()
                        .map(row -> row.withCells(row.cells().substring(3) + "..."))
                        .toList())
                .build();
    }

    /** One hand paints in every other of some rows spread over the plate; where rows lack ids it puts one in as well. */
    private static Plate edited(Random random, Plate plate, int hand) {
        List<Row> rows = new ArrayList<>(plate.rows());
        for (int n = EDITS - 1; n >= 0; n--) {
            int at = (2 * n + hand) * rows.size() / (2 * EDITS + 1);
            StringBuilder cells = new StringBuilder(rows.get(at).cells());
            cells.setCharAt(random.nextInt(cells.length()), hand == 0 ? 'a' : 'b');
            rows.set(at, rows.get(at).withCells(cells.toString()));
            if (n % 4 == 0 && plate.rows().get(0).id().isEmpty()) {
                rows.add(at, plate.rows().get(at));
            }
        }
        return plate.edit().rows(rows).build();
    }

    @Benchmark
    public Comparison compare() {
        return Comparison.of(base, mine);
    }

    @Benchmark
    public Joined join() {
        return Join.of(Optional.of(base), mine, theirs, Hands.UNKNOWN);
    }

    @Benchmark
    public EditList lineDiff() {
        return new HistogramDiff().diff(RawTextComparator.DEFAULT, baseText, mineText);
    }

    @Benchmark
    public MergeResult<RawText> lineMerge() {
        return new MergeAlgorithm(new HistogramDiff()).merge(RawTextComparator.DEFAULT, baseText, mineText, theirsText);
    }
}
