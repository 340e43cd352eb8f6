package platekeep.client.compare;

import platekeep.model.compare.RowPair;

/** What happened to a row, by a sign and a word, so that it can be told without colours. */
final class RowWords {
    private RowWords() {}

    /** The sign and word; empty for a row that is the same on both sides. */
    static String of(RowPair pair) {
        return switch (pair.kind()) {
            case SAME -> "";
            case EDITED -> "\u2260 changed";
            case ADDED -> "+ added";
            case REMOVED -> "\u2212 taken out";
            case MOVED -> "\u2195 moved";
        };
    }
}
