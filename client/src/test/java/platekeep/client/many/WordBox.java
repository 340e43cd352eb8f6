package platekeep.client.many;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The words of the workshop: titles, themes, notes, reasons. */
final class WordBox {
    private static final List<String> BEFORE = List.of(
            "Blue",
            "Little",
            "Old",
            "Sleepy",
            "Windy",
            "Merry",
            "Quiet",
            "Golden",
            "Red",
            "Sunday",
            "Rainy",
            "Early",
            "Painted",
            "Striped",
            "Lonely",
            "Grandmother's",
            "Market Day",
            "Midsummer",
            "Harvest",
            "Frosty");
    private static final List<String> AFTER = List.of(
            "at the Slipway",
            "by the Pier",
            "under the Pear Tree",
            "on the Quay",
            "in the Orchard",
            "at Low Tide",
            "in the Evening",
            "behind the Boathouse",
            "on the Hill",
            "over the Bar",
            "by the Garden Gate",
            "after the Rain",
            "in the Meadow",
            "at the Lock",
            "for Rosa",
            "for the Christening",
            "with a Border",
            "on the Breakwater",
            "at the Fair",
            "near the Mill",
            "in Two Blues",
            "for the Village Hall");

    /** What else a plate may be tagged with. */
    static final List<String> MORE_THEMES = List.of(
            "baby",
            "birthday",
            "christening",
            "easter",
            "first lesson",
            "gift",
            "heirloom",
            "market",
            "one evening",
            "party",
            "school",
            "spring class",
            "summer class",
            "sunday best",
            "twins",
            "winter");

    /** Words that a theme is also called by. */
    static final Map<String, List<String>> ALSO_CALLED = Map.ofEntries(
            Map.entry("seaside", List.of("beach", "sea", "shore")),
            Map.entry("boats", List.of("sailing", "ships")),
            Map.entry("flowers", List.of("blossom", "posies")),
            Map.entry("animals", List.of("beasts")),
            Map.entry("christmas", List.of("advent", "yule")),
            Map.entry("orchard", List.of("fruit trees")),
            Map.entry("kites", List.of()),
            Map.entry("lighthouses", List.of("beacons")),
            Map.entry("weather", List.of("storm")),
            Map.entry("garden", List.of("allotment")),
            Map.entry("small creatures", List.of("insects", "minibeasts")),
            Map.entry("tractors", List.of("farm machines")),
            Map.entry("trains", List.of("railway")));

    static final List<String> USES =
            List.of("bishop", "bonnet", "doll", "insert", "nightwear", "ornament", "pillow", "quilt", "yoke");

    static final List<String> PLACES = List.of(
            "binder 1",
            "binder 2",
            "binder 3, page 12",
            "flat drawer, blue folder",
            "flat drawer, red folder",
            "box under the window",
            "Isolde's shelf",
            "attic trunk");
    static final List<String> GIVERS = List.of(
            "a retired sailmaker of our harbour",
            "a neighbour at the mill",
            "the lace maker from the market",
            "an aunt of Isolde's",
            "a student of the first class");

    private static final List<String> NOTES = List.of(
            "Stitch the smallest figure last.",
            "Needs a firm pleat, else the edges go slack.",
            "Held by the second gathering row.",
            "Looks well on pale blue lawn.",
            "Keep the tension even at the turn.",
            "Two strands fewer where three colours meet.",
            "Worked for the window in spring.",
            "Count from the centre valley.",
            "The border may be left out for a bonnet.",
            "Test on scrap cloth first.",
            "Do not iron from the right side.",
            "Uses up the ends of old skeins.");

    private static final List<String> REASONS = List.of(
            "Two rows more at the top",
            "Less blue in it",
            "The outline in a darker shade",
            "Light from the left now",
            "Widened by a pleat at either side",
            "Corrected after stitching the sample",
            "As we said at the kitchen table",
            "For the new class",
            "Drawn larger",
            "The eye was too far down",
            "Straightened the lower edge",
            "Shaded side added",
            "Asked for by the shop",
            "Easier to begin with",
            "Fewer colours, so that it is quicker to thread",
            "Put right where two cables disagreed");

    private WordBox() {}

    static String title(Scene scene, Chance chance) {
        Motif motif = scene.main().get(0);
        String thing =
                chance.percent(25) ? chance.of(List.of("Two ", "Three ", "A Row of ")) + plural(motif) : motif.word();
        String title = chance.percent(55) ? chance.of(BEFORE) + " " + thing : thing;
        return chance.percent(75) ? title + " " + chance.of(AFTER) : title;
    }

    private static String plural(Motif motif) {
        return motif == Motif.FISH ? "Fish" : motif.word() + "s";
    }

    static String note(Chance chance) {
        return chance.of(NOTES);
    }

    static String reason(Chance chance) {
        return chance.of(REASONS);
    }

    static String begun(String title, Chance chance) {
        return chance.of(List.of("First chart of ", "Charted from the paper: ", "New plate: ", "Begun: ")) + title;
    }

    static String seriesTitle(int number, Chance chance) {
        List<String> first = List.of("Harbour", "Orchard", "Garden", "Weather", "Market", "Nursery", "Winter", "Shore");
        List<String> second = List.of("Days", "Alphabet", "Walk", "Songs", "Year", "Bonnets", "Borders", "Lessons");
        return chance.of(first) + " " + chance.of(second) + " " + number;
    }

    static String versionName(int year, Chance chance) {
        return chance.of(List.of("Spring class", "Summer class", "Winter fair", "Shop sample", "Christening")) + " "
                + year;
    }

    static String plateNumber(Motif motif, int number) {
        return String.format(Locale.ROOT, "%s-%04d", motif.word().substring(0, 1), number);
    }
}
