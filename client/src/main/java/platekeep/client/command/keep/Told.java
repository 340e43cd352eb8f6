package platekeep.client.command.keep;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import platekeep.client.library.Hand;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.model.plate.Value;

/** Versions and hands, told in words and as JSON. */
public final class Told {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final int SHORT = 8;

    private Told() {}

    /** The first digits of a version's id, enough for people. */
    public static String shortId(String versionId) {
        return versionId.substring(0, Math.min(SHORT, versionId.length()));
    }

    /** A version in one line: id, day, hand, the reason's first line. */
    public static String line(Version version) {
        String entered = version.enteredBy().equals(version.inNameOf())
                ? ""
                : " (entered by " + version.enteredBy().name() + ")";
        return shortId(version.id()) + "  " + DAY.format(version.on()) + "  "
                + version.inNameOf().name() + entered + ": "
                + version.reason().lines().findFirst().orElse("");
    }

    /** A step in a plate's history in one line, with the names that were given to it. */
    public static String line(PlateVersion step) {
        String names = step.names().isEmpty() ? "" : " [" + String.join("; ", step.names()) + "]";
        String away = step.entry().isEmpty() ? " (put away)" : "";
        return line(step.version()) + away + names;
    }

    public static Value.Entries json(Version version) {
        return builder(version).build();
    }

    public static Value.Entries json(PlateVersion step) {
        return builder(step.version())
                .put("names", Value.ofTexts(step.names()))
                .put("there", Value.of(step.entry().isPresent()))
                .build();
    }

    private static Value.Builder builder(Version version) {
        return new Value.Builder()
                .put("version", version.id())
                .put("on", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(version.on()))
                .put("inNameOf", json(version.inNameOf()))
                .put("enteredBy", json(version.enteredBy()))
                .put("reason", version.reason())
                .put("parents", Value.ofTexts(version.parents()));
    }

    public static Value.Entries json(Hand hand) {
        return new Value.Builder()
                .put("name", hand.name())
                .put("address", hand.address())
                .build();
    }

    public static Value items(List<? extends Value> values) {
        return new Value.Items(List.copyOf(values));
    }
}
