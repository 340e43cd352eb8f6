package platekeep.model.compare;

/** The longest increasing subsequence: of rows that changed their order, the most that can be said to have stayed. */
public final class Increasing {

    private Increasing() {}

    /**
     * Which of the numbers belong to a longest strictly increasing subsequence; of several longest ones always the same.
     * Patience sorting (Schensted 1961), n log n.
     */
    public static boolean[] longest(int[] numbers) {
        int n = numbers.length;
        int[] tail = new int[n];
        int[] previous = new int[n];
        int length = 0;
        for (int i = 0; i < n; i++) {
            int low = 0;
            int high = length;
            while (low < high) {
                int mid = (low + high) >>> 1;
                if (numbers[tail[mid]] < numbers[i]) {
                    low = mid + 1;
                } else {
                    high = mid;
                }
            }
            previous[i] = low == 0 ? -1 : tail[low - 1];
            tail[low] = i;
            length = Math.max(length, low + 1);
        }
        boolean[] kept = new boolean[n];
        for (int i = length == 0 ? -1 : tail[length - 1]; i >= 0; i = previous[i]) {
            kept[i] = true;
        }
        return kept;
    }
}
