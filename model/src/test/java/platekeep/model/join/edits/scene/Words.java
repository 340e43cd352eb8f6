package platekeep.model.join.edits.scene;

import java.util.List;
import java.util.Random;

/** Words for titles, notes, themes and colours. */
public final class Words {
    public static final List<String> THEMES = List.of(
            "apples",
            "beehives",
            "boats",
            "foxes",
            "gulls",
            "harbour",
            "kites",
            "lighthouses",
            "orchard",
            "snails",
            "überraschung",
            "🐌 trails");
    public static final List<String> USES = List.of("bonnet", "insert", "pillow", "quilt", "sampler", "yoke");
    static final List<String> COLOURS =
            List.of("brick", "chalk", "ink", "lamp yellow", "moss", "plum", "rose", "sand", "slate", "teal");
    public static final List<String> STITCHES =
            List.of("french knot", "bullion", "bullion flower", "lazy daisy", "satin bar");
    public static final List<String> LINES = List.of("cable", "outline", "wheat", "honeycomb", "feather");
    public static final List<String> NOTIONS = List.of("button", "bead", "ribbon", "tie", "trinket");

    private Words() {}

    public static <T> T any(List<T> list, Random chance) {
        return list.get(chance.nextInt(list.size()));
    }

    public static String sentence(Random chance) {
        return "Note " + chance.nextInt(100_000) + " about the " + any(THEMES, chance)
                + (chance.nextInt(8) == 0 ? ", \"quoted\" \\ and\ttabbed" : ".");
    }

    static String srgb(Random chance) {
        return String.format("#%06X", chance.nextInt(0x1000000));
    }

    public static platekeep.model.plate.Colour colour(Random chance) {
        return new platekeep.model.plate.Colour(
                any(COLOURS, chance) + " " + chance.nextInt(1000), srgb(chance), 1 + chance.nextInt(6));
    }
}
