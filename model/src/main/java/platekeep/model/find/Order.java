package platekeep.model.find;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Function;

/**
 * In which order plates are given.
 *
 * @param by what decides; among equals the title does
 * @param way which end comes first
 */
public record Order(By by, Way way) {

    /** The best answers first; without words by title. */
    public static final Order BEST = new Order(By.BEST, Way.UP);

    /** What decides the order. */
    public enum By {
        BEST(Comparator.comparing(summary -> "")),
        TITLE(text(Summary::title)),
        NUMBER(Comparator.comparing((Summary s) -> s.number().isEmpty())
                .thenComparing(s -> s.number().orElse(""), By::natural)),
        SERIES(text(s -> String.join(", ", s.series()))),
        AGES(Comparator.comparing((Summary s) -> s.ages().isEmpty()
                ? Integer.MAX_VALUE
                : s.ages().get(0).ordinal() * 10 + s.ages().size())),
        THEMES(text(s -> String.join(", ", s.themes()))),
        PLEATS(Comparator.comparingInt(Summary::pleats)),
        ROWS(Comparator.comparingInt(Summary::rows)),
        COLOURS(Comparator.comparingInt(s -> s.colours().size())),
        DESIGNERS(text(s -> String.join(", ", s.designers()))),
        YEAR(Comparator.comparingInt(Summary::lastYear)),
        STATE(Comparator.comparing(s -> s.state().map(Enum::ordinal).orElse(-1))),
        LIBRARY(text(Summary::library));

        private final Comparator<Summary> order;

        By(Comparator<Summary> order) {
            this.order = order;
        }

        private static Comparator<Summary> text(Function<Summary, String> text) {
            return Comparator.comparing((Summary s) -> text.apply(s).isEmpty())
                    .thenComparing(s -> text.apply(s).toLowerCase(Locale.ROOT), By::natural);
        }

        /** Compares digits by the number that they make, so that H-7 comes before H-10. */
        static int natural(String a, String b) {
            int i = 0;
            int j = 0;
            while (i < a.length() && j < b.length()) {
                int endA = digits(a, i);
                int endB = digits(b, j);
                int order = endA > i && endB > j
                        ? number(a.substring(i, endA), b.substring(j, endB))
                        : Character.compare(a.charAt(i), b.charAt(j));
                if (order != 0) {
                    return order;
                }
                i = Math.max(endA, i + 1);
                j = Math.max(endB, j + 1);
            }
            return Integer.compare(a.length() - i, b.length() - j);
        }

        private static int digits(String text, int from) {
            int end = from;
            while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
                end++;
            }
            return end;
        }

        private static int number(String a, String b) {
            String x = a.replaceFirst("^0+", "");
            String y = b.replaceFirst("^0+", "");
            return x.length() != y.length() ? Integer.compare(x.length(), y.length()) : x.compareTo(y);
        }
    }

    /** Which end comes first. */
    public enum Way {
        UP,
        DOWN;

        public Way other() {
            return this == UP ? DOWN : UP;
        }
    }

    /** The whole order, the same for everybody: nothing is left to chance among equals. */
    Comparator<Summary> comparator() {
        Comparator<Summary> first = way == Way.UP ? by.order : by.order.reversed();
        return first.thenComparing(By.TITLE.order).thenComparing(Summary::key);
    }
}
