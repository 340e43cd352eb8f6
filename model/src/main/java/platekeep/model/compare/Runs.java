package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.plate.Row;

/**
 * Stretches of cables, looked up by their colours, and the motions that would bring them where equal stretches lie now.
 * Each equal stretch is a vote for one motion, weighed by its cables; the motion that a picture or figure truly made
 * gathers the votes of all its rows.
 */
final class Runs {
    /** A stretch that stands in more places than this says nothing about where it went. */
    private static final int MOST_PLACES = 40;
    /** How many of the best motions are looked at cell by cell. */
    private static final int MOST_MOTIONS = 12;

    private final Map<String, List<int[]>> places = new HashMap<>();
    private final Map<Motion, Integer> votes = new HashMap<>();

    /** Calls {@code each} with the first index and the end (excluded) of every stretch of cables in a row. */
    static void forEach(char[] row, Each each) {
        int i = 0;
        while (i < row.length) {
            if (row[i] == Row.EMPTY) {
                i++;
                continue;
            }
            int end = i;
            while (end < row.length && row[end] != Row.EMPTY) {
                end++;
            }
            each.run(i, end);
            i = end;
        }
    }

    interface Each {
        void run(int start, int end);
    }

    /** Remembers where a stretch lies in the later plate. */
    void add(String cells, int row, int start) {
        places.computeIfAbsent(cells, k -> new ArrayList<>(2)).add(new int[] {row, start});
    }

    /** Remembers where a stretch of that length lies in the later plate, whatever its colours. */
    void add(int length, int row, int start) {
        add(silhouette(length), row, start);
    }

    private static String silhouette(int length) {
        return "x".repeat(length);
    }

    /** Lets a stretch of the earlier plate vote, with the row where its own row lies in the later plate. */
    void vote(String cells, int row, int start) {
        vote(cells, new StringBuilder(cells).reverse().toString(), row, start);
    }

    /** The same for stretches that are known by their length alone. */
    void vote(int length, int row, int start) {
        vote(silhouette(length), silhouette(length), row, start);
    }

    private void vote(String cells, String turned, int row, int start) {
        for (int[] place : found(cells)) {
            add(new Motion(1, place[0] - row, 1, place[1] - start), cells.length());
            add(new Motion(-1, place[0] + row, 1, place[1] - start), cells.length());
        }
        int last = start + cells.length() - 1;
        for (int[] place : found(turned)) {
            add(new Motion(1, place[0] - row, -1, place[1] + last), cells.length());
            add(new Motion(-1, place[0] + row, -1, place[1] + last), cells.length());
        }
    }

    private List<int[]> found(String cells) {
        List<int[]> found = places.getOrDefault(cells, List.of());
        return found.size() > MOST_PLACES ? List.of() : found;
    }

    private void add(Motion motion, int weight) {
        votes.merge(motion, weight, Integer::sum);
    }

    /** Forgets the votes, keeps the places. */
    void clearVotes() {
        votes.clear();
    }

    /** The motions with most votes, plain moves before mirrorings, short ones before long ones. */
    List<Motion> best() {
        Comparator<Map.Entry<Motion, Integer>> byVotes = Map.Entry.comparingByValue();
        return votes.entrySet().stream()
                .sorted(byVotes.reversed().thenComparing(Map.Entry::getKey, PLAINEST))
                .limit(MOST_MOTIONS)
                .map(Map.Entry::getKey)
                .sorted(PLAINEST)
                .toList();
    }

    /** Plain moves first, then mirrored left to right, then top to bottom; short before long. */
    static final Comparator<Motion> PLAINEST = Comparator.comparingInt(
                    (Motion m) -> (m.rowSign() < 0 ? 2 : 0) + (m.positionSign() < 0 ? 1 : 0))
            .thenComparingInt(m -> Math.abs(m.rowShift()) + Math.abs(m.positionShift()))
            .thenComparingInt(Motion::rowShift)
            .thenComparingInt(Motion::positionShift);
}
