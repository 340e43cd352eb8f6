package platekeep.model.plate;

import java.util.List;
import java.util.Optional;

/** Whom a plate is for, youngest first; months are from (included) to (excluded). */
public enum Age {
    NEWBORN("newborn", 0, 3),
    INFANT("infant", 3, 12),
    TODDLER("toddler", 12, 36),
    CHILD("child", 36, 96),
    OLDER_CHILD("older child", 96, 168),
    GROWN_UP("grown-up", 168, Integer.MAX_VALUE);

    private static final List<Age> ALL = List.of(values());

    private final String word;
    private final int fromMonths;
    private final int toMonths;

    Age(String word, int fromMonths, int toMonths) {
        this.word = word;
        this.fromMonths = fromMonths;
        this.toMonths = toMonths;
    }

    /** The word in the text of a plate and on screen. */
    public String word() {
        return word;
    }

    /** Whether somebody of this many months is of this age. */
    public boolean covers(int months) {
        return months >= fromMonths && months < toMonths;
    }

    /** Whether this age, or a part of it, lies under so many months. */
    public boolean under(int months) {
        return fromMonths < months;
    }

    public static Optional<Age> of(String word) {
        for (Age age : ALL) {
            if (age.word.equals(word)) {
                return Optional.of(age);
            }
        }
        return Optional.empty();
    }
}
