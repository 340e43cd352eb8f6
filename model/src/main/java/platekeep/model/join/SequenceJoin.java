package platekeep.model.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import platekeep.model.compare.Increasing;

/**
 * Joins two changed orders of one sequence: rows of a chart, notes, lines. Elements are numbers: those of the earlier
 * sequence 0 to n - 1 in its order, new ones from n.
 *
 * <p>Elements of the earlier sequence that kept their order on both sides are the spine, those taken out included. What a
 * side put in or moved stands between two elements of the spine; where it took out the elements around, anywhere between
 * them. If both sides put something at places that may be the same, the {@link Policy} decides.
 */
final class SequenceJoin {

    /** What to do where the order does not say. */
    interface Policy {
        /** Whether an element of the earlier sequence is in the result. */
        boolean stays(int element);

        /** Whether two runs at one place are the same thing. */
        boolean same(List<Integer> mine, List<Integer> theirs);

        /** Both sides put something at one place: all of it, in the order that it shall have. */
        List<Integer> both(List<Integer> mine, List<Integer> theirs, int above);

        /** Both sides moved an element to different places; it stays where it was. */
        void movedTwice(int element);
    }

    private final int n;
    private final int[][] sequences;
    private final Policy policy;
    private final boolean[][] moved = new boolean[2][];
    private final boolean[] fixed;
    private final List<Integer> result = new ArrayList<>();
    /** What one side put in right behind an element that the other side moved together with the next one. */
    private final Map<Integer, List<Integer>> within = new HashMap<>();

    /** A run of elements that a side put between two elements of the spine: anywhere in gaps first to last. */
    private record Run(int firstGap, int lastGap, List<Integer> elements) {
        boolean meets(Run other) {
            return firstGap <= other.lastGap && other.firstGap <= lastGap;
        }
    }

    SequenceJoin(int n, int[] mine, int[] theirs, Policy policy) {
        this.n = n;
        this.sequences = new int[][] {mine, theirs};
        this.policy = policy;
        this.fixed = new boolean[n];
        for (int s = 0; s < 2; s++) {
            moved[s] = movedIn(sequences[s]);
        }
        join();
    }

    List<Integer> result() {
        return result;
    }

    private boolean[] movedIn(int[] sequence) {
        int[] old = Arrays.stream(sequence).filter(e -> e < n && !fixed[e]).toArray();
        boolean[] kept = Increasing.longest(old);
        boolean[] out = new boolean[n];
        for (int k = 0; k < old.length; k++) {
            out[old[k]] = !kept[k];
        }
        return out;
    }

    private boolean onSpine(int element) {
        return element < n && (fixed[element] || !moved[0][element] && !moved[1][element]);
    }

    private void join() {
        List<Run> mine = runs(0);
        List<Run> theirs = runs(1);
        Set<Integer> torn = movedApart(mine, theirs);
        if (!torn.isEmpty()) {
            torn.stream().sorted().forEach(element -> {
                fixed[element] = true;
                policy.movedTwice(element);
            });
            within.clear();
            mine = runs(0);
            theirs = runs(1);
        }
        emit(mine, theirs);
        List<Integer> ringed = ringed();
        if (!ringed.isEmpty()) {
            ringed.forEach(element -> {
                fixed[element] = true;
                policy.movedTwice(element);
            });
            result.clear();
            moved[0] = movedIn(sequences[0]);
            moved[1] = movedIn(sequences[1]);
            within.clear();
            emit(runs(0), runs(1));
        }
    }

    /**
     * Elements that both sides moved past another one, where no order pleases both: mine past one neighbour, theirs past
     * the other, so that what is asked for goes in a ring. A move by one place can be read as its neighbour's, so this
     * shows only in the result.
     */
    private List<Integer> ringed() {
        if (noneMoved(0) || noneMoved(1)) {
            return List.of();
        }
        int[] joined = places(result.stream().mapToInt(e -> e).toArray());
        int[][] own = {places(sequences[0]), places(sequences[1])};
        List<Integer> ringed = new ArrayList<>();
        for (int e = 0; e < n; e++) {
            if (!fixed[e] && passed(e, own[0], own[1]) && passed(e, own[1], own[0]) && slighted(e, own, joined)) {
                ringed.add(e);
            }
        }
        return ringed;
    }

