package platekeep.client.many;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;

/**
 * A measured figure beside its yardstick.
 *
 * @param name what was measured
 * @param ours what it took, in milliseconds unless the name says otherwise
 * @param yardstick beside what, in words; empty where there is only a bound
 * @param theirs what that took in the same run; 0 where there is only a bound
 * @param aim the most that {@code ours / theirs} should be, or {@code ours} itself where there is only a bound
 */
record Figure(String name, double ours, String yardstick, double theirs, double aim) {

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    static Figure beside(String name, double ours, String yardstick, double theirs, double aim) {
        return new Figure(name, ours, yardstick, theirs, aim);
    }

    static Figure below(String name, double ours, double aim) {
        return new Figure(name, ours, "", 0, aim);
    }

    static final String HEAD = String.format(
            "%-58s %10s  %-44s %10s %8s %8s",
            "figure (ms unless it says otherwise)", "ours", "yardstick", "its", "ratio", "aim");

    /** One line of the table; a miss is marked. */
    String line() {
        double value = theirs == 0 ? ours : ours / theirs;
        String ratio = theirs == 0 ? "" : String.format(Locale.ROOT, "%.3f", value);
        String its = theirs == 0 ? "" : String.format(Locale.ROOT, "%.3f", theirs);
        String miss = aim > 0 && value > aim ? "  missed" : "";
        String most = aim > 0 ? String.format(Locale.ROOT, "%.2f", aim) : "";
        return String.format(
                Locale.ROOT, "%-58s %10.3f  %-44s %10s %8s %8s%s", name, ours, yardstick, its, ratio, most, miss);
    }

    static double median(double[] all) {
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** What 19 of 20 stay under. */
    static double mostOf(double[] all) {
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        return sorted[(sorted.length - 1) * 19 / 20];
    }

    /** Something to be timed. */
    interface Work {
        void run() throws Exception;
    }

    /** Ends what is measured where it did not come to what it should. */
    static void require(boolean is) throws IOException {
        if (!is) {
            throw new IOException("what was measured did not do what it should");
        }
    }

    static double millis(Work work) throws Exception {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    /** Processor time of this thread, for work that runs on it alone: what else the machine does counts less. */
    static double processorMillis(Work work) throws Exception {
        long start = CLOCK.getCurrentThreadCpuTime();
        work.run();
        return (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
    }

    /** Times two things in turn on one core; gives the medians. */
    static double[] onOneCore(int turns, Work ours, Work theirs) throws Exception {
        double[] a = new double[turns];
        double[] b = new double[turns];
        for (int i = 0; i < turns; i++) {
            a[i] = processorMillis(ours);
            b[i] = processorMillis(theirs);
        }
        return new double[] {median(a), median(b)};
    }

    /** As {@link #inTurn}, several of each in a row, as they come in life. */
    static double[] inRows(int rows, int turns, Work ours, Work theirs) throws Exception {
        double[] a = new double[rows * turns];
        double[] b = new double[rows * turns];
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i < turns; i++) {
                a[row * turns + i] = millis(ours);
            }
            for (int i = 0; i < turns; i++) {
                b[row * turns + i] = millis(theirs);
            }
        }
        return new double[] {median(a), median(b)};
    }

    /** Times two things in turn, so that whatever else the machine does meets both; gives the medians. */
    static double[] inTurn(int turns, Work ours, Work theirs) throws Exception {
        double[] a = new double[turns];
        double[] b = new double[turns];
        for (int i = 0; i < turns; i++) {
            a[i] = millis(ours);
            b[i] = millis(theirs);
        }
        return new double[] {median(a), median(b)};
    }
}
