package platekeep.model.join.edits;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jgit.diff.DiffAlgorithm;
import org.eclipse.jgit.diff.Edit;
import org.eclipse.jgit.diff.EditList;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.MyersDiff;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Grid;
import platekeep.model.compare.PlateEdit;
import platekeep.model.compare.RowPair;
import platekeep.model.compare.RowPairing;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Measures the pairing of rows: {@code CompareScore <seed> <count>}. The true pairs are known from the edits (by the ids,
 * which are taken away for the comparison). Beside ours stand JGit's histogram and Myers diffs of the rows' text, with rows
 * that were exchanged for one another paired in order.
 */
public final class CompareScore {
    private final int[] right = new int[4];
    private int rows;
    private int certain;
    private int certainRight;

    public static void main(String[] args) {
        long seed = args.length == 0 ? 1 : Long.parseLong(args[0]);
        int count = args.length < 2 ? 300 : Integer.parseInt(args[1]);
        CompareScore score = new CompareScore();
        EditCases.all(seed, count)
                .filter(c -> !c.kind().startsWith("bare"))
                .forEach(c -> score.measure(c.base(), c.mine()));
        score.print(System.out);
    }

    /** The share of rows that ours pairs truly without ids, 0 to 1. */
    double bare() {
        return (double) right[1] / rows;
    }

    /** The share of rows that ours pairs truly with ids, 0 to 1. */
    double withIds() {
        return (double) right[0] / rows;
    }

    void measure(Plate before, Plate after) {
        int[] truth = new int[after.rows().size()];
        for (int i = 0; i < truth.length; i++) {
            truth[i] = before.indexOf(after.rows().get(i).id().orElseThrow());
        }
        rows += truth.length;
        count(0, truth, ours(before, after), before, after);
        int[] bare = ours(BareCases.bare(before), BareCases.bare(after));
        count(1, truth, bare, before, after);
        countCertain(truth, bare, BareCases.bare(before), BareCases.bare(after));
        count(2, truth, lines(new HistogramDiff(), before, after), before, after);
        count(3, truth, lines(MyersDiff.INSTANCE, before, after), before, after);
    }

    private void count(int who, int[] truth, int[] got, Plate before, Plate after) {
        for (int i = 0; i < truth.length; i++) {
            boolean right = who == 0 ? truth[i] == got[i] : isTrue(truth[i], got[i], before);
            this.right[who] += right ? 1 : 0;
        }
    }

    /** Counts the rows without ids of which the pairing itself does not say that they may be other ones as well. */
    private void countCertain(int[] truth, int[] got, Plate before, Plate after) {
        Grid.Frame frame = Grid.Frame.around(before, after);
        Map<String, char[]> shared = new HashMap<>();
        RowPairing pairing = PlateEdit.of(before, after, Grid.of(before, frame, shared), Grid.of(after, frame, shared))
                .pairing();
        for (int j = 0; j < truth.length; j++) {
            if (!pairing.isUncertainAfter(j)) {
                certain++;
                certainRight += isTrue(truth[j], got[j], before) ? 1 : 0;
            }
        }
    }

    /** Whether a row is paired with its own row, or with one whose cells are the same as that row's. */
    private static boolean isTrue(int truth, int got, Plate before) {
        return truth == got
                || truth >= 0
                        && got >= 0
                        && before.rows()
                                .get(truth)
                                .cells()
                                .equals(before.rows().get(got).cells());
    }

    private static int[] ours(Plate before, Plate after) {
        int[] pairs = new int[after.rows().size()];
        java.util.Arrays.fill(pairs, -1);
        for (RowPair pair : Comparison.of(before, after).rows()) {
            pair.after().ifPresent(a -> pairs[a] = pair.before().orElse(-1));
        }
        return pairs;
    }

    private static int[] lines(DiffAlgorithm diff, Plate before, Plate after) {
        int[] pairs = new int[after.rows().size()];
        java.util.Arrays.fill(pairs, -1);
        EditList edits = diff.diff(RawTextComparator.DEFAULT, text(before), text(after));
        int a = 0;
        int b = 0;
        List<Edit> all = new ArrayList<>(edits);
        all.add(new Edit(
                before.rows().size(),
                before.rows().size(),
                after.rows().size(),
                after.rows().size()));
        for (Edit edit : all) {
            while (b < edit.getBeginB()) {
                pairs[b++] = a++;
            }
            for (int i = 0; i < Math.min(edit.getLengthA(), edit.getLengthB()); i++) {
                pairs[edit.getBeginB() + i] = edit.getBeginA() + i;
            }
            a = edit.getEndA();
            b = edit.getEndB();
        }
        return pairs;
    }

    private static RawText text(Plate plate) {
        StringBuilder out = new StringBuilder();
        for (Row row : plate.rows()) {
            out.append(row.cells()).append('\n');
        }
        return new RawText(out.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    void print(PrintStream out) {
        String[] who = {"ours, with ids", "ours, without ids", "histogram diff", "Myers diff"};
        for (int i = 0; i < who.length; i++) {
            out.printf("%-20s %7.2f %% of %d rows paired truly%n", who[i], 100.0 * right[i] / rows, rows);
        }
        out.printf(
                "ours, without ids, of rows that it is certain of: %.2f %% of %d%n",
                100.0 * certainRight / certain, certain);
    }
}
