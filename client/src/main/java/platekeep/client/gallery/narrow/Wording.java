package platekeep.client.gallery.narrow;

import platekeep.model.find.Group;
import platekeep.model.find.Range;

/** Groups and their values in words. */
public final class Wording {
    private Wording() {}

    /** The heading of a group. */
    public static String title(Group group) {
        return switch (group) {
            case LIBRARY -> "Libraries";
            case MARK -> "To look at";
            case SERIES -> "Series";
            case AGE -> "Ages";
            case THEME -> "Themes";
            case FOR -> "What for";
            case PLEATS -> "Pleats needed";
            case ROWS -> "Rows";
            case COLOUR -> "Colours";
            case DESIGNER -> "Designers";
            case STATE -> "How far";
            case ORIGIN -> "Where from";
            case ALLOWED -> "Allowed use";
            case YEAR -> "Years";
        };
    }

    /** A value of a group. */
    public static String of(Group group, String value) {
        return switch (group) {
            case PLEATS, ROWS -> Range.of(value).map(Range::words).orElse(value);
            default -> value;
        };
    }

    /** A value where its group is not beside it. */
    public static String alone(Group group, String value) {
        return switch (group) {
            case PLEATS -> of(group, value) + " pleats";
            case ROWS -> of(group, value) + " rows";
            case ORIGIN -> "from: " + value;
            case ALLOWED -> "use: " + value;
            case FOR -> "for: " + value;
            case COLOUR -> "like " + value;
            default -> of(group, value);
        };
    }
}
