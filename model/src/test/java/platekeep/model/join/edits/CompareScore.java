package platekeep.model.join.edits;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.diff.DiffAlgorithm;
import org.eclipse.jgit.diff.Edit;
import org.eclipse.jgit.diff.EditList;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.MyersDiff;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.RowPair;
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
        count(1, truth, ours(BareCases.bare(before), BareCases.bare(after)), before, after);
        count(2, truth, lines(new HistogramDiff(), before, after), before, after);
        count(3, truth, lines(MyersDiff.INSTANCE, before, after), before, after);
    }

    /** A row counts as paired truly with its own row, or with one whose cells are the same as that row's. */
    private void count(int who, int[] truth, int[] got, Plate before, Plate after) {
        for (int i = 0; i < truth.length; i++) {
            boolean same = truth[i] == got[i];
            boolean twin = truth[i] >= 0
                    && got[i] >= 0
                    && before.rows()
                            .get(truth[i])
                            .cells()
                            .equals(before.rows().get(got[i]).cells());
            right[who] += same || who > 0 && twin ? 1 : 0;
        }
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
    }
}
