package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Pairs two sequences of rows in order so that what is alike comes together, and tells where that is not certain.
 *
 * <p>Origin: global alignment by dynamic programming (Needleman and Wunsch 1970) with likeness as the score of a pair
 * and nothing for a gap, run forwards and backwards. A pair lies on some best alignment where the two runs meet at the
 * best score; a row with more than one such partner (or none besides one) is <em>uncertain</em>.
 *
 * <p>Bound: equal ends are cut off first (pairing equal rows at an end is never worse), so ordinary edits cost little
 * more than reading the rows; beyond {@link #MOST_CELLS} the rest is first split at equal rows that stand once on each
 * side.
 */
final class Alignment {
    /** The largest table of pairs that is looked at as a whole. */
    private static final long MOST_CELLS = 6_000_000;
    /** Up to this many pairs of different rows are compared cell by cell; above it only equal rows score. */
    private static final long MOST_SCORED = 250_000;

    private final Likeness likeness;
    private final int[] before;
    private final int[] after;
    private final Allowed allowed;
    private final int[] partner;
    private final boolean[] uncertainBefore;
    private final boolean[] uncertainAfter;

    /** Whether two rows may be one at all. */
    interface Allowed {
        boolean pair(int beforeRow, int afterRow);
    }

    /** Aligns rows of one plate (indexes, top first) with rows of another. */
    Alignment(Likeness likeness, int[] before, int[] after, Allowed allowed) {
        this.likeness = likeness;
        this.before = before;
        this.after = after;
        this.allowed = allowed;
        partner = new int[before.length];
        Arrays.fill(partner, -1);
        uncertainBefore = new boolean[before.length];
        uncertainAfter = new boolean[after.length];
        solve();
    }

    /** For each row of the first sequence the index into the second, or -1. */
    int[] partners() {
        return partner;
    }

    boolean uncertainBefore(int k) {
        return uncertainBefore[k];
    }

    boolean uncertainAfter(int k) {
        return uncertainAfter[k];
    }

    private boolean same(int i, int j) {
        return likeness.equal(before[i], after[j]) && allowed.pair(before[i], after[j]);
    }

    private void solve() {
        int top = 0;
        int most = Math.min(before.length, after.length);
        while (top < most && same(top, top)) {
            partner[top] = top;
            top++;
        }
        int endB = before.length;
        int endA = after.length;
        while (endB > top && endA > top && same(endB - 1, endA - 1)) {
            partner[--endB] = --endA;
        }
        if (top == endB && top == endA) {
            return;
        }
        int widenTop = widenTop(top, endB, endA);
        int widenEnd = widenEnd(top, endB, endA);
        split(new Window(top - widenTop, endB + widenEnd, top - widenTop, endA + widenEnd));
    }

    /** How many of the equal rows above could change places with a row inside. */
    private int widenTop(int top, int endB, int endA) {
        boolean[] inside = inside(top, endB, endA);
        int n = 0;
        while (n < top && inside[likeness.beforeClass(before[top - n - 1])]) {
            n++;
        }
        return n;
    }

    private int widenEnd(int top, int endB, int endA) {
        boolean[] inside = inside(top, endB, endA);
        int n = 0;
        while (endB + n < before.length && inside[likeness.beforeClass(before[endB + n])]) {
            n++;
        }
        return n;
    }

    private boolean[] inside(int top, int endB, int endA) {
        boolean[] inside = new boolean[likeness.classes()];
        for (int i = top; i < endB; i++) {
            inside[likeness.beforeClass(before[i])] = true;
        }
        for (int j = top; j < endA; j++) {
            inside[likeness.afterClass(after[j])] = true;
        }
        return inside;
    }

    /** Half-open ranges of both sequences. */
    private record Window(int b0, int b1, int a0, int a1) {
        long cells() {
            return (long) (b1 - b0 + 1) * (a1 - a0 + 1);
        }
    }

    private void split(Window w) {
        for (int i = w.b0(); i < w.b1(); i++) {
            partner[i] = -1;
        }
        if (w.cells() <= MOST_SCORED) {
            new Table(w).settle();
            return;
        }
        List<int[]> anchors = anchors(w);
        if (anchors.isEmpty()) {
            if (w.cells() <= MOST_CELLS) {
                new Table(w).settle();
            } else {
                inOrder(w);
            }
            return;
        }
        int b = w.b0();
        int a = w.a0();
        for (int[] anchor : anchors) {
            splitAgain(new Window(b, anchor[0], a, anchor[1]));
            partner[anchor[0]] = anchor[1];
            b = anchor[0] + 1;
            a = anchor[1] + 1;
        }
        splitAgain(new Window(b, w.b1(), a, w.a1()));
    }

    private void splitAgain(Window w) {
        if (w.b0() < w.b1() && w.a0() < w.a1()) {
            split(w);
        }
    }

    /** Equal rows that stand once on each side, as far as they are in the same order (longest such chain). */
    private List<int[]> anchors(Window w) {
        Map<Integer, int[]> seen = new HashMap<>();
        for (int i = w.b0(); i < w.b1(); i++) {
            int[] s = seen.computeIfAbsent(likeness.beforeClass(before[i]), k -> new int[] {0, 0, -1, -1});
            s[0]++;
            s[2] = i;
        }
        for (int j = w.a0(); j < w.a1(); j++) {
            int[] s = seen.computeIfAbsent(likeness.afterClass(after[j]), k -> new int[] {0, 0, -1, -1});
            s[1]++;
            s[3] = j;
        }
        List<int[]> once = new ArrayList<>();
        for (int i = w.b0(); i < w.b1(); i++) {
            int[] s = seen.get(likeness.beforeClass(before[i]));
            if (s[0] == 1 && s[1] == 1 && same(i, s[3])) {
                once.add(new int[] {i, s[3]});
            }
        }
        boolean[] kept = Increasing.longest(once.stream().mapToInt(p -> p[1]).toArray());
        List<int[]> out = new ArrayList<>();
        for (int k = 0; k < once.size(); k++) {
            if (kept[k]) {
                out.add(once.get(k));
            }
        }
        return out;
    }

    /** Too large to weigh: rows that are alike are paired as they come. */
    private void inOrder(Window w) {
        int j = w.a0();
        for (int i = w.b0(); i < w.b1() && j < w.a1(); i++) {
            uncertainBefore[i] = true;
            if (allowed.pair(before[i], after[j]) && likeness.score(before[i], after[j]) > 0) {
                uncertainAfter[j] = true;
                partner[i] = j++;
            }
        }
    }

    /** How alike the rows of a window are; rows with equal cells are compared once. */
    private final class Scores {
        private static final int UNKNOWN = -1;
        private final Window w;
        private final int[] beforeKind;
        private final int[] afterKind;
        private final int afterKinds;
        private final int[] known;

        Scores(Window w) {
            this.w = w;
            Map<Integer, Integer> beforeNumbers = new HashMap<>();
            Map<Integer, Integer> afterNumbers = new HashMap<>();
            beforeKind = IntStream.range(w.b0(), w.b1())
                    .map(i -> number(beforeNumbers, likeness.beforeClass(before[i])))
                    .toArray();
            afterKind = IntStream.range(w.a0(), w.a1())
                    .map(j -> number(afterNumbers, likeness.afterClass(after[j])))
                    .toArray();
            afterKinds = afterNumbers.size();
            long pairs = (long) beforeNumbers.size() * afterKinds;
            known = new int[pairs <= MOST_SCORED ? (int) pairs : 0];
            Arrays.fill(known, UNKNOWN);
        }

        private static int number(Map<Integer, Integer> numbers, int rowClass) {
            return numbers.computeIfAbsent(rowClass, c -> numbers.size());
        }

        /** For two rows at one place of as many: those that cover the same places but share no colour score a little. */
        int inPlace(int i, int j) {
            return allowed.pair(before[i], after[j]) ? likeness.shape(before[i], after[j]) : 0;
        }

        /** 0 for two rows that may not be one, and, where there are too many kinds of rows, for all that are not equal. */
        int of(int i, int j) {
            if (!allowed.pair(before[i], after[j])) {
                return 0;
            }
            if (known.length == 0) {
                return likeness.equal(before[i], after[j]) ? likeness.score(before[i], after[j]) : 0;
            }
            int pair = beforeKind[i - w.b0()] * afterKinds + afterKind[j - w.a0()];
            known[pair] = known[pair] == UNKNOWN ? likeness.score(before[i], after[j]) : known[pair];
            return known[pair];
        }
    }

    /** The table of best scores over a window, forwards and backwards. */
    private final class Table {
        private final Window w;
        private final int n;
        private final int m;
        private final int[] score;
        private final int[] forward;
        private final int[] backward;

        Table(Window w) {
            this.w = w;
            n = w.b1() - w.b0();
            m = w.a1() - w.a0();
            score = new int[n * m];
            Scores scores = new Scores(w);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < m; j++) {
                    score[i * m + j] = scores.of(w.b0() + i, w.a0() + j);
                }
            }
            for (int i = 0; i < n && n == m; i++) {
                score[i * m + i] = Math.max(score[i * m + i], scores.inPlace(w.b0() + i, w.a0() + i));
            }
            forward = new int[(n + 1) * (m + 1)];
            backward = new int[(n + 1) * (m + 1)];
            fill();
        }

        private int at(int i, int j) {
            return i * (m + 1) + j;
        }

        private void fill() {
            for (int i = 1; i <= n; i++) {
                for (int j = 1; j <= m; j++) {
                    int skip = Math.max(forward[at(i - 1, j)], forward[at(i, j - 1)]);
                    int s = score[(i - 1) * m + j - 1];
                    forward[at(i, j)] = s > 0 ? Math.max(skip, forward[at(i - 1, j - 1)] + s) : skip;
                }
            }
            for (int i = n - 1; i >= 0; i--) {
                for (int j = m - 1; j >= 0; j--) {
                    int skip = Math.max(backward[at(i + 1, j)], backward[at(i, j + 1)]);
                    int s = score[i * m + j];
                    backward[at(i, j)] = s > 0 ? Math.max(skip, backward[at(i + 1, j + 1)] + s) : skip;
                }
            }
        }

        private boolean best(int i, int j) {
            int s = score[i * m + j];
            return s > 0 && forward[at(i, j)] + s + backward[at(i + 1, j + 1)] == forward[at(n, m)];
        }

        void settle() {
            trace();
            markUncertain();
            pairWhatIsLeft();
        }

        /** Of equally good readings the one that pairs what stands further up; a copy is taken to stand below. */
        private void trace() {
            int i = 0;
            int j = 0;
            while (i < n && j < m) {
                int s = score[i * m + j];
                int here = backward[at(i, j)];
                if (s > 0 && here == backward[at(i + 1, j + 1)] + s) {
                    partner[w.b0() + i++] = w.a0() + j++;
                } else if (here == backward[at(i + 1, j)]) {
                    i++;
                } else {
                    j++;
                }
            }
        }

        private void markUncertain() {
            int[] choicesBefore = new int[n];
            int[] choicesAfter = new int[m];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < m; j++) {
                    if (best(i, j)) {
                        choicesBefore[i]++;
                        choicesAfter[j]++;
                    }
                }
            }
            for (int i = 0; i < n; i++) {
                uncertainBefore[w.b0() + i] = choicesBefore[i] + (choicesBefore[i] > 0 && mayBeLeftOut(i) ? 1 : 0) > 1;
            }
            for (int j = 0; j < m; j++) {
                uncertainAfter[w.a0() + j] = choicesAfter[j] + (choicesAfter[j] > 0 && mayBeNew(j) ? 1 : 0) > 1;
            }
        }

        private boolean mayBeLeftOut(int i) {
            for (int j = 0; j <= m; j++) {
                if (forward[at(i, j)] + backward[at(i + 1, j)] == forward[at(n, m)]) {
                    return true;
                }
            }
            return false;
        }

        private boolean mayBeNew(int j) {
            for (int i = 0; i <= n; i++) {
                if (forward[at(i, j)] + backward[at(i, j + 1)] == forward[at(n, m)]) {
                    return true;
                }
            }
            return false;
        }

        /**
         * As many rows left on each side between two pairs: they were drawn or coloured anew, as certainly as the two
         * are a pair.
         */
        private void pairWhatIsLeft() {
            int lastAfter = w.a0() - 1;
            int lastBefore = w.b0() - 1;
            for (int i = w.b0(); i <= w.b1(); i++) {
                if (i < w.b1() && partner[i] < 0) {
                    continue;
                }
                int j = i < w.b1() ? partner[i] : w.a1();
                boolean certain = certain(lastBefore) && (i == w.b1() || certain(i));
                for (int k = 1; i - lastBefore == j - lastAfter && k < i - lastBefore; k++) {
                    pairInPlace(lastBefore + k, lastAfter + k, certain);
                }
                lastBefore = i;
                lastAfter = j;
            }
        }

        private boolean certain(int i) {
            return i < w.b0() || !uncertainBefore[i];
        }

        private void pairInPlace(int i, int j, boolean certain) {
            if (allowed.pair(before[i], after[j])) {
                partner[i] = j;
                uncertainBefore[i] |= !certain;
                uncertainAfter[j] |= !certain;
            }
        }
    }
}
