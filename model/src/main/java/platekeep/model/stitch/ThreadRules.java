package platekeep.model.stitch;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Threads carried far behind a figure before their colour resumes, and a blank row where one may be missing. */
final class ThreadRules {

    private final Plate plate;
    private final Figures figures;
    private final int most;
    private final Map<Integer, Map<Character, Carry>> worst = new TreeMap<>();

    /** The farthest that a colour is carried in a figure, and in how many places. */
    private record Carry(int row, int from, int to, int places) {
        int pleats() {
            return to - from - 1;
        }

        Carry with(int newRow, int newFrom, int newTo) {
            return newTo - newFrom > to - from
                    ? new Carry(newRow, newFrom, newTo, places + 1)
                    : new Carry(row, from, to, places + 1);
        }
    }

    private ThreadRules(Plate plate, Kinds kinds, int most) {
        this.plate = plate;
        this.figures = kinds.figures();
        this.most = most;
    }

    static void find(Plate plate, Kinds kinds, CheckSettings settings, Findings findings) {
        ThreadRules rules = new ThreadRules(plate, kinds, settings.carried());
        for (int r = 0; r < plate.rows().size(); r++) {
            rules.carried(r);
        }
        rules.worst.forEach((figure, carries) -> carries.forEach((key, carry) -> rules.report(key, carry, findings)));
        for (int r = 1; r < plate.rows().size() - 1; r++) {
            rules.blank(r, findings);
        }
    }

    private void carried(int row) {
        Map<Long, Integer> last = new HashMap<>();
        String cells = plate.rows().get(row).cells();
        for (int i = 0; i < cells.length(); i++) {
            char key = cells.charAt(i);
            if (key == Row.EMPTY) {
                continue;
            }
            int from = i;
            while (i + 1 < cells.length() && cells.charAt(i + 1) == key) {
                i++;
            }
            int figure = figures.at(row, plate.from() + from);
            Integer before = last.put((long) figure << Character.SIZE | key, i);
            if (before != null && from - before - 1 > most) {
                note(figure, key, row, plate.from() + before, plate.from() + from);
            }
        }
    }

    private void note(int figure, char key, int row, int from, int to) {
        Map<Character, Carry> carries = worst.computeIfAbsent(figure, f -> new TreeMap<>());
        Carry known = carries.get(key);
        carries.put(key, known == null ? new Carry(row, from, to, 1) : known.with(row, from, to));
    }

    private void report(char key, Carry carry, Findings findings) {
        String name = plate.palette().get(key).map(Colour::name).orElse("colour " + key);
        findings.at(
                carry.row(),
                carry.from() + 1,
                Severity.WARNING,
                "carried-thread",
                "The thread of " + name + " is carried behind " + Words.count(carry.pleats(), "pleat") + ", from pleat "
                        + (carry.from() + 1) + " to pleat " + carry.to() + times(carry.places() - 1)
                        + "; end it off, or work the colour between.");
    }

    private static String times(int more) {
        return more == 0 ? "" : ", and as far or less in " + Words.count(more, "other place") + " of this figure";
    }

    /**
     * A blank row with cables over the same pleat in both rows next to it. A blank row parts figures, so they are of two;
     * it is the rows that face each other that count, not how far the figures reach elsewhere.
     */
    private void blank(int row, Findings findings) {
        if (!plate.rows().get(row).isBlank()) {
            return;
        }
        int last = plate.from() + plate.positions();
        for (int pleat = plate.from(); pleat <= last; pleat++) {
            if (isTaken(row - 1, pleat) && isTaken(row + 1, pleat)) {
                String text = "This row is blank between two figures one above the other; was a row forgotten?";
                findings.at(row, pleat, Severity.WARNING, "blank-row", text);
                return;
            }
        }
    }

    /** Whether a cable of the row lies over the pleat. */
    private boolean isTaken(int row, int pleat) {
        return figures.at(row, pleat - 1) != Figures.NONE || figures.at(row, pleat) != Figures.NONE;
    }
}
