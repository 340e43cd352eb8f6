package platekeep.client.plate.begin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Series;

/** The palettes that a new plate can begin with: the shared colours of series, then those of older plates by title. */
public final class Palettes {

    /**
     * A palette.
     *
     * @param name what it is the palette of, as it stands after "those of"
     */
    public record Known(String name, Palette palette) {}

    private Palettes() {}

    /** Reads them; in the background. Empty palettes are left out. */
    public static List<Known> of(List<Library> libraries, Progress progress) throws LibraryException {
        List<Known> palettes = new ArrayList<>();
        for (Library library : libraries) {
            for (Series series : library.series()) {
                add(palettes, "the series " + series.title(), series.colours());
            }
        }
        List<Known> ofPlates = new ArrayList<>();
        for (Library library : libraries) {
            for (Entry entry : library.list(progress)) {
                entry.plate().ifPresent(plate -> add(ofPlates, plate.title(), plate.palette()));
            }
        }
        ofPlates.sort(Comparator.comparing(Known::name, String.CASE_INSENSITIVE_ORDER));
        palettes.addAll(ofPlates);
        return List.copyOf(palettes);
    }

    /** The colours of palettes by their names in lower case; of several with one name the first. */
    static Map<String, Colour> byName(List<Known> palettes) {
        Map<String, Colour> colours = new HashMap<>();
        for (Known known : palettes) {
            for (Colour colour : known.palette().entries().values()) {
                colours.putIfAbsent(colour.name().toLowerCase(Locale.ROOT), colour);
            }
        }
        return colours;
    }

    private static void add(List<Known> palettes, String name, Palette palette) {
        if (!palette.entries().isEmpty()) {
            palettes.add(new Known(name, palette));
        }
    }
}
