package platekeep.model.compare;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import platekeep.model.plate.Row;

/**
 * How alike two rows are. Equal rows stand in one class; unlike rows share no colour at any place.
 *
 * <p>Scores are whole numbers so that two readings that are equally good are seen to be exactly so.
 */
final class Likeness {
    static final int EQUAL = 100_000;
    static final int EQUAL_BLANK = 60_000;
    /** A row wiped clean, or a blank one drawn on, is rather the same row than another one. */
    static final int BLANK_TO_DRAWN = 2_000;
    /** Rows less alike than this are two rows, not one that was edited. */
    private static final int LEAST = 30_000;
    /** For a row whose every cable has another colour: counts only where nothing else tells. */
    private static final int SAME_SHAPE = 4;

    private final Grid before;
    private final Grid after;
    private final int[] beforeClass;
    private final int[] afterClass;
    private final boolean[] blankClass;
    private final RowPairing.By by;

    /**
     * @param by what is scored: with {@link RowPairing.By#EQUALS} rows that are not equal score nothing, with {@link
     *     RowPairing.By#SHAPE} those that share no colour score by their shape
     */
    Likeness(Grid before, Grid after, RowPairing.By by) {
        this.by = by;
        this.before = before;
        this.after = after;
        Map<String, Integer> classes = new HashMap<>();
        beforeClass = classes(before, classes);
        afterClass = classes(after, classes);
        blankClass = new boolean[classes.size()];
        classes.forEach((cells, id) -> blankClass[id] = cells.chars().allMatch(c -> c == Row.EMPTY));
    }

    private static int[] classes(Grid grid, Map<String, Integer> classes) {
        int[] out = new int[grid.height()];
        for (int i = 0; i < out.length; i++) {
            out[i] = classes.computeIfAbsent(new String(grid.row(i)), k -> classes.size());
        }
        return out;
    }

    int beforeClass(int row) {
        return beforeClass[row];
    }

    int afterClass(int row) {
        return afterClass[row];
    }

    int classes() {
        return blankClass.length;
    }

    boolean equal(int beforeRow, int afterRow) {
        return beforeClass[beforeRow] == afterClass[afterRow];
    }

    /** For each row of the earlier plate the row equal to it, where both have cables and stand once in their plate; else -1. */
    int[] onlyEquals() {
        int[] counts = new int[2 * classes()];
        int[] there = new int[classes()];
        for (int rowClass : beforeClass) {
            counts[2 * rowClass]++;
        }
        for (int j = 0; j < afterClass.length; j++) {
            counts[2 * afterClass[j] + 1]++;
            there[afterClass[j]] = j;
        }
        return Arrays.stream(beforeClass)
                .map(c -> !blankClass[c] && counts[2 * c] == 1 && counts[2 * c + 1] == 1 ? there[c] : -1)
                .toArray();
    }

    boolean isBlank(int beforeRow) {
        return blankClass[beforeClass[beforeRow]];
    }

    /** 0 for two different rows, up to {@link #EQUAL}. */
    int score(int beforeRow, int afterRow) {
        if (equal(beforeRow, afterRow)) {
            return isBlank(beforeRow) ? EQUAL_BLANK : EQUAL;
        }
        if (by == RowPairing.By.EQUALS) {
            return 0;
        }
        if (isBlank(beforeRow) || blankClass[afterClass[afterRow]]) {
            return BLANK_TO_DRAWN;
        }
        Overlap overlap = overlap(beforeRow, afterRow);
        long score = (60_000L * overlap.agreeing() + 30_000L * overlap.both()) * 2 / overlap.either();
        if (overlap.agreeing() > 0 && score >= LEAST) {
            return (int) score;
        }
        return by == RowPairing.By.SHAPE ? shape(overlap) : 0;
    }

    /** 0 for rows that cover other places, up to {@link #SAME_SHAPE} for the very same ones, whatever the colours. */
    int shape(int beforeRow, int afterRow) {
        return by == RowPairing.By.EQUALS ? 0 : shape(overlap(beforeRow, afterRow));
    }

    private static int shape(Overlap overlap) {
        return overlap.either() == 0 || overlap.both() * 4 < overlap.either()
                ? 0
                : overlap.both() * 2 * SAME_SHAPE / overlap.either();
    }

    /**
     * @param agreeing places with the same colour in both rows
     * @param both places with any colour in both
     * @param either places with a colour, of both rows added up
     */
    private record Overlap(int agreeing, int both, int either) {}

    private Overlap overlap(int beforeRow, int afterRow) {
        char[] a = before.row(beforeRow);
        char[] b = after.row(afterRow);
        int agreeing = 0;
        int both = 0;
        int either = 0;
        for (int i = 0; i < a.length; i++) {
            boolean inA = a[i] != Row.EMPTY;
            boolean inB = b[i] != Row.EMPTY;
            either += (inA ? 1 : 0) + (inB ? 1 : 0);
            if (inA && inB) {
                both++;
                agreeing += a[i] == b[i] ? 1 : 0;
            }
        }
        return new Overlap(agreeing, both, either);
    }
}
