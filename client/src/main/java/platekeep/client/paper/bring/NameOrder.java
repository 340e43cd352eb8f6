package platekeep.client.paper.bring;

import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Pattern;

/** The order of names as people number them: page 2 before page 10. */
public final class NameOrder {
    public static final Comparator<String> NUMBERED =
            Comparator.comparing(NameOrder::padded).thenComparing(Comparator.naturalOrder());

    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final int LONGEST = 20;

    private NameOrder() {}

    /** The name with all its numbers equally long. */
    private static String padded(String name) {
        return NUMBER.matcher(name.toLowerCase(Locale.ROOT)).replaceAll(found -> {
            String digits = found.group().replaceFirst("^0+(?=.)", "");
            return "0".repeat(Math.max(0, LONGEST - digits.length())) + digits;
        });
    }
}
