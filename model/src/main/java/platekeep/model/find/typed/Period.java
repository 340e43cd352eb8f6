package platekeep.model.find.typed;

import java.time.LocalDate;
import java.util.List;

/**
 * A stretch of days, both ends included.
 *
 * @param from {@link LocalDate#MIN} where it has no beginning
 * @param to not before {@code from}; {@link LocalDate#MAX} where it has no end
 * @param words as it is told, such as {@code in May 2019} or {@code before 2015}
 */
public record Period(LocalDate from, LocalDate to, String words) {

    public Period {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("no period: " + from + " to " + to);
        }
    }

    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /** Whether one of some days is in it. */
    public boolean holdsOne(List<LocalDate> days) {
        for (LocalDate day : days) {
            if (holds(day)) {
                return true;
            }
        }
        return false;
    }
}
