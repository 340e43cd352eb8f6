package platekeep.client.ui;

import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.List;

/** Fits texts that we paint ourselves into their room. */
public final class Texts {
    private static final String DOTS = "…";

    private Texts() {}

    /** The first line of a text, cut short with dots where it is too long. */
    public static String cut(String text, FontMetrics metrics, int width) {
        String line = text.lines().findFirst().orElse("");
        if (metrics.stringWidth(line) <= width) {
            return line;
        }
        int end = line.length();
        while (end > 0 && metrics.stringWidth(line.substring(0, end) + DOTS) > width) {
            end--;
        }
        return line.substring(0, end).stripTrailing() + DOTS;
    }

    /** A text in at most so many lines, broken between words; the last is cut short where more does not fit. */
    public static List<String> wrapped(String text, FontMetrics metrics, int width, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty() && lines.size() < most - 1 && metrics.stringWidth(rest) > width) {
            int end = rest.length();
            while (end > 0 && metrics.stringWidth(rest.substring(0, end)) > width) {
                int before = rest.lastIndexOf(' ', end - 1);
                end = before <= 0 ? end - 1 : before;
            }
            lines.add(rest.substring(0, Math.max(1, end)).stripTrailing());
            rest = rest.substring(Math.max(1, end)).stripLeading();
        }
        if (!rest.isEmpty()) {
            lines.add(cut(rest, metrics, width));
        }
        return lines;
    }
}
