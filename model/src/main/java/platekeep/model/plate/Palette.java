package platekeep.model.plate;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The colours of a plate by their key letter, sorted by key.
 *
 * @param entries key letter ({@code A-Z a-z 0-9}) to colour
 */
public record Palette(SortedMap<Character, Colour> entries) {

    /** The order in which free keys are given out. */
    public static final String KEYS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";

    public static final Palette EMPTY = new Palette(new TreeMap<>());

    public Palette {
        entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
    }

    public static Palette of(Map<Character, Colour> entries) {
        return new Palette(new TreeMap<>(entries));
    }

    /** Whether the letter can be a key at all. */
    public static boolean isKey(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
    }

    public boolean has(char key) {
        return entries.containsKey(key);
    }

    public Optional<Colour> get(char key) {
        return Optional.ofNullable(entries.get(key));
    }

    public Palette with(char key, Colour colour) {
        SortedMap<Character, Colour> changed = new TreeMap<>(entries);
        changed.put(key, colour);
        return new Palette(changed);
    }

    public Palette without(char key) {
        SortedMap<Character, Colour> changed = new TreeMap<>(entries);
        changed.remove(key);
        return new Palette(changed);
    }

    /** The first key of {@link #KEYS} that is free; empty when all 62 are taken. */
    public Optional<Character> freeKey() {
        return KEYS.chars().mapToObj(c -> (char) c).filter(c -> !has(c)).findFirst();
    }
}
