package platekeep.model.stitch;

import java.util.Arrays;
import java.util.Map;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * Runs that hang too far beyond the row they rest on, seen outward from the row in which the figure starts: above it a
 * run rests on the row below, under it on the row above. A figure without a start of its own starts in its lowest row.
 */
final class OverhangRule {

    private static final String RULE = "overhang";

    private final Plate plate;
    private final Figures figures;
    private final int[] startRow;
    private final int[] count;
    private final int[] worst;
    private final int[] worstRow;
    private final int[] worstFrom;
    private final int[] worstTo;
    private final int most;

    private OverhangRule(Plate plate, Kinds kinds, int most) {
        this.plate = plate;
        this.figures = kinds.figures();
        this.most = most;
        int size = figures.count();
        this.startRow = new int[size];
        this.count = new int[size];
        this.worst = new int[size];
        this.worstRow = new int[size];
        this.worstFrom = new int[size];
        this.worstTo = new int[size];
        Map<RowId, Integer> index = Kinds.indexOf(plate.rows());
        Arrays.setAll(
                startRow,
                f -> kinds.startOf(f)
                        .map(Start::row)
                        .map(index::get)
                        .orElseGet(() -> figures.labels().bottom(f)));
    }

    static void find(Plate plate, Kinds kinds, CheckSettings settings, Findings findings) {
        OverhangRule rule = new OverhangRule(plate, kinds, settings.overhang());
        for (int r = 0; r < plate.rows().size(); r++) {
            rule.row(r);
        }
        for (int f = 0; f < rule.count.length; f++) {
            if (rule.count[f] > 0 && findings.hasRoomFor(RULE)) {
                rule.report(f, findings);
            }
        }
    }

    private void row(int r) {
        int end = plate.from() + plate.positions();
        int p = plate.from();
        while (p < end) {
            int figure = figures.at(r, p);
            int from = p++;
            while (p < end && figures.at(r, p) == figure) {
                p++;
            }
            if (figure != Figures.NONE && r != startRow[figure]) {
                run(figure, r, from, p - 1);
            }
        }
    }

    private void run(int figure, int row, int from, int to) {
        int under = restsOn(figure, row);
        int left = from;
        while (left <= to && figures.at(under, left) != figure) {
            left++;
        }
        int right = to;
        while (right >= left && figures.at(under, right) != figure) {
            right--;
        }
        int hangs = Math.max(left - from, to - right);
        if (hangs <= most) {
            return;
        }
        count[figure]++;
        if (hangs > worst[figure]) {
            worst[figure] = hangs;
            worstRow[figure] = row;
            worstFrom[figure] = from;
            worstTo[figure] = to;
        }
    }

    private int restsOn(int figure, int row) {
        return row < startRow[figure] ? row + 1 : row - 1;
    }

    private void report(int f, Findings findings) {
        int under = plate.numberFromBottom(restsOn(f, worstRow[f]));
        boolean rests = worst[f] < worstTo[f] - worstFrom[f] + 1;
        String how = rests
                ? " hangs " + Words.count(worst[f], "pleat") + " beyond row " + under + ", on which it rests"
                : " rests on nothing in row " + under;
        findings.at(
                worstRow[f],
                worstFrom[f],
                Severity.WARNING,
                RULE,
                "The run " + Words.over(worstFrom[f], worstTo[f]) + how + Words.others(count[f] - 1, "run")
                        + "; widen row " + under + " or start the figure at a wider row.");
    }
}
