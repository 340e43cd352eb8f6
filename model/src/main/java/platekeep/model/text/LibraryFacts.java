package platekeep.model.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/**
 * What a library says of itself in {@code library.json}.
 *
 * @param id a UUID, given once
 * @param name not blank
 * @param themes the themes that plates are tagged with, sorted, each with the words that it is also called by (sorted, no
 *     doubles, often none)
 * @param check the settings of the check by name, sorted; empty for those that are the default
 * @param unknown keys that this version does not know
 */
public record LibraryFacts(
        String id, String name, Map<String, List<String>> themes, Value.Entries check, Unknown unknown) {

    public LibraryFacts {
        name = CodePoints.nfc(name);
        themes = sorted(themes);
        check = (Value.Entries) Value.sorted(check);
    }

    /** A new library that says nothing but its name. */
    public LibraryFacts(String id, String name) {
        this(id, name, Map.of(), new Value.Entries(Map.of()), Unknown.NONE);
    }

    /** The same library under another name. */
    public LibraryFacts withName(String newName) {
        return new LibraryFacts(id, newName, themes, check, unknown);
    }

    /** The same library with other themes. */
    public LibraryFacts withThemes(Map<String, List<String>> newThemes) {
        return new LibraryFacts(id, name, newThemes, check, unknown);
    }

    /** The same library with other settings of the check. */
    public LibraryFacts withCheck(Value.Entries newCheck) {
        return new LibraryFacts(id, name, themes, newCheck, unknown);
    }

    private static Map<String, List<String>> sorted(Map<String, List<String>> themes) {
        List<String> names = new ArrayList<>(themes.keySet());
        names.sort(CodePoints.ORDER);
        Map<String, List<String>> out = new LinkedHashMap<>();
        for (String name : names) {
            TreeSet<String> words = new TreeSet<>(CodePoints.ORDER);
            themes.get(name).forEach(word -> words.add(CodePoints.nfc(word)));
            out.merge(CodePoints.nfc(name), List.copyOf(words), LibraryFacts::union);
        }
        return Collections.unmodifiableMap(out);
    }

    private static List<String> union(List<String> a, List<String> b) {
        TreeSet<String> both = new TreeSet<>(CodePoints.ORDER);
        both.addAll(a);
        both.addAll(b);
        return List.copyOf(both);
    }
}