    private boolean noneMoved(int s) {
        for (boolean m : moved[s]) {
            if (m) {
                return false;
            }
        }
        return true;
    }

    /** The place of each element of the earlier sequence, -1 for one that is not there. */
    private int[] places(int[] sequence) {
        int[] place = new int[n];
        Arrays.fill(place, -1);
        for (int i = 0; i < sequence.length; i++) {
            if (sequence[i] < n) {
                place[sequence[i]] = i;
            }
        }
        return place;
    }

    /** Whether one side alone brought the element past some other. */
    private boolean passed(int e, int[] side, int[] other) {
        for (int f = 0; f < n; f++) {
            if (isPast(e, f, side) && !isPast(e, f, other)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the result leaves undone that one side alone brought the element past another. */
    private boolean slighted(int e, int[][] own, int[] joined) {
        for (int f = 0; f < n; f++) {
            boolean asked = isPast(e, f, own[0]) != isPast(e, f, own[1]);
            if (asked && isThere(e, f, own[0]) && isThere(e, f, own[1]) && !isPast(e, f, joined)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isThere(int e, int f, int[] place) {
        return place[e] >= 0 && place[f] >= 0;
    }

    private static boolean isPast(int e, int f, int[] place) {
        return e != f && isThere(e, f, place) && (e < f) != (place[e] < place[f]);
    }

    /** What the side put in or moved itself; what only the other side moved is left to that one's runs. */
    private List<Run> runs(int s) {
        List<Run> runs = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        int last = -1;
        for (int i = 0; i < sequences[s].length; i++) {
            int element = sequences[s][i];
            int end = endOfNew(s, i);
            if (end > i && isWithinMoved(s, i, end)) {
                within.put(
                        sequences[s][i - 1],
                        Arrays.stream(sequences[s], i, end).boxed().toList());
                i = end - 1;
            } else if (onSpine(element)) {
                // an element held in place against both moves does not bound a run
                if (!fixed[element]) {
                    close(runs, open, last + 1, element);
                    open = new ArrayList<>();
                    last = element;
                }
            } else if (element >= n || moved[s][element] && policy.stays(element)) {
                open.add(element);
            }
        }
        close(runs, open, last + 1, n);
        return runs;
    }

    /** The end of the run of new elements that begins at an index; the index itself where none does. */
    private int endOfNew(int s, int index) {
        int end = index;
        while (end < sequences[s].length && sequences[s][end] >= n) {
            end++;
        }
        return end;
    }

    /** Whether a run of new elements stands between two that the other side alone moved and kept side by side. */
    private boolean isWithinMoved(int s, int start, int end) {
        if (start == 0 || end == sequences[s].length) {
            return false;
        }
        int above = sequences[s][start - 1];
        int below = sequences[s][end];
        boolean moved = isMovedBy(1 - s, above) && isMovedBy(1 - s, below);
        int there = moved ? placeOf(1 - s, above) : -1;
        return there >= 0
                && there + 1 < sequences[1 - s].length
                && sequences[1 - s][there + 1] == below
                && policy.stays(above)
                && policy.stays(below);
    }

    private boolean isMovedBy(int s, int element) {
        return element < n && !fixed[element] && moved[s][element] && !moved[1 - s][element];
    }

    private int placeOf(int s, int element) {
        for (int i = 0; i < sequences[s].length; i++) {
            if (sequences[s][i] == element) {
                return i;
            }
        }
        return -1;
    }

    private static void close(List<Run> runs, List<Integer> open, int firstGap, int lastGap) {
        if (!open.isEmpty()) {
            runs.add(new Run(firstGap, lastGap, open));
        }
    }

    private Set<Integer> movedApart(List<Run> mine, List<Run> theirs) {
        Map<Integer, Run> places = new HashMap<>();
        mine.forEach(run -> run.elements().forEach(e -> places.put(e, run)));
        Set<Integer> torn = new HashSet<>();
        for (Run run : theirs) {
            for (int e : run.elements()) {
                if (e < n && places.containsKey(e) && !places.get(e).meets(run)) {
                    torn.add(e);
                }
            }
        }
        return torn;
    }

    private void emit(List<Run> mine, List<Run> theirs) {
        Map<Integer, List<List<Integer>>> atGap = new HashMap<>();
        int m = 0;
        int t = 0;
        while (m < mine.size() || t < theirs.size()) {
            int m0 = m;
            int t0 = t;
            if (t >= theirs.size()
                    || m < mine.size()
                            && mine.get(m).firstGap() <= theirs.get(t).firstGap()) {
                m++;
            } else {
                t++;
            }
            boolean grown = true;
            while (grown) {
                int before = m + t;
                m = reach(mine, m, theirs, t0, t);
                t = reach(theirs, t, mine, m0, m);
                grown = m + t > before;
            }
            put(atGap, mine.subList(m0, m), theirs.subList(t0, t));
        }
        for (int gap = 0; gap <= n; gap++) {
            atGap.getOrDefault(gap, List.of())
                    .forEach(run -> run.forEach(element -> {
                        result.add(element);
                        result.addAll(within.getOrDefault(element, List.of()));
                    }));
            if (gap < n && onSpine(gap) && policy.stays(gap)) {
                result.add(gap);
            }
        }
    }

    /** How far the runs of one side meet those of the other side's group. */
    private static int reach(List<Run> runs, int next, List<Run> others, int from, int to) {
        int reached = next;
        while (reached < runs.size() && meetsAny(runs.get(reached), others.subList(from, to))) {
            reached++;
        }
        return reached;
    }

    private static boolean meetsAny(Run run, List<Run> others) {
        return others.stream().anyMatch(run::meets);
    }

    private void put(Map<Integer, List<List<Integer>>> atGap, List<Run> mine, List<Run> theirs) {
        if (mine.isEmpty() || theirs.isEmpty()) {
            for (Run run : mine.isEmpty() ? theirs : mine) {
                atGap.computeIfAbsent(run.firstGap(), g -> new ArrayList<>()).add(run.elements());
            }
            return;
        }
        int gap = Math.max(mine.get(0).firstGap(), theirs.get(0).firstGap());
        List<Integer> a = elements(mine);
        List<Integer> b = elements(theirs);
        atGap.computeIfAbsent(gap, g -> new ArrayList<>()).add(together(a, b, gap - 1));
    }

    /** Two runs at one place. What both moved there is no question: it parts the rest into stretches, each joined alone. */
    private List<Integer> together(List<Integer> a, List<Integer> b, int above) {
        List<Integer> ownA = without(a, b);
        List<Integer> ownB = without(b, a);
        List<Integer> sharedA = without(a, ownA);
        List<Integer> sharedB = without(b, ownB);
        if (!sharedA.equals(sharedB)) {
            List<Integer> out = new ArrayList<>(Arrays.compare(array(sharedA), array(sharedB)) < 0 ? sharedA : sharedB);
            out.addAll(stretch(ownA, ownB, above));
            return out;
        }
        List<Integer> out = new ArrayList<>();
        int i = 0;
        int j = 0;
        for (int shared : sharedA) {
            out.addAll(stretch(a.subList(i, a.indexOf(shared)), b.subList(j, b.indexOf(shared)), above));
            out.add(shared);
            i = a.indexOf(shared) + 1;
            j = b.indexOf(shared) + 1;
        }
        out.addAll(stretch(a.subList(i, a.size()), b.subList(j, b.size()), above));
        return out;
    }

    private List<Integer> stretch(List<Integer> a, List<Integer> b, int above) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() ? b : a;
        }
        return policy.same(a, b) ? a : policy.both(a, b, above);
    }

    private static int[] array(List<Integer> elements) {
        return elements.stream().mapToInt(Integer::intValue).toArray();
    }

    private static List<Integer> elements(List<Run> runs) {
        return runs.stream().flatMap(r -> r.elements().stream()).toList();
    }

    private static List<Integer> without(List<Integer> elements, List<Integer> others) {
        return elements.stream().filter(e -> !others.contains(e)).toList();
    }
}
