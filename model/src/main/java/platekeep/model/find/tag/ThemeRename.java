package platekeep.model.find.tag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/**
 * A theme called otherwise all over a library; where the other one is there already, the two become one. The old word
 * goes on finding the plates, as one that the theme is also called by.
 *
 * @param from the theme as it is
 * @param to what it is called afterwards
 */
public record ThemeRename(String from, String to) {

    /** A plate as it is afterwards; the same where it has not the theme. */
    public Plate on(Plate plate) {
        if (!plate.themes().contains(from)) {
            return plate;
        }
        List<String> themes = new ArrayList<>(plate.themes());
        themes.remove(from);
        if (!themes.contains(to)) {
            themes.add(to);
        }
        return plate.edit().themes(themes).build();
    }

    /** What the library says afterwards. */
    public LibraryFacts on(LibraryFacts facts) {
        Map<String, List<String>> themes = new LinkedHashMap<>(facts.themes());
        List<String> also = new ArrayList<>(themes.getOrDefault(to, List.of()));
        List<String> old = themes.remove(from);
        also.addAll(old == null ? List.of() : old);
        also.add(from);
        also.removeIf(to::equals);
        themes.put(to, also);
        return facts.withThemes(themes);
    }

    /** In one line, for the history. */
    public String words() {
        return "Theme \"" + from + "\" is now \"" + to + "\"";
    }
}
