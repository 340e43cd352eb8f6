package platekeep.client.ui;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and times as people read them. */
public final class Dates {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMMM yyyy, H:mm", Locale.ENGLISH);

    private Dates() {}

    /** 3 March 2026. */
    public static String day(ZonedDateTime on) {
        return DAY.format(on);
    }

    /** 3 Mar 2026. */
    public static String shortDay(ZonedDateTime on) {
        return SHORT.format(on);
    }

    /** 3 Mar 2026. */
    public static String shortDay(LocalDate on) {
        return SHORT.format(on);
    }

    /** 3 March 2026, 9:05. */
    public static String time(ZonedDateTime on) {
        return TIME.format(on);
    }
}
