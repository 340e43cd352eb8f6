package platekeep.client.compare;

import java.util.Arrays;
import java.util.Optional;

/**
 * How often the two charts take turns. All paces stay far below three changes a second, above which a flickering
 * picture can harm people (WCAG 2.2, success criterion 2.3.1, "three flashes or below threshold").
 */
enum Pace {
    BY_HAND("By hand", 0),
    CALM("Calm", 3000),
    STEADY("Steady", 1500),
    BRISK("Brisk", 800);

    private final String word;
    private final int millis;

    Pace(String word, int millis) {
        this.word = word;
        this.millis = millis;
    }

    String word() {
        return word;
    }

    /** Between two turns; 0: they are turned by hand only. */
    int millis() {
        return millis;
    }

    static Optional<Pace> of(String word) {
        return Arrays.stream(values()).filter(pace -> pace.word.equals(word)).findFirst();
    }
}
