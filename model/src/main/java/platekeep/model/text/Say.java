package platekeep.model.text;

import platekeep.model.plate.Value;

/** Bits of sentences for problems. */
final class Say {
    private static final int LONGEST = 40;

    private Say() {}

    /** The text in quotes, escaped, cut where it is long. */
    static String quoted(String text) {
        int[] points = text.codePoints().limit(LONGEST + 1L).toArray();
        boolean cut = points.length > LONGEST;
        String shown = new String(points, 0, Math.min(points.length, LONGEST));
        StringBuilder out = new StringBuilder();
        Value.appendQuoted(out, cut ? shown + "..." : shown);
        return out.toString();
    }
}
