package platekeep.client.look;

import java.util.List;

/**
 * What a search found.
 *
 * @param hits best first, at most {@link #MOST}
 * @param all how many there are
 * @param summary what was found, in words
 */
record Finds(List<Hit> hits, int all, String summary) {
    /** More than anybody looks through. */
    static final int MOST = 300;

    static final Finds NONE = new Finds(List.of(), 0, "");

    Finds {
        hits = List.copyOf(hits);
    }
}
