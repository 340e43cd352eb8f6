package platekeep.model.stitch;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Threads carried far behind a figure before their colour resumes, and a blank row where one may be missing. */
final class ThreadRules {

    private static final String CARRIED = "carried-thread";

    /** Keys of a palette are ASCII. */
    private static final int KEYS = 128;

    private final Plate plate;
    private final Figures figures;
    private final int most;
    private final int[] lastFigure = new int[KEYS];
    private final int[] lastCell = new int[KEYS];
    private final Map<Long, Integer> aside = new HashMap<>();
    private final Map<Integer, Carry> worst = new TreeMap<>();

    /** The farthest that a thread is carried in a figure, in how many places any is, and of which colours. */
    private static final class Carry {
        private char key;
        private int row;
        private int from;
        private int to;
        private int places;
        private final SortedSet<Character> keys = new TreeSet<>();

        void note(char newKey, int newRow, int newFrom, int newTo) {
            if (places++ == 0 || newTo - newFrom > to - from) {
                key = newKey;
                row = newRow;
                from = newFrom;
                to = newTo;
            }
            keys.add(newKey);
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
        for (Carry carry : rules.worst.values()) {
            if (findings.hasRoomFor(CARRIED)) {
                rules.report(carry, findings);
            }
        }
        for (int r = 1; r < plate.rows().size() - 1; r++) {
            rules.blank(r, findings);
        }
    }

    /** Whether a thread is carried farther than is usual anywhere in the plate. */
    static boolean hasLongFloats(Plate plate) {
        ThreadRules rules = new ThreadRules(plate, Kinds.of(plate), CheckSettings.DEFAULT.carried());
        for (int r = 0; r < plate.rows().size() && rules.worst.isEmpty(); r++) {
            rules.carried(r);
        }
        return !rules.worst.isEmpty();
    }

    /**
     * One row. The last run of each colour is kept in an array; where a figure comes between two arms of another, the arm's
     * last run is kept aside.
     */
    private void carried(int row) {
        Arrays.fill(lastFigure, Figures.NONE);
        aside.clear();
        String cells = plate.rows().get(row).cells();
        for (int i = 0; i < cells.length(); i++) {
            char key = cells.charAt(i);
            if (key == Row.EMPTY || key >= KEYS) {
                continue;
            }
            int from = i;
            while (i + 1 < cells.length() && cells.charAt(i + 1) == key) {
                i++;
            }
            int figure = figures.at(row, plate.from() + from);
            int before = lastOf(key, figure);
            if (before != Figures.NONE && from - before - 1 > most) {
                note(figure, key, row, plate.from() + before, plate.from() + from);
            }
            lastFigure[key] = figure;
            lastCell[key] = i;
        }
    }

    /** The last cell of a colour in a figure; none where it did not come yet in this row. */
    private int lastOf(char key, int figure) {
        int other = lastFigure[key];
        if (other == figure || other == Figures.NONE) {
            return other == figure ? lastCell[key] : Figures.NONE;
        }
        if (figures.labels().width(other) > 1) {
            aside.put((long) other << Character.SIZE | key, lastCell[key]);
        }
        return aside.isEmpty() ? Figures.NONE : aside.getOrDefault((long) figure << Character.SIZE | key, Figures.NONE);
    }

    private void note(int figure, char key, int row, int from, int to) {
        worst.computeIfAbsent(figure, f -> new Carry()).note(key, row, from, to);
    }

    private void report(Carry carry, Findings findings) {
        findings.at(
                carry.row,
                carry.from + 1,
                Severity.WARNING,
                CARRIED,
                "The thread of " + name(carry.key) + " is carried behind "
                        + Words.count(carry.to - carry.from - 1, "pleat") + ", from pleat " + (carry.from + 1)
                        + " to pleat " + carry.to + others(carry) + "; end it off, or work the colour between.");
    }

    private String others(Carry carry) {
        if (carry.places == 1) {
            return "";
        }
        String also = carry.keys.stream()
                .filter(key -> key != carry.key)
                .map(this::name)
                .collect(Collectors.joining(", "));
        return " (and too far in " + Words.count(carry.places - 1, "other place") + " of this figure"
                + (also.isEmpty() ? "" : ", also " + also) + ")";
    }

    private String name(char key) {
        return plate.palette().get(key).map(Colour::name).orElse("colour " + key);
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
